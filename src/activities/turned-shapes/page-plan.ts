// Where the model in its frame and the choices stand on paper, all in cells of one size.
import { formOf, isShape, isSign } from '../../figures/index.ts';
import { type Area, centredIn, gridPlaces, type Hand, onSideFor } from '../../page/index.ts';
import type { Size } from '../activity.ts';
import { leastCellMm } from '../placing.ts';
import type { Printed } from './task.ts';

export interface PagePlan {
  readonly frame: Area;
  /** The cell of the model, in the middle of the frame. */
  readonly model: Area;
  /** Cells of the choices, in reading order. */
  readonly choices: readonly Area[];
}

/** Turned figures reach into the corners of their cells: these stand further apart, in mm. */
const GAP_MM = 8;
/** Between the frame and the choices: more than twice the gap between choices, so that the frame stands apart. */
const CLEAR_MM = 17;
/** Between the model's cell and the line of its frame. */
const PAD_MM = 4;
const AROUND_MM = 3;
/** Letters, numerals and pictures of two sizes: the smaller ones must be read as well. */
const FINE_SIZED_MM = 25;
/** Beyond this, times the least, a page looks stretched, not calm (by eye). */
const MOST_SCALE = 1.3;

export function leastSize(printed: Printed): Size {
  return sizeWith(printed, cellMm(printed), 1);
}

/** Plans the task in the middle of `size`, which is at least its least size; the frame on the side away from the hand. */
export function planPage(printed: Printed, size: Size, hand?: Hand): PagePlan {
  const least = leastSize(printed);
  const fit = Math.min(size.widthMm / least.widthMm, size.heightMm / least.heightMm, MOST_SCALE);
  const scale = Math.max(1, fit);
  const cell = scale * cellMm(printed);
  const used = sizeWith(printed, cellMm(printed), scale);
  const whole = { left: 0, top: 0, width: size.widthMm, height: size.heightMm };
  const area = centredIn(whole, used.widthMm - 2 * AROUND_MM, used.heightMm - 2 * AROUND_MM);
  const side = cell + 2 * PAD_MM * scale;
  const first = {
    left: area.left,
    top: area.top + (area.height - side) / 2,
    width: side,
    height: side,
  };
  const frame = onSideFor(hand, first, area);
  const { columns, rows } = gridOf(printed);
  const high = lengthOf(rows, cell, scale);
  const grid = {
    left: first.left + side + CLEAR_MM * scale,
    top: area.top + (area.height - high) / 2,
    width: lengthOf(columns, cell, scale),
    height: high,
  };
  return {
    frame,
    model: centredIn(frame, cell),
    choices: gridPlaces(
      printed.choices.length,
      columns,
      onSideFor(hand, grid, area),
      GAP_MM * scale,
    ),
  };
}

function cellMm({ model, choices }: Printed): number {
  const figures = [model, ...choices];
  const isSized = figures.some(({ size = 1 }) => size !== 1);
  const isFine = figures.some((figure) => !isShape(formOf(figure)) && !isSign(formOf(figure)));
  return Math.max(leastCellMm(figures), isSized && isFine ? FINE_SIZED_MM : 0);
}

function sizeWith(printed: Printed, leastMm: number, scale: number): Size {
  const cell = leastMm * scale;
  const { columns, rows } = gridOf(printed);
  const frameMm = cell + 2 * PAD_MM * scale;
  return {
    widthMm: frameMm + CLEAR_MM * scale + lengthOf(columns, cell, scale) + 2 * AROUND_MM,
    heightMm: Math.max(frameMm, lengthOf(rows, cell, scale)) + 2 * AROUND_MM,
  };
}

/** Of `count` cells with their gaps. */
function lengthOf(count: number, cell: number, scale: number): number {
  return count * cell + (count - 1) * GAP_MM * scale;
}

/** A grid has two rows from four choices on, the upper never the shorter. */
function gridOf({ choices, layout }: Printed): { readonly columns: number; readonly rows: number } {
  const rows = layout === 'row' || choices.length < 4 ? 1 : 2;
  return { columns: Math.ceil(choices.length / rows), rows };
}
