// How many boxes stand in a row, and the least size of a task that follows from it.
import { HOME_PAPERS, sheetArea } from '../../page/index.ts';
import type { Size } from '../activity.ts';
import { boxSize } from './box-shape.ts';
import { AROUND_MM, type Measures, measuresOf } from './measures.ts';
import type { Printed } from './task.ts';

/** The least size at which the task is calm and nothing touches. */
export function leastSize(printed: Printed): Size {
  return sizeWith(columnsOf(printed), printed);
}

/**
 * How many boxes stand in a row: as many as an upright sheet takes, so that eyes go along a line. Two
 * columns need three places in a box, or else a shared figure would have to stand in the same place in two
 * boxes that are neighbours.
 */
export function columnsOf(printed: Printed): number {
  const count = printed.boxes.length;
  const most = Math.max(...printed.boxes.map((box) => box.figures.length));
  const fair = evenColumns(count).filter((columns) => columns !== 2 || count === 2 || most > 2);
  const fitting = SHEETS.flatMap((sheet) =>
    fair.filter((columns) => overflow(sizeWith(columns, printed), sheet) <= 1),
  );
  return fitting[0] ?? leastOverflow(fair, printed);
}

/** Columns that give equal rows, most first; of a prime number from five on, also those that fill half of the last row. */
function evenColumns(boxes: number): readonly number[] {
  const all = Array.from({ length: boxes }, (_, index) => boxes - index);
  const equal = all.filter((columns) => boxes % columns === 0);
  if (equal.length > 2 || boxes < 5) return equal;
  return all.filter((columns) => boxes % columns === 0 || 2 * (boxes % columns) >= columns);
}

/** What every paper gives to tasks, upright and then lying. */
const SHEETS: readonly Size[] = (['portrait', 'landscape'] as const).map((orientation) => {
  const areas = HOME_PAPERS.map((paper) => sheetArea(paper, orientation));
  return {
    widthMm: Math.min(...areas.map((area) => area.width)),
    heightMm: Math.min(...areas.map((area) => area.height)),
  };
});

/** How many times too large a size is for a sheet; 1 and less: it fits. */
function overflow(size: Size, sheet: Size): number {
  return Math.max(size.widthMm / sheet.widthMm, size.heightMm / sheet.heightMm);
}

function leastOverflow(ways: readonly number[], printed: Printed): number {
  const sizes = ways.map((columns) => {
    const size = sizeWith(columns, printed);
    return { columns, excess: Math.min(...SHEETS.map((sheet) => overflow(size, sheet))) };
  });
  const least = Math.min(...sizes.map(({ excess }) => excess));
  return sizes.find(({ excess }) => excess === least)?.columns ?? 1;
}

function sizeWith(columns: number, printed: Printed): Size {
  const box = boxSize(printed);
  const measures = measuresOf(printed);
  const rows = Math.ceil(printed.boxes.length / columns);
  const circles = circlesSize(printed, measures);
  const widthMm = columns * box.widthMm + (columns - 1) * measures.betweenMm;
  const heightMm = rows * box.heightMm + (rows - 1) * measures.betweenMm;
  return {
    widthMm: Math.max(widthMm, circles.widthMm) + 2 * AROUND_MM,
    heightMm: heightMm + circles.heightMm + 2 * AROUND_MM,
  };
}

/** The row of empty circles with the gap above it. */
function circlesSize({ circles = 0 }: Printed, { cellMm, gapMm, betweenMm }: Measures): Size {
  return circles === 0
    ? { widthMm: 0, heightMm: 0 }
    : { widthMm: circles * (cellMm + gapMm) - gapMm, heightMm: betweenMm + cellMm };
}
