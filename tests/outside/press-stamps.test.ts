// Figures that come on page after page stand in the PDF once: what qpdf and poppler read and draw of it.
import { describe, expect, test } from 'vitest';
import { circlePath, moveBy } from '../../src/base/index.ts';
import {
  drawFigure,
  filled,
  group,
  INK,
  type Page,
  pageSize,
  type SceneNode,
} from '../../src/page/index.ts';
import { isDark, pixelAt, rasterise } from '../readback/raster.ts';
import { sheetPageOf } from './press-pages.ts';
import { elementsOf, objectsOf, pdfOf, readWith } from './press-reading.ts';

/** Many more pages than it takes until a figure is kept. */
const PAGES = 12;

/** Figures of every kind of fill, each at other places on each page, and one that comes on this page alone. */
function figuresPage(number: number): Page {
  const looks = [
    { form: 'star', colour: 'red', fill: 'solid' },
    { form: 'heart', colour: 'blue', fill: 'outline' },
    { form: 'square', colour: 'green', fill: 'slanted-stripes' },
    { form: 'capital-B', colour: 'orange', fill: 'solid' },
  ] as const;
  const figures = looks.map((look, row) => {
    const [x, y] = [30 + number * 7.31, 40 + row * 50 + number * 1.07];
    const figure = drawFigure(look, x, y, 24, { print: 'colour' });
    return group('task', [figure], `${look.form} on page ${number}`);
  });
  const own = group('own', [filled(circlePath(100, 260, 3 + number / 7), INK)], `own ${number}`);
  return { ...pageSize('A4', 'portrait'), title: `Page ${number}`, nodes: [...figures, own] };
}

const pages = Array.from({ length: PAGES }, (_, at) => figuresPage(at + 1));
const pack = await pdfOf(pages);

function stampsIn(pdf: Uint8Array) {
  return objectsOf(pdf).filter((object) => object['/Subtype'] === '/Form');
}

test('each figure is kept once, and what differs on every page is not', () => {
  expect(stampsIn(pack)).toHaveLength(4);
  expect(readWith(pack, 'qpdf', '--check', 'FILE')).toContain(
    'No syntax or stream encoding errors',
  );
});

test('a page alone has none, however often a figure stands on it', async () => {
  const figure = (at: number): SceneNode => ({
    ...group('figure', [filled(circlePath(20, 20, 5), INK)]),
    transform: moveBy((at % 10) * 15, Math.floor(at / 10) * 15),
  });
  const nodes = Array.from({ length: 100 }, (_, at) => figure(at));
  const page = { ...pageSize('A4', 'portrait'), title: 'Alone', nodes };
  expect(stampsIn(await pdfOf([page]))).toEqual([]);
});

test('QR codes, each another, are not kept', async () => {
  const codes = Array.from({ length: PAGES }, (_, at) => sheetPageOf(`ABCD-${at}`));
  const withCodes = await pdfOf(codes);
  // Dots of four colours and the frame of a box, and no outline as wide as a code.
  for (const stamp of stampsIn(withCodes)) {
    const [left, , right] = stamp['/BBox'] as readonly number[];
    const widthMm = ((right ?? 0) - (left ?? 0)) / 100;
    expect(Math.abs(widthMm - 10)).toBeGreaterThan(1.5);
  }
});

describe('drawn by poppler', () => {
  /** Ink of one picture with no trace of it in or beside the same pixel of the other. */
  function strayPixels(one: ReturnType<typeof rasterOf>, other: typeof one): number {
    let stray = 0;
    for (let y = 1; y < one.height - 1; y++) {
      for (let x = 1; x < one.width - 1; x++) {
        if (isDark(pixelAt(one, x, y)) && !hasInkNear(other, x, y)) stray += 1;
      }
    }
    return stray;
  }

  function hasInkNear(raster: ReturnType<typeof rasterOf>, x: number, y: number): boolean {
    for (let dy = -1; dy <= 1; dy++) {
      for (let dx = -1; dx <= 1; dx++) {
        if (Math.min(...pixelAt(raster, x + dx, y + dy)) < 240) return true;
      }
    }
    return false;
  }

  function rasterOf(pdf: Uint8Array, page: number) {
    const raster = rasterise(pdf, 100)[page];
    if (!raster) throw new Error('no page came out');
    return raster;
  }

  test('the last page of many is what it is alone', async () => {
    const last = pages.length - 1;
    const among = rasterOf(pack, last);
    const alone = rasterOf(await pdfOf(pages.slice(last)), 0);
    expect(strayPixels(among, alone)).toBe(0);
    expect(strayPixels(alone, among)).toBe(0);
    // The same numbers at the same places, whether they are kept or written out.
    expect(Buffer.from(among.rgb).equals(Buffer.from(alone.rgb))).toBe(true);
  });
});

test('each is told in its place: one figure with its words on each page', () => {
  const told = elementsOf(pack, 'Figure').map(({ alt }) => alt);
  expect(told).toHaveLength(5 * PAGES);
  expect(new Set(told).size).toBe(5 * PAGES);
  expect(told).toContain(`star on page ${PAGES}`);
});

test('the file grows little by pages whose figures are known', async () => {
  const once = await pdfOf(pages.slice(0, 6));
  // Less than a page with its figures written out, which alone is more than a kilobyte.
  expect((pack.length - once.length) / (PAGES - 6)).toBeLessThan(1000);
});
