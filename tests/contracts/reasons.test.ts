// Why a task is unfit, or cannot be asked for: every message is told of somewhere, every one told of is there, and a
// further language leaves no English word in it.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test, vi } from 'vitest';
import { englishMessages } from '../../scripts/english-messages.ts';
import {
  ACTIVITY_IDS,
  activityOf,
  faultIn,
  type Parameter,
  type Value,
} from '../../src/activities/index.ts';
import { type Refusal, told } from '../../src/base/index.ts';
import { sentenceIn } from '../../src/words/index.ts';

import { INVENTED } from './invented.ts';

vi.mock('../../src/languages/language.ts', () => import('./invented.ts'));
vi.mock('../../src/languages/catalogues.ts', () => import('./invented.ts'));

const other = INVENTED;
const messages = englishMessages();
const SRC = join(import.meta.dirname, '..', '..', 'src');
const TOLD = /told\(\s*'([^']+)',\s*'([^']+)'/g;

/** All that the code tells of with both names written out, as "by-key › fault.kinds". */
function toldOf(): ReadonlySet<string> {
  const files = readdirSync(SRC, { recursive: true, encoding: 'utf8' });
  const code = files.filter((file) => /\.tsx?$/.test(file) && !file.includes('.test.'));
  const texts = code.map((file) => readFileSync(join(SRC, file), 'utf8'));
  return new Set(
    texts.flatMap((text) => [...text.matchAll(TOLD)].map(([, space, key]) => `${space} › ${key}`)),
  );
}

test('what is told of is a message', () => {
  const missing = [...toldOf()].filter((name) => {
    const [space = '', key = ''] = name.split(' › ');
    return messages[space]?.[key] === undefined;
  });
  expect(missing).toEqual([]);
});

test('every message of why a task is unfit, or cannot be asked for, is told of', () => {
  const found = toldOf();
  const names = ACTIVITY_IDS.flatMap((id) =>
    Object.keys(messages[id] ?? {})
      .filter((key) => /^(fault|no)\./.test(key))
      .map((key) => `${id} › ${key}`),
  );
  const shared = Object.keys(messages.faults ?? {}).map((key) => `faults › ${key}`);
  expect([...names, ...shared].filter((name) => !found.has(name))).toEqual([]);
});

function valuesOf(parameter: Parameter): readonly Value[] {
  if (parameter.kind === 'choice') return parameter.values;
  if (parameter.kind === 'yes-no') return [false, true];
  return [parameter.min, parameter.max];
}

describe.each(ACTIVITY_IDS)(
  'in a language that is a catalogue only, %s has no English word',
  (id) => {
    test('in why something cannot be asked for', () => {
      const activity = activityOf(id);
      const refusals: Refusal[] = [];
      for (const step of [1, activity.ladder.length]) {
        for (const [name, parameter] of Object.entries(activity.parameters)) {
          for (const value of valuesOf(parameter)) {
            const read = activity.read(
              step,
              { [name]: value },
              { print: 'grey', colours: ['red'] },
            );
            if (!read.ok) refusals.push(...read.refusals);
          }
        }
      }
      const mayRefuse = Object.keys(messages[id] ?? {}).some((key) => key.startsWith('no.'));
      const why = 'none of the values that were tried is refused, though there are messages `no.…`';
      if (mayRefuse) expect(refusals, why).not.toEqual([]);
      const reasons = refusals.flatMap((refusal) =>
        'because' in refusal && refusal.because
          ? [sentenceIn(other, { code: 'not-proven', at: '1', reason: refusal.because })]
          : [],
      );
      expect(reasons.filter((reason) => LATIN_WORD.test(reason))).toEqual([]);
    });

    test('in what its solver may find wrong', () => {
      const figures = { figure: { figure: { form: 'star', colour: 'red' } } };
      const keys = Object.keys(messages[id] ?? {}).filter((key) => key.startsWith('fault.'));
      expect(keys, 'messages `fault.…` of what the solver finds wrong').not.toEqual([]);
      for (const key of keys) {
        const said = faultIn(
          other,
          told(id, key, { ...numbersFor(messages[id]?.[key] ?? ''), ...figures }),
        );
        expect(said, key).not.toMatch(LATIN_WORD);
      }
    });
  },
);

/** A number for each place of a message, however it is used there. */
function numbersFor(message: string): Readonly<Record<string, number>> {
  return Object.fromEntries([...message.matchAll(/\{(\w+)[,}]/g)].map(([, place]) => [place, 3]));
}

const LATIN_WORD = /[A-Za-z]{2}/;
