// Ladders with values asked for, and the single changes from which harder and easier sheets are found.
import { describe, expect, test } from 'vitest';
import { ACTIVITY_IDS, type Activity, activityOf, type Values } from '../activities/index.ts';
import { accept, refuse } from '../base/index.ts';
import { changesFrom, climb } from './climb.ts';
import { movesFrom } from './moves.ts';

const STYLE = { print: 'colour' } as const;

function climbed(id: (typeof ACTIVITY_IDS)[number], asked: Values): readonly Values[] {
  const result = climb(activityOf(id), asked, STYLE);
  if (!result.ok) throw new Error(JSON.stringify(result.refusals));
  return result.value;
}

describe('a climb', () => {
  test('with nothing asked for is the ladder itself', () => {
    for (const id of ACTIVITY_IDS) {
      expect(climbed(id, {})).toEqual(activityOf(id).ladder.map((rung) => rung.values));
    }
  });

  test('has what is asked for at every step, and only values that the activity accepts', () => {
    for (const id of ACTIVITY_IDS) {
      const { content } = activityOf(id).parameters;
      for (const choice of content?.kind === 'choice' ? content.values : []) {
        const steps = climbed(id, { content: choice });
        expect(steps.length).toBe(activityOf(id).ladder.length);
        for (const values of steps) {
          expect(values.content).toBe(choice);
          expect(activityOf(id).read(1, values, STYLE).ok, JSON.stringify(values)).toBe(true);
        }
      }
    }
  });

  test('leaves out what comes with another content than the one asked for', () => {
    const last = climbed('copy-pattern', { content: 'filled-cells' }).at(-1);
    expect(last).toMatchObject({ response: 'colour-in', kinds: 3 });
  });

  test('goes back to what a choice was where the rung’s own is refused', () => {
    const steps = climbed('by-key', { content: 'signs' });
    expect(steps.at(-1)?.response).toBe('ring');
  });

  test('keeps a number that had to be higher than a rung raises it to', () => {
    const rungs = [
      { boxes: 3, near: 0 },
      { boxes: 4, near: 0 },
      { boxes: 4, near: 1 },
    ];
    const narrow: Activity = {
      ...activityOf('in-every-box'),
      ladder: rungs.map((values) => ({ values, age: 3, tasks: 1 })),
      // From four boxes up, nothing can be had with fewer than two near misses.
      read: (_step, values) =>
        Number(values.boxes) >= 4 && Number(values.near) < 2
          ? refuse({
              code: 'out-of-range',
              at: 'x › near',
              got: Number(values.near),
              min: 2,
              max: 3,
            })
          : accept(values as Values),
    };
    const result = climb(narrow, {}, STYLE);
    expect(result.ok ? result.value.map(({ near }) => near) : result.refusals).toEqual([0, 2, 2]);
    const wide: Activity = { ...narrow, read: (_step, values) => accept(values as Values) };
    expect(climb(wide, {}, STYLE)).toEqual(accept(rungs));
    const once: Activity = {
      ...narrow,
      read: (_step, values) =>
        values.boxes === 4 && values.near === 0
          ? refuse({ code: 'out-of-range', at: 'x › near', got: 0, min: 2, max: 3 })
          : accept(values as Values),
    };
    const kept = climb(once, {}, STYLE);
    expect(kept.ok ? kept.value.map(({ near }) => near) : kept.refusals).toEqual([0, 2, 2]);
  });

  test('is refused where what is asked for cannot be had', () => {
    const result = climb(activityOf('by-key'), { content: 'colours', response: 'ring' }, STYLE);
    expect(result.ok ? [] : result.refusals.map(({ at }) => at)).toEqual(['by-key › response']);
    expect(climb(activityOf('by-key'), { content: 'smell' }, STYLE).ok).toBe(false);
  });
});

describe('moves', () => {
  test('change one value, never content, response, a size in mm or what was asked for', () => {
    for (const id of ACTIVITY_IDS) {
      const activity = activityOf(id);
      const asked = Object.keys(activity.parameters).filter((name) => name === 'boxes');
      const fixed = ['content', 'response', 'stickerMm', ...asked];
      for (const { values, age } of activity.ladder) {
        const kept = Object.fromEntries(asked.map((name) => [name, values[name] ?? 0]));
        for (const moved of movesFrom(activity, values, age, kept, [-1, 1], STYLE)) {
          const changed = Object.keys(changesFrom(values, moved));
          expect(changed.length).toBe(1);
          expect(fixed).not.toContain(changed[0]);
          expect(activity.read(1, moved, STYLE).ok).toBe(true);
        }
      }
    }
  });

  test('do not bring left and right together before the ladder does', () => {
    const activity = activityOf('by-key');
    const { values } = activity.ladder[4] ?? { values: {} };
    const switched = (age: 3 | 4 | 5) =>
      movesFrom(activity, values, age, {}, [], STYLE).some(({ leftRight }) => leftRight === true);
    expect([switched(3), switched(4), switched(5)]).toEqual([false, false, true]);
  });
});
