// What is refused, and every step with every content.
import { describe, expect, test } from 'vitest';
import { randomFrom } from '../../base/index.ts';
import { CONTENT_IDS } from '../../figures/index.ts';
import { sameOrDifferent } from './index.ts';
import { LADDER } from './ladder.ts';
import { limitsOf } from './limits.ts';
import type { PairValues } from './task.ts';
import { COLOUR, GREY, valuesAt } from './tasks-to-test.ts';

function refusalsOf(step: number, changes: Partial<PairValues>) {
  return limitsOf(valuesAt(step, changes), COLOUR);
}

describe('R9 refusals', () => {
  test('R2 name the fewest pairs that so many things to check need', () => {
    expect(refusalsOf(6, { pairs: 3 })).toMatchObject([
      { code: 'out-of-range', at: 'same-or-different › pairs', got: 3, min: 4, max: 8 },
    ]);
    expect(refusalsOf(12, { pairs: 5 })).toMatchObject([
      { code: 'out-of-range', at: 'same-or-different › pairs', got: 5, min: 6, max: 8 },
    ]);
    expect(refusalsOf(12, { pairs: 5, content: 'capitals' })).toEqual([]);
  });

  test('R5 name the most boxes that are all unlike', () => {
    const mirrored = { content: 'directions', mirrors: 'left-right', idle: false } as const;
    expect(refusalsOf(5, mirrored)).toMatchObject([
      { code: 'out-of-range', at: 'same-or-different › pairs', got: 4, min: 2, max: 2 },
    ]);
    expect(refusalsOf(5, { ...mirrored, idle: true })).toEqual([]);
  });

  test('R7 let only directions be mirrored', () => {
    expect(refusalsOf(5, { mirrors: 'slanted' })).toMatchObject([
      { code: 'not-a-choice', at: 'same-or-different › mirrors', nearest: 'none' },
    ]);
  });
});

test('R7 no step asks for a mirror image', () => {
  expect(LADDER.every(({ values }) => values.mirrors === 'none')).toBe(true);
});

test.each(CONTENT_IDS)('gives proven tasks of %s at every step', (content) => {
  for (const [index] of LADDER.entries()) {
    for (const style of [COLOUR, GREY]) {
      const read = sameOrDifferent.read(index + 1, { content }, style);
      if (!read.ok) throw new Error(JSON.stringify(read.refusals));
      for (let seed = 0; seed < 4; seed++) {
        const task = sameOrDifferent.generate(read.value, randomFrom(seed), style);
        expect(sameOrDifferent.prove(task), `step ${index + 1}, seed ${seed}`).toEqual({
          proven: true,
        });
      }
    }
  }
});
