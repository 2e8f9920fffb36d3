// Draws every step of every activity into picture sheets for people to look at: `npm run gallery [activity …]`.
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Resvg } from '@resvg/resvg-js';
import { ACTIVITY_IDS, type ActivityId, activityOf } from '../src/activities/index.ts';
import { svgOf } from '../src/press/index.ts';
import { DEFAULT_PAGE, makeSheet, sheetPage } from '../src/sheets/index.ts';

const OUT = fileURLToPath(new URL('../out/gallery/', import.meta.url));
const [WIDTH, HEIGHT, GAP] = [210, 297, 12];
const SEED = 7;
/** Pages side by side in the sheet of one activity. */
const COLUMNS = 6;
const PIXELS_PER_MM = { one: 1.6, all: 0.9 };

export function main(words: readonly string[]): void {
  mkdirSync(OUT, { recursive: true });
  const ids = words.length === 0 ? ACTIVITY_IDS : ACTIVITY_IDS.filter((id) => words.includes(id));
  const rows = ids.map((id) => pagesOf(id));
  for (const [index, id] of ids.entries()) {
    write(`${id}.png`, contactSheet(inRows(rows[index] ?? [], COLUMNS)), PIXELS_PER_MM.one);
  }
  if (words.length === 0) write('all.png', contactSheet(rows), PIXELS_PER_MM.all);
}

/** One page for each step, as SVG. */
function pagesOf(activity: ActivityId): string[] {
  return activityOf(activity).ladder.map((_, index) => {
    const step = index + 1;
    const made = makeSheet({
      activity,
      step,
      values: {},
      seed: SEED,
      page: DEFAULT_PAGE,
      print: 'colour',
    });
    if (!made.ok) throw new Error(`${activity}, step ${step}: ${JSON.stringify(made.refusals)}`);
    return svgOf(sheetPage(made.value), { idPrefix: `${activity}-${step}-` });
  });
}

function inRows(pages: readonly string[], columns: number): string[][] {
  return Array.from({ length: Math.ceil(pages.length / columns) }, (_, row) =>
    pages.slice(row * columns, (row + 1) * columns),
  );
}

function contactSheet(rows: readonly (readonly string[])[]): string {
  const columns = Math.max(...rows.map((row) => row.length));
  const width = GAP + columns * (WIDTH + GAP);
  const height = GAP + rows.length * (HEIGHT + GAP);
  const pages = rows.flatMap((row, down) =>
    row.map((page, across) => {
      const at = `x="${GAP + across * (WIDTH + GAP)}" y="${GAP + down * (HEIGHT + GAP)}"`;
      const placed = page.replace(
        /^[\s\S]*?<svg [^>]*?viewBox/,
        `<svg ${at} width="${WIDTH}" height="${HEIGHT}" viewBox`,
      );
      return `<rect ${at} width="${WIDTH}" height="${HEIGHT}" fill="#fff"/>${placed}`;
    }),
  );
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}"><rect width="100%" height="100%" fill="#b9b3aa"/>${pages.join('')}</svg>`;
}

function write(name: string, svg: string, pixelsPerMm: number): void {
  const widthMm = Number(/viewBox="0 0 (\d+)/.exec(svg)?.[1]);
  const picture = new Resvg(svg, {
    fitTo: { mode: 'width', value: Math.round(widthMm * pixelsPerMm) },
  });
  writeFileSync(join(OUT, name), picture.render().asPng());
  console.log(join(OUT, name));
}
