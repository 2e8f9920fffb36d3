// What making a pack promises: the same recipe the same pack, all sheets different, more of them changes none.
import { describe, expect, it } from 'vitest';
import { makePack } from './make-pack.ts';
import type { SeededRecipe } from './pack.ts';
import { packFileText } from './pack-file.ts';

const RECIPE: SeededRecipe = {
  seed: 7,
  page: { paper: 'A4', orientation: 'portrait' },
  print: 'colour',
  parts: [
    { activity: 'in-every-box', step: 1, values: {}, sheets: 4 },
    { activity: 'by-key', step: 1, values: {}, sheets: 2 },
    { activity: 'copy-pattern', step: 1, values: {}, sheets: 2 },
  ],
};
const made = (recipe: SeededRecipe) => {
  const pack = makePack(recipe);
  if (!pack.ok) throw new Error(JSON.stringify(pack.refusals));
  return pack.value;
};

describe('a pack', () => {
  it('is the same for the same recipe, and another for another seed', () => {
    expect(packFileText(made(RECIPE))).toBe(packFileText(made(RECIPE)));
    expect(packFileText(made({ ...RECIPE, seed: 8 }))).not.toBe(packFileText(made(RECIPE)));
  });

  it('has the sheets of its parts in order, no two alike', () => {
    const { sheets } = made(RECIPE);
    expect(sheets.map(({ spec }) => spec.activity)).toEqual([
      ...Array.from({ length: 4 }, () => 'in-every-box'),
      'by-key',
      'by-key',
      'copy-pattern',
      'copy-pattern',
    ]);
    expect(new Set(sheets.map(({ code }) => code)).size).toBe(sheets.length);
    expect(new Set(sheets.map(({ tasks }) => JSON.stringify(tasks))).size).toBe(sheets.length);
  });

  it('keeps its first sheets when more are asked for', () => {
    const [part] = RECIPE.parts;
    if (!part) throw new Error('the recipe has parts');
    const few = made({ ...RECIPE, parts: [{ ...part, sheets: 2 }] });
    const many = made({ ...RECIPE, parts: [{ ...part, sheets: 5 }] });
    expect(many.sheets.slice(0, 2)).toEqual(few.sheets);
  });

  it('tells how far it is, from none to all', () => {
    const heard: string[] = [];
    makePack(RECIPE, (done, all) => heard.push(`${done}/${all}`));
    expect(heard).toEqual(['0/8', '1/8', '2/8', '3/8', '4/8', '5/8', '6/8', '7/8', '8/8']);
  });

  it('of which one part cannot be made is not made, and says which part', () => {
    const parts = [
      ...RECIPE.parts,
      { activity: 'by-key', step: 1, values: {}, tasks: 12, sheets: 1 } as const,
    ];
    const pack = makePack({ ...RECIPE, parts });
    expect(pack).toMatchObject({
      ok: false,
      refusals: [{ code: 'does-not-fit', at: 'recipe › parts[3] › by-key › tasks', got: 12 }],
    });
  });
});
