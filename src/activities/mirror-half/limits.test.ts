// What is refused, and every step with every content.
import { describe, expect, test } from 'vitest';
import { randomFrom } from '../../base/index.ts';
import { fitsUpright } from '../upright-room.ts';
import { findPattern } from './generate-pattern.ts';
import { mirrorHalf } from './index.ts';
import { LADDER } from './ladder.ts';
import { limitsOf } from './limits.ts';
import { leastSize } from './measures.ts';
import { CONTENTS, type MirrorValues, PARAMETERS } from './task.ts';
import { COLOUR, taskOf, valuesAt } from './tasks-to-test.ts';

function refusalsOf(step: number, changes: Partial<MirrorValues>) {
  return limitsOf(valuesAt(step, changes), COLOUR);
}

describe('R9 refusals', () => {
  test('R8 name the response that suits the content', () => {
    expect(refusalsOf(1, { content: 'capitals' })).toMatchObject([
      { code: 'not-a-choice', at: 'mirror-half › response', got: 'sticker', nearest: 'draw' },
    ]);
    expect(refusalsOf(1, { content: 'pictures', response: 'draw' })).toMatchObject([
      { code: 'not-a-choice', choices: ['point', 'ring'], nearest: 'point' },
    ]);
    expect(refusalsOf(1, { response: 'draw' })).toMatchObject([{ nearest: 'colour-in' }]);
  });

  test('R8 let no half be chosen where three quarters are missing', () => {
    expect(refusalsOf(1, { axis: 'both', response: 'point' })).toMatchObject([
      {
        code: 'not-a-choice',
        at: 'mirror-half › axis',
        choices: ['upright', 'level'],
        nearest: 'level',
      },
    ]);
  });

  test('R3 name how many figures look the same in the mirror', () => {
    // Of the numerals 0 and 8; no picture is the same upside down.
    const drawn = { response: 'draw', elements: 4, deep: 3 } as const;
    expect(refusalsOf(2, { ...drawn, content: 'numerals', kinds: 3 })).toMatchObject([
      { code: 'out-of-range', at: 'mirror-half › kinds', got: 3, min: 1, max: 2 },
    ]);
    expect(refusalsOf(1, { content: 'pictures', response: 'ring', axis: 'level' })).toMatchObject([
      { code: 'not-a-choice', at: 'mirror-half › axis', choices: ['upright'], nearest: 'upright' },
    ]);
  });

  test('R2 name the numbers of elements that have a telling part', () => {
    // Two alike in four places lie in a row, a column or on a slant, and each of these is the same turned.
    expect(refusalsOf(1, { axis: 'both' })).toMatchObject([
      { code: 'not-a-choice', at: 'mirror-half › elements', got: 2, choices: ['3'], nearest: '3' },
    ]);
    expect(refusalsOf(1, { elements: 4 })).toMatchObject([
      { at: 'mirror-half › elements', choices: ['2', '3'] },
    ]);
  });

  test('R7 let no half be chosen whose turned copy looks shifted', () => {
    expect(refusalsOf(1, { response: 'ring', wrong: 'copied' })).toMatchObject([
      { code: 'not-a-choice', at: 'mirror-half › elements', got: 2, choices: ['3'], nearest: '3' },
    ]);
  });

  test('R7 leave one wrong half where one place is free', () => {
    const narrow = { response: 'point', elements: 3, choices: 3 } as const;
    expect(refusalsOf(1, narrow)).toMatchObject([
      { code: 'out-of-range', at: 'mirror-half › choices', got: 3, min: 2, max: 2 },
    ]);
    expect(refusalsOf(1, { ...narrow, wrong: 'copied' })).toEqual([]);
  });

  test('R9 let no task be larger than paper', () => {
    const large = {
      content: 'capitals',
      response: 'draw',
      deep: 3,
      along: 5,
      axis: 'both',
    } as const;
    expect(refusalsOf(4, large)).toMatchObject([{ code: 'out-of-range', got: 5, min: 2, max: 4 }]);
  });

  test('R9 offer fewer halves where four of the smallest are too many side by side', () => {
    const sized = { content: 'sizes', response: 'point', kinds: 2, elements: 3 } as const;
    expect(refusalsOf(1, { ...sized, choices: 4 })).toMatchObject([
      { code: 'out-of-range', at: 'mirror-half › choices', got: 4, min: 2, max: 3 },
    ]);
    expect(refusalsOf(1, { ...sized, choices: 3 })).toEqual([]);
  });

  test('R9 offer so many places deep as go with the fewest along where both are too many', () => {
    const wide = { axis: 'both', elements: 4, stickerMm: '25' } as const;
    expect(refusalsOf(1, { ...wide, deep: 4, along: 5 })).toMatchObject([
      { code: 'out-of-range', at: 'mirror-half › deep', got: 4, min: 2, max: 2 },
    ]);
    expect(refusalsOf(1, { ...wide, elements: 3, deep: 2, along: 2 })).toEqual([]);
  });
});

test('R2 every number of places, elements and kinds that is not refused has a telling part', () => {
  let tried = 0;
  for (const axis of PARAMETERS.axis.values) {
    for (let deep = 2; deep <= 3; deep++) {
      for (let along = 2; along <= 4; along++) {
        for (let elements = 2; elements <= 12; elements++) {
          for (let kinds = 1; kinds <= 3; kinds++) {
            const wanted = {
              axis,
              deep,
              along,
              elements,
              kinds,
              response: 'point',
              wrong: 'turned',
            } as const;
            const isPossible = elements < deep * along + (kinds > 1 ? 1 : 0) && kinds <= elements;
            const isTiny = deep * along === 4;
            if (isTiny) continue;
            tried++;
            expect(findPattern(wanted, randomFrom(1)) !== undefined, JSON.stringify(wanted)).toBe(
              isPossible,
            );
          }
        }
      }
    }
  }
  expect(tried).toBeGreaterThan(300);
});

test.each(CONTENTS)(
  'gives proven tasks of %s that fit paper at steps with a response that suits',
  (content) => {
    let made = 0;
    for (const [index] of LADDER.entries()) {
      for (const response of PARAMETERS.response.values) {
        const read = mirrorHalf.read(index + 1, { content, response }, COLOUR);
        if (!read.ok) continue;
        const values = valuesAt(index + 1, { content, response });
        for (let seed = 0; seed < 3; seed++) {
          const task = taskOf(values, seed);
          made++;
          expect(fitsUpright(leastSize(task.printed)), task.name).toBe(true);
          expect(mirrorHalf.prove(task), task.name).toEqual({ proven: true });
        }
      }
    }
    expect(made).toBeGreaterThanOrEqual(3 * 8);
  },
);
