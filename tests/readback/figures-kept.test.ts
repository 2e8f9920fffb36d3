// Reads pages in both directions of reading back from pixels: the same figures in the same order, none turned round.
import { describe, expect, test } from 'vitest';
import { testSeed } from '../seed.ts';
import { inReadingOrder, tasksOf } from './boxes.ts';
import { type Look, lookAt, silhouetteDifference } from './looks.ts';
import { inMirror, type PrintedSheet, printSheets, type Wanted } from './printed-sheets.ts';
import type { Area } from './raster.ts';

const DPI = 100;
/** How much of a silhouette blurs at its edge. */
const BLUR = 0.12;
const SEED = testSeed('figures on mirrored pages read back');

const SHEETS: readonly Wanted[] = ['directions', 'capitals', 'numerals', 'pictures'].map(
  (content, index) => ({
    activity: 'find-the-same',
    step: 1,
    values: { content },
    seed: SEED + index,
  }),
);

/** Every figure in reading order as it looks on paper: places are found in the mirror where the page is read from there. */
function looksOn({ wanted, raster }: PrintedSheet): readonly Look[] {
  const isMirrored = wanted.language !== undefined;
  const paper = isMirrored ? inMirror(raster) : raster;
  const onPaper = (area: Area): Area =>
    isMirrored
      ? { ...area, left: raster.width - 1 - area.right, right: raster.width - 1 - area.left }
      : area;
  return tasksOf(raster).flatMap((task) => {
    const choices = task.filter(({ inside }) => inside.length === 0);
    const models = task.flatMap(({ inside }) => inside);
    return [...models, ...inReadingOrder(choices)].map((area) => lookAt(paper, onPaper(area)));
  });
}

describe('pages read from the right', () => {
  test('show by their pixels alone the same arrows, letters, numerals and pictures as pages read from the left', async () => {
    const both = SHEETS.flatMap((wanted): Wanted[] => [wanted, { ...wanted, language: 'ar' }]);
    const printed = await printSheets(both, DPI);
    SHEETS.forEach((wanted, index) => {
      const [left, right] = [printed[2 * index], printed[2 * index + 1]];
      if (!left || !right) throw new Error('a sheet is missing');
      const [one, other] = [looksOn(left), looksOn(right)];
      expect(one.length).toBeGreaterThan(4);
      expect(other.length).toBe(one.length);
      const apart = one.map((look, at) => silhouetteDifference(look, other[at] ?? look));
      expect(Math.max(...apart), JSON.stringify(wanted)).toBeLessThan(BLUR);
    });
  });

  test('would be told from pages whose figures are turned round', async () => {
    const [sheet] = await printSheets(
      [{ activity: 'find-the-same', step: 3, values: { content: 'capitals' }, seed: SEED }],
      DPI,
    );
    if (!sheet) throw new Error('the sheet is missing');
    const turned = { ...sheet, raster: inMirror(sheet.raster) };
    const [one, other] = [looksOn(sheet), looksOn(turned)];
    // Some letters are their own mirror images, and the order of a row is another: more than one must differ.
    const apart = one.map((look, at) => silhouetteDifference(look, other[at] ?? look));
    expect(apart.filter((difference) => difference > BLUR).length).toBeGreaterThan(1);
  });
});
