// What is refused, and every step with every content.
import { describe, expect, test } from 'vitest';
import { randomFrom } from '../../base/index.ts';
import { shadows } from './index.ts';
import { LADDER } from './ladder.ts';
import { limitsOf } from './limits.ts';
import { SHADOW_CONTENTS, type ShadowValues } from './task.ts';
import { COLOUR, GREY, valuesAt } from './tasks-to-test.ts';

function refusalsOf(step: number, changes: Partial<ShadowValues>) {
  return limitsOf(valuesAt(step, changes), COLOUR);
}

describe('R9 refusals', () => {
  test('name the contents that have shadows of their own', () => {
    for (const content of ['colours', 'textures', 'sizes', 'dot-quantities']) {
      const read = shadows.read(1, { content }, COLOUR);
      expect(read.ok ? [] : read.refusals).toMatchObject([
        { code: 'not-a-choice', at: 'shadows › content', choices: [...SHADOW_CONTENTS] },
      ]);
    }
  });

  test('let several figures only be joined to their shadows', () => {
    expect(refusalsOf(4, { response: 'ring' })).toMatchObject([
      { code: 'not-a-choice', at: 'shadows › response', got: 'ring', nearest: 'join' },
    ]);
  });

  test('want a shadow for every figure, and room for the row', () => {
    expect(refusalsOf(9, { shadows: 3 })).toMatchObject([
      { code: 'out-of-range', at: 'shadows › shadows', got: 3, min: 4, max: 6 },
    ]);
    expect(refusalsOf(9, { shadows: 7 })).toMatchObject([
      { code: 'out-of-range', at: 'shadows › shadows', got: 7, min: 4, max: 6 },
    ]);
    expect(refusalsOf(2, { shadows: 8 })).toEqual([]);
  });

  test('R7 leave up, down and one side without mirrors, and let only directions be mirrored', () => {
    expect(refusalsOf(2, { content: 'directions' })).toMatchObject([
      { code: 'out-of-range', at: 'shadows › shadows', got: 4, min: 2, max: 3 },
    ]);
    expect(refusalsOf(2, { content: 'directions', mirrors: 'left-right' })).toEqual([]);
    expect(refusalsOf(9, { content: 'directions' })).toMatchObject([
      { code: 'out-of-range', at: 'shadows › models', got: 4, min: 1, max: 3 },
    ]);
    expect(refusalsOf(2, { mirrors: 'slanted' })).toMatchObject([
      { code: 'not-a-choice', at: 'shadows › mirrors', nearest: 'none' },
    ]);
  });
});

test('R7 no step asks for a mirror image', () => {
  expect(LADDER.every(({ values }) => values.mirrors === 'none')).toBe(true);
});

/** Steps of small pools: of directions alone three can be told apart, of Arabic-Indic numerals five. */
const STEPS_OF_FEW: Readonly<Record<string, number>> = {
  directions: 1,
  'arabic-indic-numerals': 9,
};

test.each(SHADOW_CONTENTS)(
  'gives proven tasks of %s at every step that it is not refused at',
  (content) => {
    let made = 0;
    for (const [index] of LADDER.entries()) {
      for (const style of [COLOUR, GREY]) {
        const read = shadows.read(index + 1, { content }, style);
        if (!read.ok) continue;
        made++;
        for (let seed = 0; seed < 4; seed++) {
          const task = shadows.generate(read.value, randomFrom(seed), style);
          expect(shadows.prove(task), `step ${index + 1}, seed ${seed}`).toEqual({ proven: true });
        }
      }
    }
    expect(made / 2).toBe(STEPS_OF_FEW[content] ?? LADDER.length);
  },
);
