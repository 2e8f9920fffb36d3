// Pages of pieces read from their pixels: cells by their dashed lines, and what stands in and between them.
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { ActivityId, Value } from '../../src/activities/index.ts';
import { MARGIN_MM } from '../../src/page/index.ts';
import { writePdf } from '../../src/press/index.ts';
import { cutPagesOf, makeSheet, type Sheet } from '../../src/sheets/index.ts';
import { piecesOf } from '../../src/sheets/piece-pages.ts';
import { testSeed } from '../seed.ts';
import {
  type Area,
  areasOf,
  isInked,
  pixelAt,
  type Raster,
  type Rgb,
  rasterise,
} from './raster.ts';

const DPI = 150;
const PIXEL_MM = 25.4 / DPI;
/** What the page promises between neighbours, and to the margin. */
const SPARE_MM = 8;
/** The foot, which no piece comes near. */
const FOOT_MM = 6;
/** A dash is no longer and no thicker than this; the gaps between dashes are less than the last. */
const [DASH_MM, THICK_MM, NEAR_MM] = [3.4, 0.9, 2.6];

const FONTS = {
  regular: readFileSync(new URL('../../assets/fonts/Andika-Regular.ttf', import.meta.url)),
  bold: readFileSync(new URL('../../assets/fonts/Andika-Bold.ttf', import.meta.url)),
};

interface Wanted {
  readonly activity: ActivityId;
  readonly step: number;
  readonly values?: Readonly<Record<string, Value>>;
}

const SHEETS: readonly Wanted[] = [
  { activity: 'one-of-each', step: 2 },
  { activity: 'one-of-each', step: 9 },
  { activity: 'continue-row', step: 3 },
  { activity: 'continue-row', step: 8 },
  { activity: 'one-of-each', step: 3, values: { content: 'directions', response: 'point' } },
  { activity: 'crossing-table', step: 4 },
  { activity: 'crossing-table', step: 12 },
  { activity: 'missing-part', step: 2 },
  { activity: 'missing-part', step: 8 },
  { activity: 'copy-pattern', step: 3 },
  { activity: 'mirror-half', step: 2 },
  { activity: 'mirror-half', step: 9 },
  { activity: 'size-order', step: 5, values: { response: 'cut' } },
];

const seed = testSeed('pages of pieces');

test.each(SHEETS)(
  '$activity, step $step: every piece lies in a cell of its own, with room all round',
  async (wanted) => {
    const sheet = sheetOf(wanted);
    const pieces = piecesOf(sheet).flat();
    const rasters = await pagesOf(sheet);
    const read = rasters.map(readPage);
    const cells = read.flatMap((page) => page.cells);
    expect(cells.length).toBe(pieces.length);
    const meant = sizes(pieces.map(({ widthMm, heightMm }) => [widthMm, heightMm]));
    const found = sizes(cells.map((cell) => [cell.right - cell.left, cell.bottom - cell.top]));
    // Half of the line lies outside the edge, and a pixel is 0.17 mm.
    for (const [index, length] of found.entries())
      expect(Math.abs(length - (meant[index] ?? 0) - 0.35)).toBeLessThan(0.4);
    for (const page of read) {
      for (const [index, cell] of page.cells.entries()) {
        const inside = page.inks.filter((ink) => isWithin(ink, cell));
        expect(inside.length, `cell ${index + 1} is empty`).toBeGreaterThan(0);
        for (const other of page.cells.slice(index + 1))
          expect(blank(cell, other)).toBeGreaterThan(SPARE_MM - 2 * PIXEL_MM);
        const edge = MARGIN_MM + SPARE_MM - 2 * PIXEL_MM;
        expect(cell.left).toBeGreaterThan(edge);
        expect(cell.top).toBeGreaterThan(edge);
        expect(page.widthMm - cell.right).toBeGreaterThan(edge);
        expect(page.heightMm - cell.bottom).toBeGreaterThan(edge + FOOT_MM);
      }
      // No ink crosses a line to cut along; what lies outside all cells is the adult's, well away.
      for (const ink of page.inks) {
        const isFree = page.cells.every((cell) => blank(ink, cell) > SPARE_MM - 4 * PIXEL_MM);
        expect(isFree || page.cells.some((cell) => isWithin(ink, cell))).toBe(true);
      }
    }
  },
);

function sheetOf({ activity, step, values = {} }: Wanted): Sheet {
  const page = { paper: 'A4', orientation: 'portrait' } as const;
  const made = makeSheet({ activity, step, values, seed, page, print: 'colour' });
  if (!made.ok) throw new Error(JSON.stringify(made.refusals));
  return made.value;
}

async function pagesOf(sheet: Sheet): Promise<Raster[]> {
  const pages = cutPagesOf({ sheets: [sheet], toCut: ['pieces'] })(0).flatMap((each) => each.pages);
  const chunks: Uint8Array[] = [];
  await writePdf({ title: 'Pieces to read back', language: 'en', pages }, FONTS, (chunk) => {
    chunks.push(chunk.slice());
  });
  return rasterise(Buffer.concat(chunks), DPI);
}

interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

interface ReadPage {
  readonly widthMm: number;
  readonly heightMm: number;
  /** Rectangles of dashes, in mm, to the outside of their lines. */
  readonly cells: readonly Box[];
  /** All other ink, in mm. */
  readonly inks: readonly Box[];
}

function readPage(raster: Raster): ReadPage {
  const { areas, labels } = areasOf(raster, isInked);
  const boxes = areas.map((area) => ({ area, box: inMm(area) }));
  const isDashed = ({ area, box }: (typeof boxes)[number]) =>
    isDash(box) && isFaint(raster, labels, area);
  const cells = clusters(boxes.filter(isDashed).map(({ box }) => box)).filter(
    ({ left, right, top, bottom }) => right - left > DASH_MM && bottom - top > DASH_MM,
  );
  const inks = boxes.filter((each) => !isDashed(each)).map(({ box }) => box);
  return {
    widthMm: raster.width * PIXEL_MM,
    heightMm: raster.height * PIXEL_MM,
    cells,
    inks,
  };
}

/** Straight, or in a corner where two dashes meet. */
function isDash({ left, right, top, bottom }: Box): boolean {
  const [wide, high] = [right - left, bottom - top];
  return Math.max(wide, high) < DASH_MM && Math.max(wide, high) > 1;
}

/** Thin grey lines: hardly any pixel of the area is darker than the line, and few are inked at all. */
function isFaint(
  raster: Raster,
  labels: Int32Array,
  { left, right, top, bottom, pixels, label }: Area,
): boolean {
  const most = ((right - left + bottom - top + 2) * THICK_MM) / PIXEL_MM;
  let darkest: Rgb = [255, 255, 255];
  for (let y = top; y <= bottom; y++) {
    for (let x = left; x <= right; x++) {
      if (labels[y * raster.width + x] !== label) continue;
      const pixel = pixelAt(raster, x, y);
      if (Math.min(...pixel) < Math.min(...darkest)) darkest = pixel;
    }
  }
  const isGrey = Math.max(...darkest) - Math.min(...darkest) < 30;
  return pixels < most && isGrey && Math.min(...darkest) > 110;
}

function clusters(boxes: readonly Box[]): readonly Box[] {
  const found: Box[][] = [];
  for (const box of boxes) {
    const near = found.filter((cluster) => cluster.some((other) => blank(box, other) < NEAR_MM));
    const joined = [box, ...near.flat()];
    for (const old of near) found.splice(found.indexOf(old), 1);
    found.push(joined);
  }
  return found.map((cluster) => ({
    left: Math.min(...cluster.map(({ left }) => left)),
    top: Math.min(...cluster.map(({ top }) => top)),
    right: Math.max(...cluster.map(({ right }) => right)),
    bottom: Math.max(...cluster.map(({ bottom }) => bottom)),
  }));
}

function inMm({ left, top, right, bottom }: Area): Box {
  return {
    left: left * PIXEL_MM,
    top: top * PIXEL_MM,
    right: (right + 1) * PIXEL_MM,
    bottom: (bottom + 1) * PIXEL_MM,
  };
}

function blank(one: Box, other: Box): number {
  return Math.max(
    one.left - other.right,
    other.left - one.right,
    one.top - other.bottom,
    other.top - one.bottom,
  );
}

function isWithin(inner: Box, outer: Box): boolean {
  return (
    inner.left > outer.left &&
    inner.right < outer.right &&
    inner.top > outer.top &&
    inner.bottom < outer.bottom
  );
}

/** All lengths, in one order. */
function sizes(all: readonly (readonly [number, number])[]): readonly number[] {
  return all.flat().toSorted((one, other) => one - other);
}
