// Aiming at a difficulty: what is kept, what is refused, and that chance plays no part.
import { describe, expect, test } from 'vitest';
import { activityOf } from '../activities/index.ts';
import { randomFrom } from '../base/index.ts';
import { AIM_TOLERANCE, aimAt, notch } from './aim.ts';
import { meanDifficulty, sampleSeeds } from './mean-difficulty.ts';

const COLOUR = { print: 'colour' } as const;
const GREY = { print: 'grey' } as const;
const SEEDS = sampleSeeds(150, randomFrom(4321));

describe('aiming', () => {
  test('keeps everything that was asked for', () => {
    const asked = { content: 'shapes', boxes: 3 } as const;
    const aim = aimAt(activityOf('in-every-box'), 0, asked, COLOUR);
    if (!aim.ok) throw new Error(JSON.stringify(aim.refusals));
    expect(aim.value.values).toMatchObject(asked);
  });

  test.each([
    ['by-key', 'colours', 0.4],
    ['by-key', 'shapes-and-sizes', 0],
    ['in-every-box', 'dot-quantities', 1],
    ['copy-pattern', 'lines', 0],
  ] as const)('%s with %s meets %d logits on seeds that it has not seen', (id, content, target) => {
    const activity = activityOf(id);
    for (const style of [COLOUR, GREY]) {
      const aim = aimAt(activity, target, { content }, style);
      if (!aim.ok) throw new Error(JSON.stringify(aim.refusals));
      const { logits } = meanDifficulty(activity, aim.value.values, SEEDS, style);
      expect(Math.abs(logits - target)).toBeLessThanOrEqual(AIM_TOLERANCE);
      expect(aim.value.values.content).toBe(content);
    }
  });

  test('gives the same values each time', () => {
    const once = () => aimAt(activityOf('by-key'), 0.3, { content: 'colours' }, COLOUR);
    expect(once()).toEqual(once());
    const drawn = () => aimAt(activityOf('by-key'), 0.3, {}, COLOUR, randomFrom(9));
    expect(drawn()).toEqual(drawn());
  });

  test('refuses a target that is no number, and a content that the activity has not', () => {
    const refused = (target: number, content: string) => {
      const aim = aimAt(activityOf('by-key'), target, { content }, COLOUR);
      return aim.ok ? [] : aim.refusals.map(({ code, at }) => [code, at]);
    };
    expect(refused(Number.NaN, 'shapes')).toEqual([['wrong-type', 'by-key › difficulty']]);
    expect(refused(0, 'smell')).toEqual([['not-a-choice', 'by-key › content']]);
  });

  test('names what can be reached with the content asked for', () => {
    const aim = aimAt(activityOf('by-key'), 2, { content: 'sizes' }, COLOUR);
    const [refusal] = aim.ok ? [] : aim.refusals;
    expect(refusal).toMatchObject({ code: 'out-of-range', got: 2 });
    if (refusal?.code === 'out-of-range') expect(refusal.max).toBeLessThan(2);
  });
});

describe('a notch', () => {
  test('starts from the sheet’s own values, those of the step where they are left out', () => {
    const activity = activityOf('by-key');
    const easier = notch(activity, 5, { items: 18 }, 'easier', COLOUR);
    if (!easier.ok) throw new Error(JSON.stringify(easier.refusals));
    const from = activity.read(5, { items: 18 }, COLOUR);
    if (!from.ok) throw new Error(JSON.stringify(from.refusals));
    const before = meanDifficulty(activity, from.value, SEEDS, COLOUR).logits;
    const after = meanDifficulty(activity, easier.value.values, SEEDS, COLOUR).logits;
    expect(before - after).toBeGreaterThan(0.25);
    expect(before - after).toBeLessThan(0.75);
  });

  test('is refused for values that are, and below the easiest', () => {
    const activity = activityOf('by-key');
    expect(notch(activity, 1, { items: 99 }, 'harder', COLOUR).ok).toBe(false);
    expect(notch(activity, 1, {}, 'easier', COLOUR).ok).toBe(false);
    expect(notch(activity, 1, {}, 'harder', COLOUR).ok).toBe(true);
  });
});
