// Messages of activities: each can be read as ICU MessageFormat, and each is said somewhere.
import { IntlMessageFormat } from 'intl-messageformat';
import { beforeAll, describe, expect, test, vi } from 'vitest';
import { ACTIVITY_IDS, type ActivityId, activityOf } from '../../src/activities/index.ts';
import { MESSAGES as SHARED } from '../../src/activities/wording-messages.ts';
import type * as Saying from '../../src/languages/say.ts';
import { everyTask, saidAtOnce, saidOf } from '../every-task.ts';
import { IS_WHOLE } from '../whole.ts';

/** All that was said in this file, as "by-key › say.look". */
const said = vi.hoisted(() => new Set<string>());

vi.mock('../../src/languages/say.ts', async (importActual) => {
  const actual = await importActual<typeof Saying>();
  const sayIn: typeof actual.sayIn = (language, space, english) => {
    const say = actual.sayIn(language, space, english);
    const noted: typeof say = Object.assign(
      (...[key, values]: Parameters<typeof say>) => {
        said.add(`${space} › ${key}`);
        return say(key, values);
      },
      {
        all: (prefix: string) => {
          for (const place of say.all(prefix).keys()) said.add(`${space} › ${prefix}.${place + 1}`);
          return say.all(prefix);
        },
        has: say.has,
      },
    );
    return noted;
  };
  return { ...actual, sayIn };
});

/** Enough for whatever comes by chance, such as what an odd one is odd in. */
const FREELY = 300;
/** So many tasks are looked at even where fewer say all there is; in the night all. */
const LEAST_TASKS = IS_WHOLE ? Infinity : 150;

/** Why a task is unfit or cannot be asked for; `reasons.test.ts` holds them to what is told. */
const OF_REASONS = /^(fault|no)\./;

/** What is said only of pages that are written by hand, by activity: no generator makes them. */
const BY_HAND: Readonly<Partial<Record<ActivityId, readonly string[]>>> = {
  'in-every-box': ['attribute.fill', 'attribute.count', 'attribute.layout', 'item.ink'],
  'by-key': ['gets.checks', 'gets.bricks'],
  'copy-pattern': ['element.cell', 'answer.uneven'],
  'odd-one-out': ['answer.alone'],
  'same-or-different': ['reason.unclear'],
  'turned-shapes': ['place.as-framed'],
};

describe.each(ACTIVITY_IDS)('%s', (id) => {
  let messages: Readonly<Record<string, string>> = {};
  beforeAll(async () => {
    messages = (await import(`../../src/activities/${id}/messages-en.ts`)).MESSAGES;
  });

  test('every message can be read', () => {
    expect(Object.keys(messages).length).toBeGreaterThan(0);
    for (const [key, message] of Object.entries(messages)) expectReadable(key, message);
  });

  test('every message is said: of the activity, of a task, or of a page that is written by hand', () => {
    const activity = activityOf(id);
    const words = activity.words.en;
    const keys = Object.keys(messages).filter((key) => !OF_REASONS.test(key));
    const unsaid = () => keys.filter((key) => !said.has(`${id} › ${key}`));
    const byHand = BY_HAND[id] ?? [];
    for (const sentence of saidAtOnce(words)) expect(sentence).toMatch(/^\S(.*\S)?$/);
    let looked = 0;
    for (const task of everyTask(activity, FREELY)) {
      for (const sentence of saidOf(words, task)) expect(sentence).toMatch(/^\S(.*\S)?$/);
      looked += 1;
      if (looked >= LEAST_TASKS && unsaid().length <= byHand.length) break;
    }
    expect(unsaid().toSorted()).toEqual(byHand.toSorted());
  });
});

test('every message that activities share can be read', () => {
  for (const [key, message] of Object.entries(SHARED)) expectReadable(key, message);
});

/** Quotes beside braces would hide what is between them. */
function expectReadable(key: string, message: string): void {
  expect(message, key).not.toContain("'");
  expect(() => new IntlMessageFormat(message, 'en'), `${key}: ${message}`).not.toThrow();
}
