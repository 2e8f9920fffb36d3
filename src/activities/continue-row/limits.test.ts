// Which values are refused, by which name, and what would do instead.
import { expect, test } from 'vitest';
import { LADDER } from './ladder.ts';
import { limitsOf } from './limits.ts';
import { PARAMETERS, type RowValues } from './task.ts';

const COLOUR = { print: 'colour' } as const;

function refusalOf(step: number, changes: Partial<RowValues>) {
  const rung = LADDER[step - 1];
  if (!rung) throw new Error(`no step ${step}`);
  return limitsOf({ ...rung.values, ...changes }, COLOUR)[0];
}

test.each([
  [
    'a unit of three shown fewer than twice',
    4,
    { shown: 5 },
    { at: 'shown', got: 5, min: 6, max: 10 },
  ],
  [
    'a row that could be continued in two ways',
    5,
    { unit: 'AAB', shown: 8 },
    { at: 'shown', got: 8, choices: ['6', '7', '9'], nearest: '7' },
  ],
  [
    'stickers for shapes',
    2,
    { content: 'shapes', response: 'sticker' },
    { at: 'response', nearest: 'draw' },
  ],
  [
    'drawing a picture',
    5,
    { content: 'pictures', response: 'draw' },
    { at: 'response', nearest: 'ring' },
  ],
  [
    'colouring in numerals',
    5,
    { content: 'numerals', response: 'colour-in' },
    { at: 'response', nearest: 'draw' },
  ],
  [
    'a second unit where one thing is looked at',
    1,
    { second: 'ABB' },
    { at: 'second', nearest: 'same' },
  ],
  ['four sizes', 1, { content: 'sizes', unit: 'ABCD' }, { at: 'unit', nearest: 'ABCC' }],
  ['a ring for two places', 5, { response: 'ring' }, { at: 'missing', got: 2, min: 1, max: 1 }],
  ['no wrong figure offered', 5, { choices: 2 }, { at: 'choices', got: 2, min: 3, max: 4 }],
  [
    'four sizes to choose from',
    1,
    { content: 'sizes', choices: 4 },
    { at: 'choices', got: 4, min: 2, max: 3 },
  ],
] as const)('R11 %s is refused by name, with what would do', (_, step, changes, expected) => {
  const refusal = refusalOf(step, changes);
  expect(refusal).toMatchObject({ ...expected, at: `continue-row › ${expected.at}` });
  expect(refusal).toHaveProperty('because');
});

test('R11 what a refusal offers is not refused for the same parameter again', () => {
  const { content, response, unit, second, gap } = PARAMETERS;
  for (const [index, { values }] of LADDER.entries()) {
    for (const [name, choices] of Object.entries({ content, response, unit, second, gap })) {
      for (const choice of choices.values) {
        const changed = { ...values, [name]: choice } as RowValues;
        const refusal = limitsOf(changed, COLOUR)[0];
        if (refusal?.code !== 'not-a-choice' || refusal.nearest === undefined) continue;
        const at = refusal.at.split(' › ')[1] ?? '';
        const isNumber = at === 'shown' || at === 'missing';
        const mended = { ...changed, [at]: isNumber ? Number(refusal.nearest) : refusal.nearest };
        const again = limitsOf(mended as RowValues, COLOUR)[0];
        expect(again?.at, `step ${index + 1}, ${name} ${choice}`).not.toBe(refusal.at);
      }
    }
  }
});

test('R10 a row that would not stand in one line is refused', () => {
  expect(refusalOf(6, { response: 'sticker', stickerMm: '19' })).toMatchObject({
    code: 'out-of-range',
    at: 'continue-row › shown',
    max: 6,
  });
});
