// Where the tangle and the outlines to choose from stand on paper, all at one size.
import { type Bounds, pathBounds, unionOf } from '../../base/index.ts';
import { type Figure, outlineOf } from '../../figures/index.ts';
import { type Area, centredIn, centreOf, gridPlaces } from '../../page/index.ts';
import type { Size } from '../activity.ts';
import { closeness, type Printed } from './task.ts';

/** Where a cell of a figure lies: its middle, in mm. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

export interface PagePlan {
  /** The side of every figure's cell, in mm. */
  readonly cellMm: number;
  readonly tangle: readonly Spot[];
  readonly candidates: readonly { readonly spot: Spot; readonly place: Area }[];
}

/**
 * Lengths in mm. Lines that look like one are 1.1 mm apart or nearer at the least print, which gives the cells: letters,
 * with finer lines, have the larger. The tangle stands apart from what is below it by twice the gaps there.
 */
const CLOSE_MM = 1.125;
const ACROSS_MM = 6;
const DOWN_MM = 6;
const CLEAR_MM = 13;
const AROUND_MM = 2.5;
const MOST_IN_ROW = 6;
/** Beyond this, times the least, a page looks stretched, not calm (by eye). */
const MOST_SCALE = 1.25;

export function leastSize(printed: Printed): Size {
  const { tangle, place, columns, rows } = measuresOf(printed);
  const wide = columns * place.width + (columns - 1) * ACROSS_MM;
  const high = rows * place.height + (rows - 1) * DOWN_MM;
  return {
    widthMm: Math.max(wide, tangle.right - tangle.left) + 2 * AROUND_MM,
    heightMm: tangle.bottom - tangle.top + CLEAR_MM + high + 2 * AROUND_MM,
  };
}

/** Plans the task in the middle of `size`, which is at least its least size. */
export function planPage(printed: Printed, size: Size): PagePlan {
  const least = leastSize(printed);
  const fit = Math.min(size.widthMm / least.widthMm, size.heightMm / least.heightMm);
  const scale = Math.min(fit, MOST_SCALE);
  const { cellMm, tangle, place, columns, rows } = measuresOf(printed);
  const middle = size.widthMm / 2;
  const top = (size.heightMm - scale * (least.heightMm - 2 * AROUND_MM)) / 2;
  const left = middle - (scale * (tangle.left + tangle.right)) / 2;
  const wide = scale * (columns * place.width + (columns - 1) * ACROSS_MM);
  const high = scale * (rows * place.height + (rows - 1) * DOWN_MM);
  const area = {
    left: middle - wide / 2,
    top: top + scale * (tangle.bottom - tangle.top + CLEAR_MM),
    width: wide,
    height: high,
  };
  const gap = { across: scale * ACROSS_MM, down: scale * DOWN_MM };
  return {
    cellMm: scale * cellMm,
    tangle: printed.tangle.map(({ x, y }) => ({
      x: left + scale * cellMm * x,
      y: top + scale * (cellMm * y - tangle.top),
    })),
    candidates: gridPlaces(printed.candidates.length, columns, area, gap).map((cell) => ({
      place: centredIn(cell, scale * place.width, scale * place.height),
      spot: { x: centreOf(cell).x, y: centreOf(cell).y - scale * place.middle },
    })),
  };
}

/** Everything at the least print, in mm; the tangle from the first corner of its first cell. */
function measuresOf({ tangle, candidates }: Printed) {
  const cellMm = CLOSE_MM / Math.min(...candidates.map(closeness));
  const laid = tangle.map(({ figure, x, y }) => moved(boundsOf(figure), x, y));
  const all = unionOf(laid);
  const bounds = unionOf(candidates.map(boundsOf));
  const columns =
    candidates.length > MOST_IN_ROW ? Math.ceil(candidates.length / 2) : candidates.length;
  return {
    cellMm,
    tangle: {
      left: cellMm * all.left,
      top: cellMm * all.top,
      right: cellMm * all.right,
      bottom: cellMm * all.bottom,
    },
    place: {
      width: 2 * cellMm * Math.max(-bounds.left, bounds.right),
      height: cellMm * (bounds.bottom - bounds.top),
      /** Of what is drawn, below the middle of the cell: letters stand on one line. */
      middle: (cellMm * (bounds.top + bounds.bottom)) / 2,
    },
    columns,
    rows: Math.ceil(candidates.length / columns),
  };
}

function boundsOf(figure: Figure): Bounds {
  return pathBounds(outlineOf(figure).path);
}

function moved({ left, top, right, bottom }: Bounds, x: number, y: number): Bounds {
  return { left: left + x, top: top + y, right: right + x, bottom: bottom + y };
}
