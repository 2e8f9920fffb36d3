// Papers, two sheets on one page and corrected pages as they come out of the printer: measured in the pixels at 300 dpi.
import { describe, expect, test } from 'vitest';
import { circlePath } from '../../src/base/index.ts';
import {
  corrected,
  filled,
  INK,
  ORIENTATIONS,
  type Orientation,
  PAPER_NAMES,
  type Page,
  type PaperName,
  pageSize,
  twoUp,
} from '../../src/page/index.ts';
import { makePack, packPages, rulerPages } from '../../src/sheets/index.ts';
import { type Area, areasOf, isInked, type Raster, rasterise } from '../readback/raster.ts';
import { sheetPageOf } from './press-pages.ts';
import { elementsOf, objectsOf, pdfOf, readWith } from './press-reading.ts';

const DPI = 300;
const mmOf = (pixels: number) => (pixels * 25.4) / DPI;

/** Sizes in mm as published: ISO 216 (A3, A4, A5), and 8.5 × 11 inches of 25.4 mm (Letter). */
const PUBLISHED_MM: Readonly<Record<PaperName, readonly [number, number]>> = {
  A3: [297, 420],
  A4: [210, 297],
  A5: [148, 210],
  Letter: [215.9, 279.4],
};

async function rastersOf(...pages: readonly Page[]): Promise<readonly Raster[]> {
  return rasterise(await pdfOf(pages), DPI);
}

async function rasterOf(page: Page): Promise<Raster> {
  const [raster] = await rastersOf(page);
  if (!raster) throw new Error('no page came out');
  return raster;
}

const widthOf = ({ left, right }: Area) => mmOf(right - left + 1);
const heightOf = ({ top, bottom }: Area) => mmOf(bottom - top + 1);
const middleOf = ({ left, right, top, bottom }: Area) => ({
  x: mmOf((left + right + 1) / 2),
  y: mmOf((top + bottom + 1) / 2),
});

describe('a page at 300 dpi', () => {
  test.each(PAPER_NAMES)('is as large as %s is published, within 0.1 mm', async (paper) => {
    for (const orientation of ORIENTATIONS) {
      const { width, height } = await rasterOf(sheetPageOf('ABCD', paper, orientation));
      const [short, long] = PUBLISHED_MM[paper];
      const [wide, high] = orientation === 'portrait' ? [short, long] : [long, short];
      // A raster ends at a whole pixel of 0.085 mm.
      expect(Math.abs(mmOf(width) - wide)).toBeLessThan(0.1);
      expect(Math.abs(mmOf(height) - high)).toBeLessThan(0.1);
    }
  });
});

/** An A5 page with a 12 mm dot in its middle. */
function dotPage(orientation: Orientation, title: string): Page {
  const size = pageSize('A5', orientation);
  const dot = filled(circlePath(size.widthMm / 2, size.heightMm / 2, 6), INK);
  return { ...size, title, nodes: [dot] };
}

describe('two A5 on one A4', () => {
  test.each(ORIENTATIONS)(
    '%s: the dashed line to cut along is in the middle, within 0.2 mm',
    async (orientation) => {
      const raster = await rasterOf(twoUp(dotPage(orientation, 'a'), dotPage(orientation, 'b')));
      const isUpright = orientation === 'portrait';
      expect(mmOf(raster.width) > mmOf(raster.height)).toBe(isUpright);
      const dashes = areasOf(raster, isInked).areas.filter(
        (area) => Math.min(widthOf(area), heightOf(area)) < 1,
      );
      expect(dashes.length).toBeGreaterThan(30);
      for (const dash of dashes) {
        const { x, y } = middleOf(dash);
        expect(Math.abs(isUpright ? x - 297 / 2 : y - 297 / 2)).toBeLessThan(0.2);
        // What a home printer leaves blank at an edge, 12 mm at the most (common practice, no source).
        const along = isUpright ? mmOf(dash.top) : mmOf(dash.left);
        expect(along).toBeGreaterThan(11.9);
      }
    },
  );

  test.each(ORIENTATIONS)(
    '%s: both come out at true size in the middle of their halves, within 0.2 mm',
    async (orientation) => {
      const raster = await rasterOf(twoUp(dotPage(orientation, 'a'), dotPage(orientation, 'b')));
      const dots = areasOf(raster, isInked).areas.filter((area) => widthOf(area) > 5);
      expect(dots).toHaveLength(2);
      const wanted = [297 / 4, (3 * 297) / 4];
      for (const [index, dot] of dots.entries()) {
        expect(Math.abs(widthOf(dot) - 12)).toBeLessThan(0.2);
        expect(Math.abs(heightOf(dot) - 12)).toBeLessThan(0.2);
        const { x, y } = middleOf(dot);
        const [along, across] = orientation === 'portrait' ? [x, y] : [y, x];
        expect(Math.abs(along - (wanted[index] ?? 0))).toBeLessThan(0.2);
        expect(Math.abs(across - 105)).toBeLessThan(0.2);
      }
    },
  );

  test('stickers keep their size on sheets that share a page: 13 mm, within 0.2 mm', async () => {
    const page = { paper: 'A5', orientation: 'landscape' } as const;
    const values = { stickerMm: '13' };
    const parts = [{ activity: 'copy-pattern', step: 1, values, sheets: 2 }] as const;
    const pack = makePack({ seed: 3, page, print: 'colour', parts });
    if (!pack.ok) throw new Error(JSON.stringify(pack.refusals));
    const pages = packPages(pack.value, { withAdultPage: false, withAnswers: false });
    const [raster, more] = await rastersOf(...pages.pages);
    expect(more).toBeUndefined();
    const round = areasOf(raster as Raster, isInked).areas.filter(
      (area) => Math.abs(widthOf(area) - 13) < 1 && Math.abs(heightOf(area) - 13) < 1,
    );
    expect(round.length).toBeGreaterThanOrEqual(16);
    for (const area of round) {
      expect(Math.abs(widthOf(area) - 13)).toBeLessThanOrEqual(0.2);
      expect(Math.abs(heightOf(area) - 13)).toBeLessThanOrEqual(0.2);
    }
  });

  test('readers hear the first sheet whole, then the second, each under its name', async () => {
    const sheets = ['FIRST', 'SECOND'].map((code) => sheetPageOf(code, 'A5', 'landscape'));
    const pdf = await pdfOf([twoUp(sheets[0] as Page, sheets[1])]);
    expect(readWith(pdf, 'qpdf', '--check', 'FILE')).toContain(
      'No syntax or stream encoding errors',
    );
    const tree = readWith(pdf, 'pdfinfo', '-struct-text', 'FILE');
    const places = ['Sect "Sheet FIRST"', '"FIRST"', 'Sect "Sheet SECOND"', '"SECOND"'].map(
      (words) => tree.indexOf(words),
    );
    expect(places).not.toContain(-1);
    expect(places).toEqual(places.toSorted((one, other) => one - other));
    // Four boxes and a QR code each.
    expect(elementsOf(pdf, 'Figure').filter(({ alt }) => alt?.startsWith('box '))).toHaveLength(8);
    const outline = objectsOf(pdf).flatMap(({ '/Title': title }) =>
      title === undefined ? [] : [title],
    );
    expect(outline).toContain('u:Sheet FIRST');
    expect(outline).toContain('u:Sheet SECOND');
  });
});

describe('a corrected page', () => {
  /** Lengths in mm of the two lines of the page to check a printer with, from the middles of their end marks. */
  async function linesMm(
    measuredMm: number | undefined,
    paper: PaperName,
  ): Promise<readonly number[]> {
    const [page] = rulerPages(paper).pages;
    if (!page) throw new Error('no page came out');
    const raster = await rasterOf(corrected(page, measuredMm));
    // The outer ends of the end marks lie a line's width further apart than their middles.
    const penMm = 0.35 * (50 / (measuredMm ?? 50));
    return areasOf(raster, isInked)
      .areas.map((area) => Math.max(widthOf(area), heightOf(area)) - penMm)
      .filter((sideMm) => sideMm > 40);
  }

  test.each(PAPER_NAMES)(
    'without a measure has two lines of 50 mm, within 0.2 mm, for %s',
    async (paper) => {
      const lines = await linesMm(undefined, paper);
      expect(lines).toHaveLength(2);
      for (const line of lines) expect(Math.abs(line - 50)).toBeLessThan(0.2);
    },
  );

  test.each([47, 48.5, 52.3])(
    'for a line that measures %d mm is 50 mm again once the printer has scaled it',
    async (measuredMm) => {
      const lines = await linesMm(measuredMm, 'A4');
      expect(lines).toHaveLength(2);
      for (const line of lines) expect(Math.abs((line * measuredMm) / 50 - 50)).toBeLessThan(0.2);
    },
  );

  test('stays as large as its paper', async () => {
    const { width, height } = await rasterOf(corrected(sheetPageOf('ABCD'), 47));
    expect(Math.abs(mmOf(width) - 210)).toBeLessThan(0.1);
    expect(Math.abs(mmOf(height) - 297)).toBeLessThan(0.1);
  });
});
