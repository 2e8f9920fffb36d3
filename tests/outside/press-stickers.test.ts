// Places for stickers as they come out of the printer: measured in the pixels at 300 dpi against the sticker.
import { expect, test } from 'vitest';
import { ACTIVITY_IDS, activityOf } from '../../src/activities/index.ts';
import { makeSheet, type Sheet, sheetPage } from '../../src/sheets/index.ts';
import { type Area, areasOf, isInked, rasterise } from '../readback/raster.ts';
import { pdfOf } from './press-reading.ts';

const DPI = 300;
const mmOf = (pixels: number) => (pixels * 25.4) / DPI;
/** What a sticker may be off before it shows: the half of a printed line (by judgement). */
const OFF_MM = 0.2;
/** Round areas this near to the sticker's size are taken for places of stickers. */
const NEAR_MM = 1.2;
const SEED = 5;

/** The first step of the ladder on which there is room for stickers of this size. */
function sheetWith(activity: Sheet['spec']['activity'], stickerMm: string): Sheet {
  const page = { paper: 'A4', orientation: 'portrait' } as const;
  for (const [index] of activityOf(activity).ladder.entries()) {
    const values = { response: 'sticker', stickerMm };
    for (const tasks of [4, 2, 1]) {
      const spec = { activity, step: index + 1, values, seed: SEED, tasks, page } as const;
      const sheet = makeSheet({ ...spec, print: 'colour' });
      if (sheet.ok) return sheet.value;
    }
  }
  throw new Error(`${activity} › ${stickerMm} mm: no step takes stickers of this size`);
}

/** How many stickers of this size the sheet's answers take. */
function stickersOn({ spec, tasks }: Sheet, stickerMm: number): number {
  const { materials } = activityOf(spec.activity);
  return tasks
    .flatMap((task) => materials(task))
    .reduce(
      (sum, material) =>
        material.kind === 'sticker' && material.diameterMm === stickerMm
          ? sum + material.count
          : sum,
      0,
    );
}

/** Widths and heights in mm of the inked areas that are about as wide and as high as the sticker. */
async function placesOn(sheet: Sheet, stickerMm: number): Promise<readonly number[][]> {
  const [raster] = rasterise(await pdfOf([sheetPage(sheet)]), DPI);
  if (!raster) throw new Error(`${sheet.code}: no page came out`);
  const sizeOf = ({ left, right, top, bottom }: Area) => [
    mmOf(right - left + 1),
    mmOf(bottom - top + 1),
  ];
  return areasOf(raster, isInked)
    .areas.map(sizeOf)
    .filter((sides) => sides.every((side) => Math.abs(side - stickerMm) < NEAR_MM));
}

const CASES = ACTIVITY_IDS.flatMap((id) => {
  const { parameters } = activityOf(id);
  const sizes = 'stickerMm' in parameters ? parameters.stickerMm : undefined;
  return sizes?.kind === 'choice' ? sizes.values.map((size) => [id, size] as const) : [];
});

test('activities with places for stickers are found', () => {
  expect(new Set(CASES.map(([id]) => id)).size).toBeGreaterThan(4);
});

test.each(CASES)(
  '%s: places for stickers of %s mm are that wide and high, within 0.2 mm',
  async (id, size) => {
    const sheet = sheetWith(id, size);
    const places = await placesOn(sheet, Number(size));
    const name = `${id}, step ${sheet.spec.step}, ${sheet.code}`;
    expect(places.length, `${name}: places`).toBeGreaterThanOrEqual(
      stickersOn(sheet, Number(size)),
    );
    expect(places.length, `${name}: places`).toBeGreaterThan(0);
    for (const side of places.flat()) {
      expect(Math.abs(side - Number(size)), `${name}: ${side.toFixed(2)} mm`).toBeLessThanOrEqual(
        OFF_MM,
      );
    }
  },
);

test.each([
  ['copy-pattern', '13', 19],
  ['one-of-each', '16', 25],
] as const)(
  '%s in large print: places for stickers of %s mm are %d mm wide and high, within 0.2 mm',
  async (id, stickerMm, largerMm) => {
    const page = { paper: 'A4', orientation: 'portrait' } as const;
    const values = { response: 'sticker', stickerMm };
    const spec = { activity: id, step: 1, values, seed: SEED, page, print: 'colour' } as const;
    const sheet = makeSheet({ ...spec, size: 'large' });
    if (!sheet.ok) throw new Error(JSON.stringify(sheet.refusals));
    const places = await placesOn(sheet.value, largerMm);
    expect(places.length).toBeGreaterThanOrEqual(stickersOn(sheet.value, Number(stickerMm)));
    for (const side of places.flat()) expect(Math.abs(side - largerMm)).toBeLessThanOrEqual(OFF_MM);
  },
);
