// The PDF as it comes out of the printer: rasterised by poppler, then measured, scanned and compared.
import { Resvg } from '@resvg/resvg-js';
import jsQR from 'jsqr';
import { describe, expect, test } from 'vitest';
import { moveBy } from '../../src/base/index.ts';
import { checkLine, group, type Page, pageSize } from '../../src/page/index.ts';
import { svgOf } from '../../src/press/index.ts';
import { isDark, pixelAt, type Raster, rasterise } from '../readback/raster.ts';
import { adultPageOf, figuresPageOf, sheetPageOf, specimenPages } from './press-pages.ts';
import { pdfOf } from './press-reading.ts';

async function rasterOf(page: Page, dpi: number): Promise<Raster> {
  const [raster] = rasterise(await pdfOf([page]), dpi);
  if (!raster) throw new Error('no page came out');
  return raster;
}

describe('the check line, at 300 dpi', () => {
  const DPI = 300;
  const mmOf = (pixels: number) => (pixels / DPI) * 25.4;

  /** Middles of the dark stretches in one row of pixels. */
  function darkStretches(raster: Raster, y: number): number[] {
    const middles: number[] = [];
    let start = -1;
    for (let x = 0; x <= raster.width; x++) {
      const dark = x < raster.width && isDark(pixelAt(raster, x, y));
      if (dark && start < 0) start = x;
      if (!dark && start >= 0) {
        middles.push((start + x) / 2);
        start = -1;
      }
    }
    return middles;
  }

  test('is 50 mm from tick to tick, within 0.2 mm', async () => {
    const nodes = [checkLine(40, 60, '')];
    const raster = await rasterOf({ ...pageSize('A4', 'portrait'), title: 'line', nodes }, DPI);
    // A quarter of the tick's height below its top: there the ticks are, and the line is not.
    const ticks = darkStretches(raster, Math.round((61 / 25.4) * DPI));
    expect(ticks).toHaveLength(2);
    const [from = 0, to = 0] = ticks;
    expect(Math.abs(mmOf(to - from) - 50)).toBeLessThan(0.2);
    expect(Math.abs(mmOf(from) - 40)).toBeLessThan(0.4);
  });
});

describe('the QR code, decoded by jsQR', () => {
  const CODES = [
    '7QPD-9MXH',
    'SW3K-7QPD9M-XHT2V4-RJ8N6W',
    '7QPD9MXHT2V4RJ8N6WYC5BGF0ZK3A7E9PDMQ4R8T',
  ];

  /** The right half of the last quarter of the page: what a phone held over the foot sees. */
  function footOf({ rgb, width, height }: Raster): [Uint8ClampedArray, number, number] {
    const [left, top] = [Math.floor(width / 2), Math.floor(height * 0.75)];
    const [wide, high] = [width - left, height - top];
    const rgba = new Uint8ClampedArray(wide * high * 4).fill(255);
    for (let pixel = 0; pixel < wide * high; pixel++) {
      const at = ((top + Math.floor(pixel / wide)) * width + left + (pixel % wide)) * 3;
      rgba.set(rgb.subarray(at, at + 3), pixel * 4);
    }
    return [rgba, wide, high];
  }

  test.each(CODES)('gives %s at 200 dpi', async (code) => {
    const raster = await rasterOf(sheetPageOf(code), 200);
    expect(jsQR(...footOf(raster))?.data).toBe(code);
  });
});

describe('the SVG, drawn by resvg, and the PDF, drawn by poppler', () => {
  const DPI = 144;

  function rasterOfSvg(page: Page): Raster {
    const drawn = new Resvg(svgOf(page), {
      dpi: DPI,
      font: { loadSystemFonts: false },
      fitTo: { mode: 'width', value: Math.round((page.widthMm / 25.4) * DPI) },
    }).render();
    const rgb = new Uint8Array(drawn.width * drawn.height * 3);
    drawn.pixels.forEach((value, index) => {
      if (index % 4 < 3) rgb[Math.floor(index / 4) * 3 + (index % 4)] = value;
    });
    return { width: drawn.width, height: drawn.height, rgb, dpi: DPI };
  }

  /** The darkest channel of every pixel, 0 for ink to 255 for paper. */
  function lightness({ rgb, width, height }: Raster): Uint8Array {
    return Uint8Array.from({ length: width * height }, (_, pixel) =>
      Math.min(rgb[pixel * 3] ?? 0, rgb[pixel * 3 + 1] ?? 0, rgb[pixel * 3 + 2] ?? 0),
    );
  }

  /** Well inked pixels of one picture with no trace of ink in or beside them in the other, as a share. */
  function strayShare(one: Raster, other: Raster): number {
    const [light, otherLight] = [lightness(one), lightness(other)];
    let [ink, stray] = [0, 0];
    for (let y = 1; y < one.height - 1; y++) {
      for (let x = 1; x < one.width - 1; x++) {
        if ((light[y * one.width + x] ?? 255) >= 128) continue;
        ink++;
        if (!hasTraceNear(otherLight, other.width, x, y)) stray++;
      }
    }
    return stray / ink;
  }

  function hasTraceNear(light: Uint8Array, width: number, x: number, y: number): boolean {
    for (let dy = -1; dy <= 1; dy++) {
      for (let dx = -1; dx <= 1; dx++) {
        if ((light[(y + dy) * width + x + dx] ?? 255) < 240) return true;
      }
    }
    return false;
  }

  /** Pixels in which some channel differs by more than a quarter of its range, as a share of the page. */
  function differingShare(one: Raster, other: Raster): number {
    let differing = 0;
    const differs = (at: number) => Math.abs((one.rgb[at] ?? 0) - (other.rgb[at] ?? 0)) > 64;
    for (let at = 0; at < one.rgb.length; at += 3) {
      if (differs(at) || differs(at + 1) || differs(at + 2)) differing++;
    }
    return differing / (one.width * one.height);
  }

  test.each<readonly [string, Page]>([
    ['a sheet', sheetPageOf('ABCD-2345')],
    ['an adult page', adultPageOf()],
    ['figures in every fill', figuresPageOf()],
    ...specimenPages().map(
      (page, place) => [`every letter in both weights, page ${place + 1}`, page] as const,
    ),
  ])('agree on %s', async (_, page) => {
    const [fromPdf, fromSvg] = [await rasterOf(page, DPI), rasterOfSvg(page)];
    expect(Math.abs(fromPdf.width - fromSvg.width)).toBeLessThanOrEqual(1);
    expect(strayShare(fromPdf, fromSvg)).toBe(0);
    expect(strayShare(fromSvg, fromPdf)).toBe(0);
    // Two programs smooth edges each in its own way.
    expect(differingShare(fromPdf, fromSvg)).toBeLessThan(0.01);
  });

  test('would not agree if one of them were half a millimetre off', async () => {
    const page = sheetPageOf('ABCD-2345');
    const shifted = {
      ...page,
      nodes: [{ ...group('moved', page.nodes), transform: moveBy(0.5, 0) }],
    };
    expect(strayShare(await rasterOf(shifted, DPI), rasterOfSvg(page))).toBeGreaterThan(0.01);
  });
});
