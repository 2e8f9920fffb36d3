// Where the models in their frames and the shadows stand on paper, all cells of one size.
import type { Figure } from '../../figures/index.ts';
import { type Area, centredIn, gridPlaces, type Hand, onSideFor } from '../../page/index.ts';
import type { Size } from '../activity.ts';
import { leastCellMm } from '../placing.ts';
import type { Printed } from './task.ts';

/** All of a task from (0, 0) to the size it was planned for. */
export interface PagePlan {
  /** Frames of the models, from left to right. */
  readonly frames: readonly Area[];
  /** Cells of the models, each in the middle of its frame. */
  readonly models: readonly Area[];
  /** Cells of the shadows, in reading order. */
  readonly shadows: readonly Area[];
  /** The part of each of these cells that its shadow fills, less where it is smaller. */
  readonly filled: readonly Area[];
}

type Cells = Omit<PagePlan, 'filled'>;

/** Lengths in mm; common practice, no source. */
interface Measures {
  readonly cellMm: number;
  readonly gapMm: number;
  /** Between the frames and the shadows: frames stand apart, and lines have room to cross at clear angles. */
  readonly clearMm: number;
  /** Between a model and the line of its frame. */
  readonly padMm: number;
  readonly aroundMm: number;
}

/** Side of the cell of the smallest outline: ears and tails must be seen; common practice, no source. */
const SMALLEST_MM = 13;
const CLEAR_MM = { beside: 18, above: 32 };
/** Beyond this, times the least, a page looks stretched, not calm (by eye). */
const MOST_SCALE = 1.3;

export function leastSize(printed: Printed): Size {
  return sizeWith(printed, measuresOf(printed, 1));
}

/** Plans the task in the middle of `size`, which is at least its least size. */
export function planPage(printed: Printed, size: Size, hand?: Hand): PagePlan {
  const least = leastSize(printed);
  const scale = Math.min(size.widthMm / least.widthMm, size.heightMm / least.heightMm, MOST_SCALE);
  const measures = measuresOf(printed, Math.max(1, scale));
  const used = sizeWith(printed, measures);
  const whole = { left: 0, top: 0, width: size.widthMm, height: size.heightMm };
  const { aroundMm } = measures;
  const area = centredIn(whole, used.widthMm - 2 * aroundMm, used.heightMm - 2 * aroundMm);
  const plan = isInRows(printed)
    ? planRows(printed, area, measures)
    : planBeside(printed, area, measures, hand);
  const filled = plan.shadows.map((cell, place) =>
    centredIn(cell, cell.width * (printed.shadows[place]?.size ?? 1)),
  );
  return { ...plan, filled };
}

/** Figures to be joined stand in a row above the row of the shadows: no line crosses a figure. */
function isInRows({ models, response }: Printed): boolean {
  return response === 'join' || models.length > 1;
}

function measuresOf(printed: Printed, scale: number): Measures {
  return {
    cellMm: cellSide([...printed.models, ...printed.shadows]) * scale,
    gapMm: 7 * scale,
    clearMm: (isInRows(printed) ? CLEAR_MM.above : CLEAR_MM.beside) * scale,
    padMm: 3 * scale,
    aroundMm: 3,
  };
}

function cellSide(figures: readonly Figure[]): number {
  const smallest = Math.min(...figures.map(({ size = 1 }) => size));
  return Math.max(leastCellMm(figures), smallest < 1 ? SMALLEST_MM / smallest : 0);
}

function sizeWith(printed: Printed, measures: Measures): Size {
  const { models, shadows } = printed;
  const { cellMm, clearMm, aroundMm } = measures;
  const frameMm = frameSide(measures);
  if (isInRows(printed)) {
    const wide = Math.max(
      lengthOf(models.length, frameMm, measures),
      lengthOf(shadows.length, cellMm, measures),
    );
    return {
      widthMm: wide + 2 * aroundMm,
      heightMm: frameMm + clearMm + cellMm + 2 * aroundMm,
    };
  }
  const { columns, rows } = gridOf(shadows.length);
  return {
    widthMm: frameMm + clearMm + lengthOf(columns, cellMm, measures) + 2 * aroundMm,
    heightMm: Math.max(frameMm, lengthOf(rows, cellMm, measures)) + 2 * aroundMm,
  };
}

function planRows({ models, shadows }: Printed, area: Area, measures: Measures): Cells {
  const { cellMm, clearMm } = measures;
  const frameMm = frameSide(measures);
  const rowOf = (count: number, top: number, side: number) => {
    const width = lengthOf(count, side, measures);
    const left = area.left + (area.width - width) / 2;
    return gridPlaces(count, count, { left, top, width, height: side }, measures.gapMm);
  };
  const frames = rowOf(models.length, area.top, frameMm);
  return {
    frames,
    models: frames.map((frame) => centredIn(frame, cellMm)),
    shadows: rowOf(shadows.length, area.top + frameMm + clearMm, cellMm),
  };
}

/** The frame on the side away from the hand, the shadows in the middle of its height. */
function planBeside({ shadows }: Printed, area: Area, measures: Measures, hand: Hand): Cells {
  const { cellMm, clearMm, gapMm } = measures;
  const side = frameSide(measures);
  const middle = area.top + area.height / 2;
  const first = { left: area.left, top: middle - side / 2, width: side, height: side };
  const frame = onSideFor(hand, first, area);
  const { columns, rows } = gridOf(shadows.length);
  const height = lengthOf(rows, cellMm, measures);
  const grid = {
    left: first.left + side + clearMm,
    top: middle - height / 2,
    width: lengthOf(columns, cellMm, measures),
    height,
  };
  return {
    frames: [frame],
    models: [centredIn(frame, cellMm)],
    shadows: gridPlaces(shadows.length, columns, onSideFor(hand, grid, area), gapMm),
  };
}

function frameSide({ cellMm, padMm }: Measures): number {
  return cellMm + 2 * padMm;
}

/** Of `count` places of the given side with their gaps. */
function lengthOf(count: number, sideMm: number, { gapMm }: Measures): number {
  return count * sideMm + (count - 1) * gapMm;
}

/** Two rows from five shadows on, the upper never the shorter. */
function gridOf(count: number): { readonly columns: number; readonly rows: number } {
  const rows = count < 5 ? 1 : 2;
  return { columns: Math.ceil(count / rows), rows };
}
