// Makes sheets, prints them as PDF and gives back what was meant beside what the pixels show.
import { readFileSync } from 'node:fs';
import type { ActivityId, Task, Value } from '../../src/activities/index.ts';
import { directionOf, type Language, loadAllCatalogues } from '../../src/languages/index.ts';
import { PAPERS, type PaperName, sheetArea } from '../../src/page/index.ts';
import { writePdf } from '../../src/press/index.ts';
import { makeSheet, type Sheet, sheetPage } from '../../src/sheets/index.ts';
import { loadAllScripts } from '../outside/script-fonts.ts';
import { type Raster, rasterise } from './raster.ts';

const FONTS = {
  regular: readFileSync(new URL('../../assets/fonts/Andika-Regular.ttf', import.meta.url)),
  bold: readFileSync(new URL('../../assets/fonts/Andika-Bold.ttf', import.meta.url)),
};

export interface Wanted {
  readonly activity: ActivityId;
  readonly step: number;
  readonly values?: Readonly<Record<string, Value>>;
  readonly seed: number;
  /** The hand that writes, where it is not the right one. */
  readonly hand?: 'left';
  /** Absent: in full. */
  readonly ink?: 'saving';
  /** Absent: English. */
  readonly language?: Language;
}

/** The same sheets on pages that are read from the left and from the right, with what a test's name says of it. */
export const FROM_BOTH_SIDES: readonly (readonly [string, Pick<Wanted, 'language'>])[] = [
  ['read from the left', {}],
  ['read from the right', { language: 'ar' }],
];

/** The ways of printing that a sheet must be read in alike, each with what a test's name says of it. */
export const IN_BOTH_INKS: readonly (readonly [string, Pick<Wanted, 'ink'>])[] = [
  ['printed in full', {}],
  ['printed to save ink', { ink: 'saving' }],
];

export interface PrintedSheet {
  readonly wanted: Wanted;
  readonly tasks: readonly Task[];
  /** The sheet's tasks as pixels: the furniture at the foot is cut off. */
  readonly raster: Raster;
}

/** The raster as it is seen in a mirror: a page that is read from the right then reads like others. */
export function inMirror(raster: Raster): Raster {
  const { width, height } = raster;
  const rgb = new Uint8Array(raster.rgb.length);
  for (let row = 0; row < height; row++) {
    for (let column = 0; column < width; column++) {
      const from = (row * width + column) * 3;
      rgb.set(raster.rgb.subarray(from, from + 3), (row * width + width - 1 - column) * 3);
    }
  }
  return { ...raster, rgb };
}

/** `rounds` sheets of each of the first `steps` steps, each with a seed of its own. */
export function sheetsOfSteps(
  activity: ActivityId,
  steps: number,
  rounds: number,
  seed: number,
  way: Pick<Wanted, 'ink' | 'language'> = {},
): Wanted[] {
  return Array.from({ length: steps * rounds }, (_, index) => ({
    activity,
    step: 1 + (index % steps),
    seed: seed + index,
    ...way,
  }));
}

/** `rounds` sheets of each of the first `steps` steps for the right hand, and one of each for the left. */
export function sheetsForHands(
  activity: ActivityId,
  steps: number,
  rounds: number,
  seed: number,
  way: Pick<Wanted, 'ink' | 'language'> = {},
): Wanted[] {
  const right = sheetsOfSteps(activity, steps, rounds, seed, way);
  const left = sheetsOfSteps(activity, steps, 1, seed + right.length, way);
  return [...right, ...left.map((wanted) => ({ ...wanted, hand: 'left' as const }))];
}

/** Every wanted sheet, printed on A4 upright and drawn at `dpi`; those that are read from the right are seen in a mirror. */
export async function printSheets(wanted: readonly Wanted[], dpi: number): Promise<PrintedSheet[]> {
  if (wanted.some(({ language = 'en' }) => language !== 'en')) {
    await loadAllCatalogues();
    await loadAllScripts();
  }
  const sheets = wanted.map(madeSheet);
  const chunks: Uint8Array[] = [];
  const pages = {
    title: 'Sheets to read back',
    language: 'en',
    pages: sheets.map((sheet, index) => sheetPage(sheet, wanted[index]?.language)),
  };
  await writePdf(pages, FONTS, (chunk) => {
    chunks.push(chunk.slice());
  });
  const rasters = rasterise(Buffer.concat(chunks), dpi);
  return sheets.map((sheet, index) => {
    const raster = rasters[index];
    const request = wanted[index];
    if (!raster || !request) throw new Error(`page ${index + 1} is missing`);
    const shown = withoutFoot(raster, 'A4');
    const isMirrored = directionOf(request.language ?? 'en') === 'rtl';
    return { wanted: request, tasks: sheet.tasks, raster: isMirrored ? inMirror(shown) : shown };
  });
}

function madeSheet({ values = {}, language: _, ...wanted }: Wanted): Sheet {
  const page = { paper: 'A4', orientation: 'portrait' } as const;
  const made = makeSheet({ ...wanted, values, page, print: 'colour' });
  if (!made.ok) throw new Error(JSON.stringify([wanted, made.refusals]));
  return made.value;
}

function withoutFoot(raster: Raster, paper: PaperName): Raster {
  const area = sheetArea(paper, 'portrait');
  const height = Math.floor(((area.top + area.height) / PAPERS[paper].heightMm) * raster.height);
  return { ...raster, height, rgb: raster.rgb.subarray(0, height * raster.width * 3) };
}
