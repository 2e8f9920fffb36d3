// Reads printed sheets of one-of-each back from pixels: the dots of the grid, its blocks, all ways to fill it.
import { describe, expect, test } from 'vitest';
import type { Figure } from '../../src/figures/index.ts';
import { hexOf } from '../../src/palette/index.ts';
import { testSeed } from '../seed.ts';
import { hexOfPixel, middleColour, tasksOf } from './boxes.ts';
import {
  FROM_BOTH_SIDES,
  type PrintedSheet,
  printSheets,
  sheetsOfSteps,
} from './printed-sheets.ts';
import { type Area, isDark, pixelAt, type Raster } from './raster.ts';

const STEPS = 13;
const DPI = 90;
const EMPTY = '#ffffff';

describe('one-of-each', () => {
  test.each(FROM_BOTH_SIDES)(
    'printed grids of every step can be filled, by their pixels alone, in the one way of the key, %s',
    async (_, side) => {
      const seed = testSeed('one-of-each read back');
      for (const sheet of await printSheets(
        sheetsOfSteps('one-of-each', STEPS, 2, seed, side),
        DPI,
      )) {
        const keys = sheet.tasks.map(({ answer }) => [
          (answer as { figures: Figure[] }).figures.map(({ colour = 'black' }) => hexOf(colour)),
        ]);
        expect(readAnswers(sheet), JSON.stringify(sheet.wanted)).toEqual(keys);
      }
    },
  );
});

/** For each task all ways to fill the empty cells, in reading order of these. */
function readAnswers({ raster }: PrintedSheet): string[][][] {
  return tasksOf(raster).map((task) => {
    const [tray, grid, ...more] = task;
    if (!tray || !grid || more.length > 0)
      throw new Error(`${task.length} things, not a tray and a grid`);
    const colours = tray.inside.map((dot) => middleColour(raster, dot));
    const order = colours.length;
    const cells = Array.from({ length: order ** 2 }, (_, cell) =>
      colourIn(raster, grid, (cell % order) + 0.5, Math.floor(cell / order) + 0.5, order),
    );
    const blocks = hasBlocks(raster, grid, order);
    const empty = cells.flatMap((colour, cell) => (colour === EMPTY ? [cell] : []));
    return completions(cells, colours, blocks).map((full) => empty.map((cell) => full[cell] ?? ''));
  });
}

function colourIn(raster: Raster, area: Area, across: number, down: number, order: number): string {
  const x = Math.round(area.left + (across * (area.right - area.left)) / order);
  const y = Math.round(area.top + (down * (area.bottom - area.top)) / order);
  return hexOfPixel(pixelAt(raster, x, y));
}

/** Whether the line in the middle is thicker than the one after the first column: a grid of four in blocks. */
function hasBlocks(raster: Raster, area: Area, order: number): boolean {
  if (order !== 4) return false;
  const pitch = (area.right - area.left) / order;
  // Just below the upper edge, above all dots and circles.
  const y = Math.round(area.top + (2 / 25.4) * raster.dpi);
  const thickness = (line: number) => {
    const middle = Math.round(area.left + line * pitch);
    const reach = Math.round(pitch / 4);
    return Array.from({ length: 2 * reach }, (_, index) => middle - reach + index).filter((x) =>
      isDark(pixelAt(raster, x, y)),
    ).length;
  };
  return thickness(2) > 1.6 * Math.max(1, thickness(1));
}

/** Tries every colour in every empty cell. */
function completions(
  cells: readonly string[],
  colours: readonly string[],
  blocks: boolean,
): (readonly string[])[] {
  const place = cells.indexOf(EMPTY);
  if (place < 0) return [cells];
  return colours.flatMap((colour) => {
    const isTaken = cells.some(
      (other, at) => other === colour && isTogether(at, place, colours.length, blocks),
    );
    return isTaken ? [] : completions(cells.with(place, colour), colours, blocks);
  });
}

function isTogether(one: number, other: number, order: number, blocks: boolean): boolean {
  const [row, column] = [Math.floor(one / order), one % order];
  const [otherRow, otherColumn] = [Math.floor(other / order), other % order];
  const half = (line: number) => Math.floor(line / 2);
  const isOneBlock = half(row) === half(otherRow) && half(column) === half(otherColumn);
  return row === otherRow || column === otherColumn || (blocks && isOneBlock);
}
