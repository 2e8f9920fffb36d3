// Reads printed sheets of follow-the-line back from pixels: goes along each line, straight on where others cross it.
import { describe, expect, test } from 'vitest';
import { testSeed } from '../seed.ts';
import { type Bounds, boundsOf, tasksOf } from './boxes.ts';
import {
  FROM_BOTH_SIDES,
  type PrintedSheet,
  printSheets,
  sheetsOfSteps,
} from './printed-sheets.ts';
import { isInked, pixelAt, type Raster } from './raster.ts';

const STEPS = 14;
const DPI = 110;
/** Lines reach further across than this, in mm; starts and ends do not. */
const LONG_MM = 80;
/** The way that a line has gone of late, in mm: how it goes on through a crossing. */
const OF_LATE_MM = 2.5;
/** Where lines meet, a stretch of ink is higher than that of a line alone, by more than this factor and pixels. */
const MEETING = 1.1;
const BLUR = 1;

describe('follow-the-line', () => {
  test.each(FROM_BOTH_SIDES)(
    'printed lines of every step lead, by their pixels alone, to the ends of the key, %s',
    async (_, side) => {
      const seed = testSeed('follow-the-line read back');
      for (const sheet of await printSheets(
        sheetsOfSteps('follow-the-line', STEPS, 2, seed, side),
        DPI,
      )) {
        const keys = sheet.tasks.map(({ answer }) => answer);
        expect(readAnswers(sheet), JSON.stringify(sheet.wanted)).toEqual(keys);
      }
    },
  );
});

/** For each task where the line of each start leads, all counted from the top. */
function readAnswers({ raster }: PrintedSheet): number[][] {
  const long = (LONG_MM / 25.4) * raster.dpi;
  return tasksOf(raster).map((things) => {
    const field = boundsOf(things.filter(({ left, right }) => right - left > long));
    const starts = heightsOf(things.filter(({ right }) => right < field.left));
    const ends = heightsOf(things.filter(({ left }) => left > field.right));
    return starts.map((y) => {
      const led = endOfLine(raster, field, y, starts.length);
      const away = ends.map((end) => Math.abs(end - led));
      return away.indexOf(Math.min(...away));
    });
  });
}

/** The heights of the middles, from the top. */
function heightsOf(areas: readonly Bounds[]): number[] {
  return areas.map(({ top, bottom }) => (top + bottom) / 2).sort((one, other) => one - other);
}

/** The height at which a line leaves the field that comes into it at about `y`. */
function endOfLine(raster: Raster, field: Bounds, y: number, lines: number): number {
  const from = field.left + 2;
  const first = nearest(columnsOfInk(raster, field, from), y);
  const thickness = first.bottom - first.top + 1;
  const window = Math.round((OF_LATE_MM / 25.4) * raster.dpi);
  // Where the line has been seen by itself.
  const seen: (readonly [number, number])[] = [[from, (first.top + first.bottom) / 2]];
  let at = seen[0]?.[1] ?? y;
  for (let x = from + 1; x < field.right - 1; x++) {
    const [lastX, lastY, slope] = course(seen, window);
    const straightOn = lastY + slope * (x - lastX);
    const stretches = columnsOfInk(raster, field, x);
    const ink = nearest(stretches, straightOn);
    const alone = thickness * Math.hypot(1, slope) * MEETING + BLUR;
    const isAlone = stretches.length === lines || ink.bottom - ink.top + 1 < alone;
    at = isAlone ? (ink.top + ink.bottom) / 2 : straightOn;
    if (isAlone) seen.push([x, at]);
  }
  return at;
}

/** The last place of a line, and its slope of late. */
function course(
  seen: readonly (readonly [number, number])[],
  window: number,
): readonly [number, number, number] {
  const [lastX, lastY] = seen.at(-1) ?? [0, 0];
  const [x, y] = seen.at(-window) ?? seen[0] ?? [0, 0];
  return [lastX, lastY, lastX === x ? 0 : (lastY - y) / (lastX - x)];
}

interface Ink {
  readonly top: number;
  readonly bottom: number;
}

/** The stretches of ink that lie one below the other in a column of pixels. */
function columnsOfInk(raster: Raster, { top, bottom }: Bounds, x: number): Ink[] {
  const stretches: { top: number; bottom: number }[] = [];
  for (let y = top; y <= bottom; y++) {
    if (!isInked(pixelAt(raster, x, y))) continue;
    const last = stretches.at(-1);
    if (last?.bottom === y - 1) last.bottom = y;
    else stretches.push({ top: y, bottom: y });
  }
  return stretches;
}

function nearest(stretches: readonly Ink[], y: number): Ink {
  const away = ({ top, bottom }: Ink) => Math.max(top - y, y - bottom, 0);
  const [best] = stretches.toSorted((one, other) => away(one) - away(other));
  if (!best) throw new Error('a gap in all lines');
  return best;
}
