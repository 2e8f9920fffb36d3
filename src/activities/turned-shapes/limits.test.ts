// What is refused, and every step with every content.
import { describe, expect, test } from 'vitest';
import { randomFrom } from '../../base/index.ts';
import { turnedShapes } from './index.ts';
import { LADDER } from './ladder.ts';
import { limitsOf } from './limits.ts';
import { CONTENTS, type TurnedValues } from './task.ts';
import { COLOUR, GREY, valuesAt } from './tasks-to-test.ts';

function refusalsOf(step: number, changes: Partial<TurnedValues>) {
  return limitsOf(valuesAt(step, changes), COLOUR);
}

describe('R10 refusals', () => {
  test('R2 keep letters, signs and pictures from slants', () => {
    expect(refusalsOf(11, { content: 'capitals' })).toMatchObject([
      {
        code: 'not-a-choice',
        at: 'turned-shapes › turn',
        got: 'eighth',
        choices: ['none', 'quarter', 'half'],
        nearest: 'quarter',
      },
    ]);
    expect(refusalsOf(5, { content: 'capitals' })).toEqual([]);
  });

  test('R7 let nothing be mirrored that is its own mirror image once turned', () => {
    expect(refusalsOf(5, { mirrors: true })).toMatchObject([
      { code: 'not-a-choice', at: 'turned-shapes › mirrors', got: true, nearest: 'false' },
    ]);
    expect(refusalsOf(5, { mirrors: true, content: 'small-letters' })).toEqual([]);
  });

  test('R1 leave two wrong ones', () => {
    expect(refusalsOf(3, { matches: 3 })).toMatchObject([
      { code: 'out-of-range', at: 'turned-shapes › matches', got: 3, min: 1, max: 2 },
    ]);
  });

  test('R5 let something about the right one be changed', () => {
    expect(refusalsOf(1, { resize: 'none' })).toMatchObject([
      { code: 'not-a-choice', at: 'turned-shapes › resize', got: 'none', nearest: 'bigger' },
    ]);
  });

  test('R6 leave pictures their colours', () => {
    expect(refusalsOf(6, { content: 'pictures' })).toMatchObject([
      { code: 'not-a-choice', at: 'turned-shapes › colours', choices: ['one'], nearest: 'one' },
    ]);
  });

  test('R9 let no row be longer than a page', () => {
    expect(refusalsOf(9, { layout: 'row' })).toMatchObject([
      { code: 'not-a-choice', at: 'turned-shapes › layout', got: 'row', nearest: 'grid' },
    ]);
    expect(refusalsOf(7, { layout: 'row' })).toEqual([]);
  });

  test('a content that is no form is refused by name, with those that are', () => {
    const read = turnedShapes.read(1, { content: 'colours' }, COLOUR);
    expect(read).toMatchObject({
      ok: false,
      refusals: [{ code: 'not-a-choice', at: 'turned-shapes › content', choices: CONTENTS }],
    });
  });
});

test('R7 no step has mirror images', () => {
  expect(LADDER.every(({ values }) => !values.mirrors)).toBe(true);
});

test.each(CONTENTS)(
  'gives proven tasks of %s at every step that it is not refused at',
  (content) => {
    let made = 0;
    for (const [index] of LADDER.entries()) {
      for (const mirrors of [false, true]) {
        for (const style of [COLOUR, GREY]) {
          const read = turnedShapes.read(index + 1, { content, mirrors }, style);
          if (!read.ok) continue;
          made++;
          for (let seed = 0; seed < 3; seed++) {
            const task = turnedShapes.generate(read.value, randomFrom(seed), style);
            const name = `step ${index + 1}, seed ${seed}, ${mirrors ? 'mirrored' : 'plain'}`;
            expect(turnedShapes.prove(task), name).toEqual({ proven: true });
          }
        }
      }
    }
    expect(made).toBeGreaterThanOrEqual(10);
  },
);
