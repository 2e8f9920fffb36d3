// What is refused, and every step with every content.
import { describe, expect, test } from 'vitest';
import { randomFrom } from '../../base/index.ts';
import { attributesOf, CONTENT_IDS } from '../../figures/index.ts';
import { findTheSame } from './index.ts';
import { LADDER } from './ladder.ts';
import { limitsOf } from './limits.ts';
import type { SameValues } from './task.ts';
import { COLOUR, GREY, valuesAt } from './tasks-to-test.ts';

function refusalsOf(step: number, changes: Partial<SameValues>) {
  return limitsOf(valuesAt(step, changes), COLOUR);
}

describe('R10 refusals', () => {
  test('name the most choices where values run out', () => {
    // Up, down and one side; the numerals 0 to 9 less the look-alikes 0 8, 1 7, 6 9 leave seven.
    expect(refusalsOf(3, { content: 'directions' })).toMatchObject([
      { code: 'out-of-range', at: 'find-the-same › choices', got: 4, min: 3, max: 3 },
    ]);
    expect(refusalsOf(3, { content: 'dot-quantities', choices: 7 })).toMatchObject([
      { code: 'out-of-range', at: 'find-the-same › choices', got: 7, min: 3, max: 6 },
    ]);
    expect(refusalsOf(3, { content: 'directions', mirrors: 'left-right' })).toEqual([]);
    expect(refusalsOf(3, { content: 'directions', mixed: false, choices: 8 })).toEqual([]);
  });

  test('let two attributes without near misses have as many choices as the scarcer has values', () => {
    expect(refusalsOf(3, { content: 'shapes-and-sizes', choices: 6 })).toMatchObject([
      { code: 'out-of-range', at: 'find-the-same › choices', got: 6, min: 3, max: 5 },
    ]);
    expect(refusalsOf(3, { content: 'shapes-and-sizes', choices: 6, nearMisses: 1 })).toEqual([]);
  });

  test('R4 name how many near misses there can be', () => {
    expect(refusalsOf(3, { nearMisses: 4 })).toMatchObject([
      { code: 'out-of-range', at: 'find-the-same › nearMisses', got: 4, min: 0, max: 3 },
    ]);
    expect(refusalsOf(3, { nearMisses: 2, mixed: false })).toMatchObject([
      { code: 'not-a-choice', at: 'find-the-same › nearMisses', choices: ['0', '3'], nearest: '3' },
    ]);
    expect(refusalsOf(3, { nearMisses: 7, content: 'capitals' })).toEqual([]);
  });

  test('R8 let only directions be mirrored, as near misses', () => {
    expect(refusalsOf(9, { mirrors: 'slanted' })).toMatchObject([
      { code: 'not-a-choice', at: 'find-the-same › mirrors', got: 'slanted', nearest: 'none' },
    ]);
    const mirrored = { content: 'directions-and-colours', mirrors: 'left-right' } as const;
    expect(refusalsOf(2, mirrored)).toMatchObject([
      { code: 'out-of-range', at: 'find-the-same › nearMisses', got: 0, min: 1, max: 2 },
    ]);
    expect(refusalsOf(9, mirrored)).toEqual([]);
  });

  test('R9 let no row be longer than a page', () => {
    expect(refusalsOf(12, { layout: 'row' })).toMatchObject([
      { code: 'not-a-choice', at: 'find-the-same › layout', got: 'row', nearest: 'grid' },
    ]);
    expect(refusalsOf(9, { layout: 'row' })).toEqual([]);
  });
});

describe('the ladder', () => {
  test('R8 asks for no mirror image', () => {
    expect(LADDER.every(({ values }) => values.mirrors === 'none')).toBe(true);
  });

  test.each(CONTENT_IDS)(
    'gives proven tasks of %s at every step that it is not refused at',
    (content) => {
      const attributes = attributesOf(content).length;
      let made = 0;
      for (const [index] of LADDER.entries()) {
        for (const style of [COLOUR, GREY]) {
          const read = findTheSame.read(index + 1, { content }, style);
          if (!read.ok) continue;
          made++;
          for (let seed = 0; seed < 4; seed++) {
            const task = findTheSame.generate(read.value, randomFrom(seed), style);
            expect(findTheSame.prove(task), `step ${index + 1}, seed ${seed}`).toEqual({
              proven: true,
            });
          }
        }
      }
      // Directions alone leave three choices, which the first two steps have.
      const least = content === 'directions' ? 2 : attributes > 1 ? 11 : 8;
      expect(made / 2).toBeGreaterThanOrEqual(least);
    },
  );
});
