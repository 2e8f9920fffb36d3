// A further language is a catalogue and no code: with all messages in other letters, nothing is said in Latin ones.
import { readdirSync } from 'node:fs';
import { IntlMessageFormat } from 'intl-messageformat';
import { describe, expect, test, vi } from 'vitest';
import {
  ACTIVITY_IDS,
  type ActivityWords,
  activityOf,
  FEATURE_NAMES,
  type Language,
} from '../../src/activities/index.ts';
import { difficultyFrom, explainDifficulty } from '../../src/learner/index.ts';
import { everyTask, saidAtOnce, saidOf } from '../every-task.ts';

/** A language with the plural forms of English, so that its messages can be made from the English ones. */
const OTHER = vi.hoisted(() => 'de');

vi.mock('../../src/languages/language.ts', () => ({ LANGUAGES: ['en', OTHER] }));
vi.mock('../../src/languages/catalogues.ts', async () => ({
  CATALOGUES: { [OTHER]: await catalogue() },
}));

const other = OTHER as Language;

describe.each(ACTIVITY_IDS)('%s', (id) => {
  test('says nothing that is in no message', () => {
    const activity = activityOf(id);
    const words: ActivityWords = activity.words[other];
    const sentences = new Set(saidAtOnce(words));
    for (const task of everyTask(activity, 60)) {
      for (const sentence of saidOf(words, task)) sentences.add(sentence);
    }
    expect([...sentences].filter((sentence) => LATIN_WORD.test(sentence))).toEqual([]);
  });
});

test('why a task is hard is said in no other words than those of messages', () => {
  for (const feature of FEATURE_NAMES) {
    const said = explainDifficulty(difficultyFrom({ [feature]: 9 }), other);
    expect(said, feature).not.toMatch(LATIN_WORD);
  }
});

/** Single letters are spoken of: they are what some tasks are about. */
const LATIN_WORD = /[A-Za-z]{2}/;

type Element = ReturnType<IntlMessageFormat['getAst']>[number];

type Messages = Readonly<Record<string, string>>;

/** All English messages, their letters made others. */
async function catalogue(): Promise<Record<string, Messages>> {
  const shared: Readonly<Record<string, Messages>> = {
    wording: (await import('../../src/activities/wording-messages.ts')).MESSAGES,
    figures: (await import('../../src/figures/messages-en.ts')).MESSAGES,
    learner: (await import('../../src/learner/messages-en.ts')).MESSAGES,
  };
  const entries = readdirSync(new URL('../../src/activities/', import.meta.url), {
    withFileTypes: true,
  });
  const own = entries
    .filter((entry) => entry.isDirectory())
    .map(async ({ name }): Promise<[string, Messages]> => {
      const { MESSAGES } = await import(`../../src/activities/${name}/messages-en.ts`);
      return [name, MESSAGES];
    });
  const all = [...Object.entries(shared), ...(await Promise.all(own))];
  return Object.fromEntries(all.map(([space, messages]) => [space, inOtherLetters(messages)]));
}

function inOtherLetters(messages: Messages): Messages {
  return Object.fromEntries(
    Object.entries(messages).map(([key, message]) => [key, foreign(message)]),
  );
}

function foreign(message: string): string {
  return printed(new IntlMessageFormat(message, 'en').getAst());
}

function printed(elements: readonly Element[]): string {
  return elements.map(printedElement).join('');
}

function printedElement(element: Element): string {
  if ('options' in element) {
    const kind = 'pluralType' in element ? 'plural' : 'select';
    const options = Object.entries(element.options).map(
      ([key, option]) => `${key} {${printed(option.value)}}`,
    );
    return `{${element.value}, ${kind}, ${options.join(' ')}}`;
  }
  if (!('value' in element)) return '#';
  const isText = element.type === (new IntlMessageFormat('text').getAst()[0] ?? element).type;
  return isText ? element.value.replace(/[A-Za-z]/g, 'ж') : `{${element.value}}`;
}
