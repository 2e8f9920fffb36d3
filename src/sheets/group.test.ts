// What a pack for a group promises: sheets of one's own, equally hard, in order.
import { describe, expect, test } from 'vitest';
import { activityOf } from '../activities/index.ts';
import { difficultyOf, sheetDifficulty } from '../learner/index.ts';
import type { Text } from '../page/index.ts';
import { childOnSheet } from './child-on-sheet.ts';
import { makeGroupPack } from './group.ts';
import { makePack } from './make-pack.ts';
import { markingPages } from './marking-table.ts';
import type { SeededRecipe } from './pack.ts';
import { readRecipe } from './read-recipe.ts';
import type { GroupChild } from './recipe.ts';
import type { Sheet } from './sheet.ts';
import { sheetPage } from './sheet-page.ts';
import { DEFAULT_PAGE } from './sheet-spec.ts';
import { shownOn } from './shown-on.ts';

const CHILDREN = ['Wren', 'Alder', 'Moss', 'Clover', 'Fern', 'Robin', 'Willow', 'Sorrel'];

function recipeFor(
  children: readonly GroupChild[],
  facts: Partial<SeededRecipe> = {},
): SeededRecipe {
  return {
    seed: 7,
    page: DEFAULT_PAGE,
    print: 'colour',
    parts: [
      { activity: 'in-every-box', step: 4, values: {}, sheets: 2 },
      { activity: 'odd-one-out', step: 5, values: {}, sheets: 1 },
    ],
    children,
    ...facts,
  };
}

function packFor(recipe: SeededRecipe): readonly Sheet[] {
  const made = makeGroupPack(recipe);
  if (!made.ok) throw new Error(JSON.stringify(made.refusals));
  return made.value.sheets;
}

function logitsOf({ spec, tasks }: Sheet): number {
  const activity = activityOf(spec.activity);
  return sheetDifficulty(tasks.map(({ printed }) => difficultyOf(activity, printed))).logits;
}

const group = CHILDREN.map((name) => ({ name }));

test('two children of one name have their number behind it on their sheets, others have not', () => {
  const sheets = packFor(recipeFor([{ name: 'Wren' }, { name: 'Moss' }, { name: 'Wren' }]));
  const named = sheets.map(({ child }) => childOnSheet(child));
  expect([...new Set(named)]).toEqual(['Wren 1', 'Moss', 'Wren 3']);
});

test('more sheets than a pack may hold over all children are refused before any is made', () => {
  const parts = [{ activity: 'odd-one-out', step: 5, values: {}, sheets: 501 }] as const;
  const children = Array.from({ length: 11 }, (_, index) => ({ name: `Wren ${index}` }));
  expect(makePack(recipeFor(children, { parts }))).toMatchObject({
    refusals: [{ code: 'too-big', got: 5511 }],
  });
});

describe('a pack for a group', () => {
  const sheets = packFor(recipeFor(group));

  test('gives each child all parts, by child in the order of the names', () => {
    expect(sheets.map(({ child, spec }) => `${child?.name} ${spec.activity}`)).toEqual(
      CHILDREN.flatMap((name) => [
        `${name} in-every-box`,
        `${name} in-every-box`,
        `${name} odd-one-out`,
      ]),
    );
  });

  test('has no two sheets alike', () => {
    expect(new Set(sheets.map(shownOn)).size).toBe(sheets.length);
  });

  test('has sheets of one part within a quarter of a logit of each other', () => {
    for (const activity of ['in-every-box', 'odd-one-out']) {
      const logits = sheets.filter(({ spec }) => spec.activity === activity).map(logitsOf);
      expect(Math.max(...logits) - Math.min(...logits)).toBeLessThanOrEqual(0.25);
    }
  });

  test.each(['look-and-remember', 'tangle', 'same-or-different'] as const)(
    'keeps to that where sheets of a step differ by more among themselves: %s',
    (activity) => {
      const parts = [{ activity, step: 6, values: {}, sheets: 2 }];
      const logits = packFor(recipeFor(group, { parts })).map(logitsOf);
      expect(Math.max(...logits) - Math.min(...logits)).toBeLessThanOrEqual(0.25);
    },
  );

  test('can lie by activity, the same sheets for the same children', () => {
    const sorted = packFor(recipeFor(group, { sortedBy: 'activity' }));
    const activities = sorted.map(({ spec }) => spec.activity);
    expect(activities).toEqual([...activities].sort());
    const key = ({ code, child }: Sheet) => `${child?.number} ${code}`;
    expect(sorted.map(key).sort()).toEqual(sheets.map(key).sort());
  });

  test('gives children of another step theirs, and leaves the sheets of the others as they are', () => {
    const shifted = packFor(
      recipeFor([...group, { name: 'Bay', shift: 2 }, { name: 'Ivy', shift: -9 }]),
    );
    const stepsOf = (name: string) =>
      shifted.filter(({ child }) => child?.name === name).map(({ spec }) => spec.step);
    expect(stepsOf('Bay')).toEqual([6, 6, 7]);
    expect(stepsOf('Ivy')).toEqual([1, 1, 1]);
    expect(shifted.slice(0, sheets.length).map(({ code }) => code)).toEqual(
      sheets.map(({ code }) => code),
    );
  });

  test.each([
    ['all at one step', group, {}],
    ['at several steps', group.map((child, place) => ({ ...child, shift: (place % 3) - 1 })), {}],
    ['with the letters of their names', group, { ownLetters: true }],
    // So few different sheets that children of several steps would often get the same one.
    [
      'of few different sheets',
      group.slice(0, 5).map((child, place) => ({ ...child, shift: place % 2 })),
      { parts: [{ activity: 'continue-row', step: 1, values: {}, tasks: 1, sheets: 2 }] },
    ],
  ] as const)(
    'gives its first children the sheets that they have in the whole: %s',
    (_, children, facts) => {
      const recipe = recipeFor(children, facts);
      const whole = packFor(recipe);
      for (let first = 1; first <= children.length; first++) {
        const made = makeGroupPack(recipe, () => {}, first);
        const sheets = made.ok ? made.value.sheets : [];
        expect(sheets).toEqual(whole.filter(({ child }) => (child?.number ?? 0) <= first));
      }
    },
  );

  test('refuses more children than there are equally hard sheets, and says how many there are', () => {
    const parts = [
      {
        activity: 'continue-row',
        step: 1,
        values: { content: 'colours' },
        tasks: 1,
        sheets: 10,
      },
    ] as const;
    const many = Array.from({ length: 12 }, (_, number) => ({ name: `Child ${number}` }));
    const made = makeGroupPack(recipeFor(many, { parts }));
    expect(made).toMatchObject({
      ok: false,
      refusals: [{ code: 'does-not-fit', at: 'continue-row › children', got: 120 }],
    });
  });
});

describe('a recipe for a group', () => {
  const recipe = (children: unknown) =>
    readRecipe({
      format: 'samewise.recipe',
      version: 1,
      parts: [{ activity: 'in-every-box', step: 1, sheets: 1 }],
      children,
    });

  test.each([
    ['no children', []],
    ['too many children', Array.from({ length: 501 }, () => ({ name: 'Fern' }))],
    ['a name that is too long', [{ name: 'x'.repeat(201) }]],
    ['an empty name', [{ name: '' }]],
  ])('is refused for %s', (_, children) => {
    expect(recipe(children).ok).toBe(false);
  });

  test('takes names in any script', () => {
    const children = [{ name: 'ليلى' }, { name: 'आर्या', shift: 1 }, { name: '🌿 Fern' }];
    expect(recipe(children)).toMatchObject({ ok: true, value: { children } });
  });
});

describe('the table for marking', () => {
  const namesOn = (sheets: readonly Sheet[]) =>
    markingPages(sheets).map(({ nodes }) =>
      nodes.filter((node): node is Text => node.kind === 'text').map(({ text }) => text),
    );

  test('has a row for each child, two of one name apart', () => {
    const sheets = packFor(recipeFor([{ name: 'Wren' }, { name: 'Wren' }, { name: 'ليلى' }]));
    const [words = []] = namesOn(sheets);
    expect(words.filter((word) => word === 'Wren')).toHaveLength(2);
    expect(words.join(' ')).not.toContain('ليلى');
    expect(words).toContain('3 · odd one out, step 5');
  });

  test('has the number that stands on the sheets of a child whose name cannot be printed', () => {
    const sheets = packFor(recipeFor([{ name: 'Wren' }, { name: 'ליאת' }]));
    const [wren = '', other = ''] = ['Wren', 'ליאת'].map((name) =>
      JSON.stringify(
        sheets.filter(({ child }) => child?.name === name).map((each) => sheetPage(each)),
      ),
    );
    expect(wren).toContain('"Wren"');
    expect(other).toContain('"text":"2"');
  });

  test('is not printed for a pack for nobody in particular', () => {
    expect(markingPages([])).toEqual([]);
  });
});
