// Pictures as a phone or a camera would take them: of a sheet, of another code, of neither.
import { writeFileSync } from 'node:fs';
import { Resvg } from '@resvg/resvg-js';
import { renderSVG } from 'uqr';
import type { Language } from '../../src/languages/index.ts';
import { svgOf } from '../../src/press/index.ts';
import { makeSheetOfCode, sheetPage } from '../../src/sheets/index.ts';

const PHOTO_DPI = 150;
const TABLE = '#77665a';

interface Size {
  readonly width: number;
  readonly height: number;
}

export interface Lie {
  /** Degrees clockwise. */
  readonly turn?: number;
  /** From 0, full light, to 1, black. */
  readonly dark?: number;
}

/** The page of the sheet that a code stands for, as SVG at 150 dpi, and its size in pixels. */
function pageOf(code: string, language?: Language): Size & { readonly svg: string } {
  const made = makeSheetOfCode(code);
  if (!made.ok) throw new Error(JSON.stringify(made.refusals));
  const page = sheetPage(made.value, language);
  const pixels = (mm: number) => Math.round((mm / 25.4) * PHOTO_DPI);
  const { width, height } = { width: pixels(page.widthMm), height: pixels(page.heightMm) };
  const svg = svgOf(page).replace(
    /width="[^"]*" height="[^"]*"/,
    `width="${width}" height="${height}"`,
  );
  return { svg, width, height };
}

function drawn(svg: string) {
  return new Resvg(svg, { font: { loadSystemFonts: false } }).render();
}

/** The page alone, edge to edge. */
export function scanOf(code: string): Buffer {
  return drawn(pageOf(code).svg).asPng();
}

/** The page on a table that is larger than it: turned, and in poor light; in a language whose catalogue is there. */
export function photoOf(code: string, lie: Lie, language?: Language): Buffer {
  const page = pageOf(code, language);
  const size = { width: 2000, height: 2800 };
  return drawn(onTable(size, centred(page.svg, page, size), lie)).asPng();
}

/** Another code than that of a sheet, on a table. */
export function photoOfOther(words: string): Buffer {
  return drawn(otherOnTable(words, { width: 1200, height: 900 })).asPng();
}

export function photoOfTable(): Buffer {
  return drawn(onTable({ width: 1200, height: 900 }, '', {})).asPng();
}

function otherOnTable(words: string, size: Size): string {
  const code = renderSVG(words, { border: 4 });
  const [, side = '0'] = /viewBox="0 0 (\d+)/.exec(code) ?? [];
  const shown = code.replace('<svg ', '<svg width="400" height="400" ');
  if (side === '0') throw new Error('the other code has no size');
  return onTable(size, centred(shown, { width: 400, height: 400 }, size), {});
}

function centred(svg: string, inner: Size, outer: Size): string {
  const [x, y] = [(outer.width - inner.width) / 2, (outer.height - inner.height) / 2];
  return `<g transform="translate(${x} ${y})">${svg}</g>`;
}

function onTable({ width, height }: Size, what: string, { turn = 0, dark = 0 }: Lie): string {
  const area = `width="${width}" height="${height}"`;
  return `<svg xmlns="http://www.w3.org/2000/svg" ${area}><rect ${area} fill="${TABLE}"/><g transform="rotate(${turn} ${width / 2} ${height / 2})">${what}</g><rect ${area} opacity="${dark}"/></svg>`;
}

const FRAME = { width: 1280, height: 720 };
const FRAMES_A_SECOND = 5;

/** How long each is seen: the other code long enough for a reader that is slow to start. */
const SECONDS = { other: 8, sheet: 4 } as const;

/** Writes what a camera sees, again and again: another code, then the foot of the sheet. */
export function writeVideo(file: string, code: string, other: string): void {
  const page = pageOf(code);
  const foot = `<g transform="translate(20 ${FRAME.height - page.height})">${page.svg}</g>`;
  const seen = [
    [otherOnTable(other, FRAME), SECONDS.other],
    [onTable(FRAME, foot, { turn: 3, dark: 0.2 }), SECONDS.sheet],
  ] as const;
  const head = `YUV4MPEG2 W${FRAME.width} H${FRAME.height} F${FRAMES_A_SECOND}:1 Ip A1:1 C420jpeg\n`;
  const frames = seen.flatMap(([svg, seconds]) => {
    const frame = Buffer.concat([Buffer.from('FRAME\n'), greyFrame(drawn(svg).pixels)]);
    return Array.from({ length: seconds * FRAMES_A_SECOND }, () => frame);
  });
  writeFileSync(file, Buffer.concat([Buffer.from(head), ...frames]));
}

/** A frame in the planes of the format: all light, then the two planes of colour, here without any. */
function greyFrame(rgba: Buffer): Buffer {
  const pixels = FRAME.width * FRAME.height;
  const light = Buffer.alloc(pixels);
  for (let pixel = 0; pixel < pixels; pixel++) light[pixel] = rgba[pixel * 4 + 1] ?? 0;
  return Buffer.concat([light, Buffer.alloc(pixels / 2, 128)]);
}
