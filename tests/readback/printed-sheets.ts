// Makes sheets, prints them as PDF and gives back what was meant beside what the pixels show.
import { readFileSync } from 'node:fs';
import type { ActivityId, Task, Value } from '../../src/activities/index.ts';
import { PAPERS, type PaperName, sheetArea } from '../../src/page/index.ts';
import { writePdf } from '../../src/press/index.ts';
import { makeSheet, type Sheet, sheetPage } from '../../src/sheets/index.ts';
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
}

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

/** `rounds` sheets of each of the first `steps` steps, each with a seed of its own. */
export function sheetsOfSteps(
  activity: ActivityId,
  steps: number,
  rounds: number,
  seed: number,
  ink: Pick<Wanted, 'ink'> = {},
): Wanted[] {
  return Array.from({ length: steps * rounds }, (_, index) => ({
    activity,
    step: 1 + (index % steps),
    seed: seed + index,
    ...ink,
  }));
}

/** `rounds` sheets of each of the first `steps` steps for the right hand, and one of each for the left. */
export function sheetsForHands(
  activity: ActivityId,
  steps: number,
  rounds: number,
  seed: number,
  ink: Pick<Wanted, 'ink'> = {},
): Wanted[] {
  const right = sheetsOfSteps(activity, steps, rounds, seed, ink);
  const left = sheetsOfSteps(activity, steps, 1, seed + right.length, ink);
  return [...right, ...left.map((wanted) => ({ ...wanted, hand: 'left' as const }))];
}

/** Every wanted sheet, printed on A4 upright and drawn at `dpi`. */
export async function printSheets(wanted: readonly Wanted[], dpi: number): Promise<PrintedSheet[]> {
  const sheets = wanted.map(madeSheet);
  const chunks: Uint8Array[] = [];
  const pages = {
    title: 'Sheets to read back',
    language: 'en',
    pages: sheets.map((sheet) => sheetPage(sheet)),
  };
  await writePdf(pages, FONTS, (chunk) => {
    chunks.push(chunk.slice());
  });
  const rasters = rasterise(Buffer.concat(chunks), dpi);
  return sheets.map((sheet, index) => {
    const raster = rasters[index];
    const request = wanted[index];
    if (!raster || !request) throw new Error(`page ${index + 1} is missing`);
    return { wanted: request, tasks: sheet.tasks, raster: withoutFoot(raster, 'A4') };
  });
}

function madeSheet({ values = {}, ...wanted }: Wanted): Sheet {
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
