// What reading the options of `pack` promises: the recipe they mean, or a refusal that names the option.
import { describe, expect, it } from 'vitest';
import { activityOf } from '../activities/index.ts';
import type { Refusal } from '../base/index.ts';
import { sentenceOf } from '../words/index.ts';
import { Refused } from './failure.ts';
import { type RecipeOptions, recipeOf } from './recipe-options.ts';

const BY_KEY: RecipeOptions = { activity: 'by-key', set: [] };

function refusalsOf(options: Partial<RecipeOptions>): readonly Refusal[] {
  try {
    recipeOf({ ...BY_KEY, ...options });
    return [];
  } catch (error) {
    if (error instanceof Refused) return error.refusals;
    throw error;
  }
}

describe('the options of a pack', () => {
  it('mean one sheet of the first step on the usual page where they say no more', () => {
    expect(recipeOf(BY_KEY)).toEqual({
      page: { paper: 'A4', orientation: 'portrait' },
      print: 'colour',
      parts: [{ activity: 'by-key', step: 1, values: {}, sheets: 1 }],
    });
  });

  it('name the only colours, each once in the order of their names', () => {
    expect(recipeOf({ ...BY_KEY, colours: 'Green, red,blue,red' }).colours).toEqual([
      'red',
      'green',
      'blue',
    ]);
    expect(refusalsOf({ colours: 'red,blu' })).toMatchObject([
      { code: 'not-a-choice', at: '--colours', got: 'blu' },
    ]);
    expect(refusalsOf({ colours: 'red' })).toMatchObject([
      {
        at: 'by-key › response',
        because: { space: 'reasons', key: 'colours.few', values: { count: 1 } },
      },
    ]);
  });

  it('find step and values for a difficulty, and keep what is set', () => {
    const [part] = recipeOf({ ...BY_KEY, difficulty: '-0.5', set: ['entries=3'] }).parts;
    expect(part).toMatchObject({ activity: 'by-key', sheets: 1 });
    const own = activityOf('by-key').ladder[(part?.step ?? 0) - 1]?.values;
    expect({ ...own, ...part?.values }).toMatchObject({ entries: 3 });
  });

  it.each([
    [{ difficulty: '40' }, 'by-key › difficulty'],
    [{ difficulty: 'hard' }, '--difficulty'],
    [{ difficulty: '0', step: '2' }, '--difficulty'],
    [{ difficulty: '0', age: '4' }, '--difficulty'],
  ])('refuse %j at %s', (options, at) => {
    expect(refusalsOf(options).map((refusal) => refusal.at)).toEqual([at]);
  });

  it('name curricula with commas between, in any case, and refuse unknown ones', () => {
    expect(recipeOf({ ...BY_KEY, goals: 'head-start, NCF-FS' }).goals).toEqual([
      'head-start',
      'ncf-fs',
    ]);
    expect(refusalsOf({ goals: 'head-start,maths' })).toMatchObject([
      { code: 'not-a-choice', at: '--goals', got: 'maths' },
    ]);
  });

  it('are read one by one, choices in any case', () => {
    const options = {
      step: '3',
      tasks: '2',
      sheets: '10',
      seed: '0',
      paper: 'letter',
      orientation: 'Landscape',
      print: 'GREY',
      set: ['entries=3', ' balanced = no '],
    };
    expect(recipeOf({ ...BY_KEY, ...options })).toEqual({
      seed: 0,
      page: { paper: 'Letter', orientation: 'landscape' },
      print: 'grey',
      parts: [
        {
          activity: 'by-key',
          step: 3,
          values: { entries: 3, balanced: false },
          sheets: 10,
          tasks: 2,
        },
      ],
    });
  });

  it.each<readonly [Partial<RecipeOptions>, RegExp]>([
    [{ step: '999' }, /^--step: expected 1 to \d+, got 999\. Use \d+\.$/],
    [{ step: 'NaN' }, /^--step: expected a whole number from 1 to \d+, got "NaN"\.$/],
    [{ step: '1.5' }, /^--step: expected a whole number from 1 to \d+, got "1\.5"\.$/],
    [{ step: '' }, /^--step: expected a whole number from 1 to \d+, got ""\.$/],
    [{ step: '1', age: '4' }, /^--age: expected one of --step, --age and --difficulty/],
    [{ age: '9' }, /^--age: expected 3 to 5, got 9\. Use 5\.$/],
    [{ tasks: '13' }, /^--tasks: expected 1 to 12, got 13\. Use 12\.$/],
    [{ sheets: '5001' }, /^--sheets: expected 1 to 5000, got 5001\. Use 5000\.$/],
    [{ sheets: '1e3' }, /^--sheets: expected a whole number from 1 to 5000, got "1e3"\.$/],
    [{ seed: '-1' }, /^--seed: expected 0 to 4294967295, got -1\. Use 0\.$/],
    [{ seed: '4294967296' }, /^--seed: expected 0 to 4294967295/],
    [{ seed: '9'.repeat(400) }, /^--seed: expected 0 to 4294967295/],
    [
      { paper: 'A6' },
      /^--paper: expected one of A4, Letter, A3, A5, got "A6"\. Did you mean A4\?$/,
    ],
    [{ orientation: 'up' }, /^--orientation: expected one of portrait, landscape, got "up"\.$/],
    [{ set: ['entries'] }, /^--set: expected a parameter and its value, such as boxes=4/],
    [{ set: ['=3'] }, /^--set: expected a parameter and its value/],
    [{ set: ['entires=3'] }, /^--set: expected one of .* Did you mean entries\?$/],
    [{ set: ['__proto__=1'] }, /^--set: expected one of .*, got "__proto__"\.$/],
    [{ set: ['entries=3', 'entries=4'] }, /^--set entries: expected each parameter once/],
    [{ set: ['balanced=maybe'] }, /^--set balanced: expected one of yes, no, true, false/],
    [
      { recipe: 'recipe.json' },
      /^--activity: expected either a recipe or the options of one activity/,
    ],
  ])('with %j are refused by name', (options, sentence) => {
    expect(refusalsOf(options).map(sentenceOf).join('\n')).toMatch(sentence);
  });
});
