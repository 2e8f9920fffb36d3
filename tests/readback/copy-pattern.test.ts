// Reads printed sheets of copy-pattern back from pixels: model, boxes, what is there and what is left to do.
import { describe, expect, test } from 'vitest';
import type { Figure } from '../../src/figures/index.ts';
import { hexOf } from '../../src/palette/index.ts';
import { testSeed } from '../seed.ts';
import { framesOf, groupsOf, hexOfPixel } from './boxes.ts';
import { type PrintedSheet, printSheets } from './printed-sheets.ts';
import { type Area, isDark, pixelAt, type Raster } from './raster.ts';

const SHEETS = 68;
const DPI = 90;

interface Model {
  readonly rows: number;
  readonly columns: number;
  readonly cells: readonly (Figure | null)[];
}

describe('copy-pattern', () => {
  test(`${SHEETS} printed sheets show one model each task, and boxes that it finishes as the key says`, async () => {
    const seed = testSeed('copy-pattern read back');
    const wanted = Array.from({ length: SHEETS }, (_, index) => ({
      activity: 'copy-pattern' as const,
      step: 1 + (index % 17),
      seed: seed + index,
    }));
    for (const sheet of await printSheets(wanted, DPI)) {
      const keys = sheet.tasks.map((task) => task.answer as { cells: Model['cells'] }[]);
      const meant = keys.map((boxes) => boxes.map(({ cells }) => cells.map(shownAs).join(' ')));
      expect(readTasks(sheet), JSON.stringify(sheet.wanted)).toEqual(meant.sort());
    }
  });
});

function shownAs(figure: Figure | null): string {
  if (figure === null) return '·';
  return figure.form?.startsWith('sign-') ? 'line' : hexOf(figure.colour ?? 'black');
}

/** For each task the finished boxes, in any order of tasks. */
function readTasks({ raster, tasks, wanted }: PrintedSheet): string[][] {
  const [first] = tasks.map((task) => task.printed as { model: Model });
  if (!first) throw new Error(`no task: ${JSON.stringify(wanted)}`);
  const { model } = first;
  const isLattice = model.cells.length !== model.rows * model.columns;
  const read = isLattice ? readLines : readCells;
  const groups = groupsOf(
    raster,
    framesOf(raster, 20).map(({ area }) => area),
    (area) => area,
  );
  return groups
    .map((frames) => finishedBoxes(raster, frames, (area) => read(raster, area, model)))
    .sort();
}

function finishedBoxes(
  raster: Raster,
  frames: readonly Area[],
  read: (area: Area) => string[],
): string[] {
  const [pattern, ...others] = frames.filter((area) => isOnTone(raster, area));
  const boxes = frames.filter((area) => !isOnTone(raster, area));
  if (!pattern || others.length > 0)
    throw new Error(`${frames.length} frames without exactly one model: ${JSON.stringify(frames)}`);
  const wanted = read(pattern);
  for (const box of boxes) {
    const given = read(box);
    const agrees = given.every((cell, index) => cell === '·' || cell === wanted[index]);
    expect(agrees, `model ${wanted.join(' ')}, box ${given.join(' ')}`).toBe(true);
    expect(given).not.toEqual(wanted);
  }
  return boxes.map(() => wanted.join(' '));
}

/** A model stands on a tone that is neither paper nor ink; just outside its frame, at the middle of its left. */
function isOnTone(raster: Raster, { left, top, bottom }: Area): boolean {
  const outside = Math.round((1.5 / 25.4) * raster.dpi);
  return hexOfPixel(pixelAt(raster, left - outside, Math.round((top + bottom) / 2))) !== '#ffffff';
}

function readCells(raster: Raster, area: Area, { rows, columns }: Model): string[] {
  return Array.from({ length: rows * columns }, (_, index) => {
    const [x, y] = pointIn(
      area,
      ((index % columns) + 0.5) / columns,
      (Math.floor(index / columns) + 0.5) / rows,
    );
    const hex = hexOfPixel(pixelAt(raster, x, y));
    return hex === '#ffffff' ? '·' : hex;
  });
}

function pointIn(
  { left, right, top, bottom }: Area,
  across: number,
  down: number,
): [number, number] {
  return [Math.round(left + across * (right - left)), Math.round(top + down * (bottom - top))];
}

/** Lines between lattice points, in the order of the pack file: level, upright, rising slants, falling slants. */
function readLines(raster: Raster, area: Area, { rows, columns }: Model): string[] {
  const between = (count: number, of: number) =>
    Array.from({ length: count * of }, (_, index) => [Math.floor(index / of), index % of] as const);
  const level = between(rows, columns - 1).map(([row, column]) => [[column + 0.5, row]]);
  const upright = between(rows - 1, columns).map(([row, column]) => [[column, row + 0.5]]);
  // Two slants cross in the middle, so each is looked for on both sides of it.
  const rising = between(rows - 1, columns - 1).map(([row, column]) => [
    [column + 0.3, row + 0.7],
    [column + 0.7, row + 0.3],
  ]);
  const falling = between(rows - 1, columns - 1).map(([row, column]) => [
    [column + 0.3, row + 0.3],
    [column + 0.7, row + 0.7],
  ]);
  return [...level, ...upright, ...rising, ...falling].map((points) => {
    const isDrawn = points.every(([x = 0, y = 0]) => {
      const [px, py] = pointIn(area, (x + 0.5) / columns, (y + 0.5) / rows);
      const around = [-1, 0, 1].flatMap((dx) =>
        [-1, 0, 1].map((dy) => pixelAt(raster, px + dx, py + dy)),
      );
      return around.some(isDark);
    });
    return isDrawn ? 'line' : '·';
  });
}
