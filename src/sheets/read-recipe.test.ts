// What reading a recipe promises: what is right comes back whole, what is wrong is named with its path.
import { describe, expect, it } from 'vitest';
import { activityOf } from '../activities/index.ts';
import { randomFrom } from '../base/index.ts';
import { AIM_TOLERANCE, meanDifficulty, sampleSeeds } from '../learner/index.ts';
import { RECIPE_CHARACTERS, readRecipe, readRecipeText } from './read-recipe.ts';
import type { RecipePart } from './recipe.ts';
import { valuesOf } from './sheet-values.ts';

const PART = { activity: 'in-every-box', step: 2, sheets: 3 };
const RECIPE = { format: 'samewise.recipe', version: 1, parts: [PART] };
const withPart = (changes: object) => ({ ...RECIPE, parts: [{ ...PART, ...changes }] });

const refusalsOf = (given: unknown) => {
  const read = readRecipe(given);
  return read.ok ? [] : read.refusals;
};

/** On seeds that no search has seen. */
function meanLogits(part: RecipePart | undefined): number {
  const values = part && valuesOf({ ...part, print: 'colour' });
  if (!part || !values?.ok) throw new Error('expected a part with values');
  const seeds = sampleSeeds(150, randomFrom(31));
  return meanDifficulty(activityOf(part.activity), values.value, seeds, { print: 'colour' }).logits;
}

describe('a recipe', () => {
  it('takes the usual page, print and values where it says nothing', () => {
    expect(readRecipe(RECIPE)).toEqual({
      ok: true,
      value: {
        page: { paper: 'A4', orientation: 'portrait' },
        print: 'colour',
        parts: [{ ...PART, values: {} }],
      },
    });
  });

  it('names the only colours, of which each part is judged', () => {
    const parts = [{ activity: 'by-key', step: 1, sheets: 1, values: { response: 'sticker' } }];
    const read = readRecipe({ ...RECIPE, parts, colours: ['blue', 'red', 'green'] });
    expect(read).toMatchObject({ ok: true, value: { colours: ['red', 'green', 'blue'] } });
    expect(refusalsOf({ ...RECIPE, parts, colours: ['red'] })).toMatchObject([
      {
        at: 'recipe › parts[0] › by-key › response',
        because: { key: 'colours.few', values: { count: 1 } },
      },
    ]);
    expect(refusalsOf({ ...RECIPE, colours: ['mauve'] })).toMatchObject([
      { code: 'not-a-choice', at: 'recipe › colours[0]', got: 'mauve' },
    ]);
    expect(refusalsOf({ ...RECIPE, colours: [] }).map(({ at }) => at)).toEqual([
      'recipe › colours',
    ]);
  });

  it('names curricula, and refuses one that is not known', () => {
    const goals = ['eyfs', 'te-whariki'];
    expect(readRecipe({ ...RECIPE, goals })).toMatchObject({ ok: true, value: { goals } });
    expect(refusalsOf({ ...RECIPE, goals: ['maths'] })).toMatchObject([
      { code: 'not-a-choice', at: 'recipe › goals[0]', got: 'maths' },
    ]);
  });

  it('finds a step and values for a part that says how hard it is to be', () => {
    const part = { activity: 'find-the-same', difficulty: -2.2, sheets: 2 };
    const read = readRecipe({ ...RECIPE, parts: [{ ...part, values: { content: 'pictures' } }] });
    if (!read.ok) throw new Error(JSON.stringify(read.refusals));
    const [found] = read.value.parts;
    expect(found).toMatchObject({ activity: 'find-the-same', values: { content: 'pictures' } });
    expect(found?.step).toBeGreaterThan(1);
    const logits = meanLogits(read.value.parts[0]);
    expect(Math.abs(logits + 2.2)).toBeLessThanOrEqual(AIM_TOLERANCE);
  });

  it.each([
    [{ step: 2, difficulty: 0 }, 'recipe › parts[0] › difficulty'],
    [{ step: undefined, difficulty: undefined }, 'recipe › parts[0] › step'],
    [{ step: undefined, difficulty: 50 }, 'recipe › parts[0] › in-every-box › difficulty'],
  ])('refuses %j at %s', (changes, at) => {
    expect(refusalsOf(withPart(changes)).map((refusal) => refusal.at)).toEqual([at]);
  });

  it('mixes activities and keeps all that it says', () => {
    const parts = [
      { activity: 'in-every-box', step: 1, values: { boxes: 4 }, tasks: 2, sheets: 1 },
      { activity: 'by-key', step: 1, values: {}, sheets: 4 },
      { activity: 'copy-pattern', step: 1, values: {}, sheets: 5000 - 5 },
    ];
    const page = { paper: 'Letter', orientation: 'landscape' };
    const recipe = { ...RECIPE, seed: 4294967295, page, print: 'grey', parts };
    expect(readRecipe(recipe)).toEqual({
      ok: true,
      value: { seed: 4294967295, page, print: 'grey', parts },
    });
  });

  it.each([
    [null, { code: 'wrong-type', at: 'recipe' }],
    [[], { code: 'wrong-type', at: 'recipe' }],
    [{}, { code: 'missing', at: 'recipe › format' }],
    [
      { ...RECIPE, format: 'samewise.pack' },
      { code: 'not-a-choice', at: 'recipe › format' },
    ],
    [
      { ...RECIPE, version: 2 },
      { code: 'unknown-version', got: 2, known: [1] },
    ],
    [
      { ...RECIPE, format: 'samewise.records', version: 3 },
      { code: 'not-a-choice', at: 'recipe › format' },
    ],
    [
      { ...RECIPE, version: '1' },
      { code: 'not-a-choice', at: 'recipe › version' },
    ],
    [
      { ...RECIPE, seed: -1 },
      { code: 'out-of-range', at: 'recipe › seed', min: 0, max: 4294967295 },
    ],
    [
      { ...RECIPE, seed: 1e300 },
      { code: 'out-of-range', at: 'recipe › seed' },
    ],
    [
      { ...RECIPE, seed: Number.NaN },
      { code: 'wrong-type', at: 'recipe › seed' },
    ],
    [
      { ...RECIPE, colour: 1 },
      { code: 'unknown-field', at: 'recipe', got: 'colour' },
    ],
    [
      { ...RECIPE, page: { paper: 'A6', orientation: 'portrait' } },
      { code: 'not-a-choice', at: 'recipe › page.paper', choices: ['A4', 'Letter', 'A3', 'A5'] },
    ],
    [
      { ...RECIPE, page: { paper: 'A4' } },
      { code: 'missing', at: 'recipe › page.orientation' },
    ],
    [
      { ...RECIPE, print: 'color' },
      { code: 'not-a-choice', at: 'recipe › print' },
    ],
    [
      { ...RECIPE, parts: [] },
      { code: 'unreadable', at: 'recipe › parts' },
    ],
    [
      { ...RECIPE, parts: {} },
      { code: 'wrong-type', at: 'recipe › parts' },
    ],
    [
      withPart({ activity: 'in-evry-box' }),
      { code: 'not-a-choice', at: 'recipe › parts[0].activity' },
    ],
    [
      withPart({ activity: '__proto__' }),
      { code: 'not-a-choice', at: 'recipe › parts[0].activity' },
    ],
    [withPart({ step: 0 }), { code: 'out-of-range', at: 'recipe › parts[0].step', got: 0 }],
    [withPart({ step: 99 }), { code: 'out-of-range', at: 'recipe › parts[0].step', got: 99 }],
    [withPart({ step: 1.5 }), { code: 'wrong-type', at: 'recipe › parts[0].step' }],
    [
      withPart({ tasks: 13 }),
      { code: 'out-of-range', at: 'recipe › parts[0].tasks', min: 1, max: 12 },
    ],
    [
      withPart({ sheets: 5001 }),
      { code: 'out-of-range', at: 'recipe › parts[0].sheets', max: 5000 },
    ],
    [withPart({ sheets: '3' }), { code: 'wrong-type', at: 'recipe › parts[0].sheets', got: '3' }],
    [
      withPart({ values: { boxs: 4 } }),
      { code: 'unknown-field', at: 'recipe › parts[0].values', got: 'boxs' },
    ],
    [
      withPart({ values: { boxes: 700 } }),
      { code: 'out-of-range', at: 'recipe › parts[0].values.boxes' },
    ],
    [
      withPart({ values: { boxes: true } }),
      { code: 'wrong-type', at: 'recipe › parts[0].values.boxes' },
    ],
    [
      withPart({ values: { content: 'colors' } }),
      { code: 'not-a-choice', at: 'recipe › parts[0].values.content' },
    ],
    [withPart({ values: [] }), { code: 'wrong-type', at: 'recipe › parts[0].values' }],
  ])('%j is refused with its path', (given, refusal) => {
    expect(refusalsOf(given)[0]).toMatchObject(refusal);
  });

  it('of more sheets in all than a pack holds is refused', () => {
    const parts = [PART, { ...PART, sheets: 4998 }];
    expect(refusalsOf({ ...RECIPE, parts })[0]).toMatchObject({
      code: 'too-big',
      got: 5001,
      unit: { key: 'amount.sheets' },
    });
  });

  it('of values that cannot go together is refused in the words of the activity', () => {
    const given = withPart({ step: 1, values: { shared: 3, figures: 2 } });
    expect(refusalsOf(given)[0]?.at).toMatch(/^recipe › parts\[0\] › in-every-box › /);
  });

  it('tells all its faults, not the first alone', () => {
    expect(refusalsOf({ ...withPart({ step: 0, sheets: 0 }), seed: -1 })).toHaveLength(3);
  });
});

describe('the text of a recipe', () => {
  it('is read', () => {
    expect(readRecipeText(JSON.stringify(RECIPE)).ok).toBe(true);
  });

  it('of 50 MB is refused before parsing', () => {
    const read = readRecipeText(`[${' '.repeat(50_000_000)}]`);
    expect(read).toMatchObject({
      ok: false,
      refusals: [{ code: 'too-big', at: 'recipe', got: 50_000_002, max: RECIPE_CHARACTERS }],
    });
  });

  it('with keys that reach into prototypes is refused and reaches nothing', () => {
    const hostile = JSON.stringify(RECIPE).replace('"step"', '"__proto__":{"sheets":9},"step"');
    expect(readRecipeText(hostile)).toMatchObject({
      ok: false,
      refusals: [{ code: 'unknown-field', at: 'recipe › parts[0]', got: '__proto__' }],
    });
    expect('sheets' in {}).toBe(false);
  });
});
