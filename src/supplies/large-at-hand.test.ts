// Large print of nothing but what is in the house: its stickers are larger than the usual ones of the same sheet.
import { expect, test } from 'vitest';
import { packMaterials, type Recipe, type Stock } from '../sheets/index.ts';
import { makePackAtHand } from './pack-at-hand.ts';

function packWith(diameterMm: number) {
  const colours = ['red', 'blue', 'green'] as const;
  const onlyWith: Stock = {
    stickers: colours.map((colour) => ({ colour, diameterMm, count: 40 })),
    crayons: [],
    tools: [],
    printer: 'colour',
  };
  const values = { response: 'sticker' };
  const recipe: Recipe & { seed: number } = {
    seed: 3,
    page: { paper: 'A4', orientation: 'portrait' },
    print: 'colour',
    size: 'large',
    onlyWith,
    parts: [{ activity: 'copy-pattern', step: 2, values, sheets: 1 }],
  };
  const pack = makePackAtHand(recipe);
  if (!pack.ok) throw new Error(JSON.stringify(pack.refusals));
  return packMaterials(pack.value.sheets).stickers;
}

test.each([13, 16, 19])('with stickers of %d mm places are found that take them', (diameterMm) => {
  const stickers = packWith(diameterMm);
  expect(stickers.length).toBeGreaterThan(0);
  for (const sticker of stickers) {
    expect(['red', 'blue', 'green']).toContain(sticker.colour);
    // A sticker fits a place that is as large as it is or up to 4 mm larger (common practice, no source).
    expect(sticker.diameterMm).toBeGreaterThanOrEqual(diameterMm);
    expect(sticker.diameterMm).toBeLessThanOrEqual(diameterMm + 4);
  }
});
