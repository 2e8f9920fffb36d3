// What every activity tells the adult beside the child: short sentences, no verdicts, one set of words for one way of asking.
import { describe, expect, test } from 'vitest';
import { ACTIVITY_IDS, type Activity, activityOf } from '../../src/activities/index.ts';
import { randomFrom } from '../../src/base/index.ts';
import type { PrintStyle } from '../../src/page/index.ts';

const COLOUR: PrintStyle = { print: 'colour' };
const MOST_CHARACTERS = 160;
const SEEDS = 2;
/** Words of a verdict on a child. */
const VERDICT = /\btest|\bscor|diagnos|normal|delayed/i;

/** Printed tasks of each step with each response, and with each content, that is not refused there. */
function printedOf(activity: Activity): readonly unknown[] {
  const changes = (['response', 'content'] as const).flatMap((name) => {
    const spec = activity.parameters[name];
    return spec?.kind === 'choice' ? spec.values.map((value) => ({ [name]: value })) : [];
  });
  return activity.ladder.flatMap((_, index) =>
    changes.flatMap((change) => {
      const read = activity.read(index + 1, change, COLOUR);
      if (!read.ok) return [];
      return Array.from(
        { length: SEEDS },
        (_, seed) => activity.generate(read.value, randomFrom(seed), COLOUR).printed,
      );
    }),
  );
}

function toldOf({ words }: Activity, printed: unknown) {
  const { help, easierNow, harderNow, lookFor } = words.en;
  return {
    help: help(printed),
    easierNow: easierNow(printed),
    harderNow: harderNow(printed),
    lookFor: lookFor(printed),
  };
}

describe.each(ACTIVITY_IDS.map((id) => [id, activityOf(id)] as const))('%s', (_id, activity) => {
  const all = printedOf(activity);

  test('tells of help, easier, harder and slips, in short sentences without a verdict', () => {
    for (const printed of all) {
      const { help, easierNow, harderNow, lookFor } = toldOf(activity, printed);
      expect(help.length).toBeLessThanOrEqual(2);
      expect([1, 2]).toContain(lookFor.length);
      for (const sentence of [...help, easierNow, harderNow, ...lookFor]) {
        expect(sentence).toMatch(/^[\p{Lu}“].*[.!?”]$/u);
        expect(sentence.length, sentence).toBeLessThanOrEqual(MOST_CHARACTERS);
        expect(sentence).not.toMatch(VERDICT);
      }
    }
  });

  test('tells the same wherever the child is asked in the same words', () => {
    const told = new Map<string, string>();
    for (const printed of all) {
      const asked = activity.words.en.say(printed).join(' ');
      const now = JSON.stringify(toldOf(activity, printed));
      expect(now, asked).toBe(told.get(asked) ?? now);
      told.set(asked, now);
    }
  });
});
