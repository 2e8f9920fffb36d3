// Where the model in its frame and the choices stand on paper, all figures at one size.
import { formOf, isShape } from '../../figures/index.ts';
import { type Area, centredIn, gridPlaces, type Hand, onSideFor } from '../../page/index.ts';
import type { Size } from '../activity.ts';
import type { Printed } from './task.ts';

/** All of a task from (0, 0) to the size it was planned for. */
export interface PagePlan {
  readonly frame: Area;
  /** The cell of the model, in the middle of the frame. */
  readonly model: Area;
  /** Cells of the choices, in reading order. */
  readonly choices: readonly Area[];
}

/** Lengths in mm. */
interface Measures {
  readonly cellMm: number;
  readonly gapMm: number;
  /** Between the frame and the choices: more than twice the gap between choices, so that the frame stands apart. */
  readonly clearMm: number;
  /** Between the model and the line of its frame. */
  readonly padMm: number;
  /** Blank all round the task. */
  readonly aroundMm: number;
}

/**
 * Sides of a figure's cell, common practice, no source: a letter fills about half of its cell, a picture has
 * fine parts, the dots of a quantity must be large enough to count; of several sizes the smallest, about a
 * third of the biggest, must be large enough to see.
 */
const SHAPE_MM = 18;
const FINE_MM = 21;
const SIZED_MM = 25;
const GAP_MM = 8;
const CLEAR_SHARE = 2.3;
const PAD_MM = 5;
const AROUND_MM = 3;
/** Beyond this, times the least, a page looks stretched, not calm (by eye). */
const MOST_SCALE = 1.3;

export function leastSize(printed: Printed): Size {
  return sizeWith(printed, measuresOf(printed));
}

/** Plans the task in the middle of `size`, which is at least its least size. */
export function planPage(printed: Printed, size: Size, hand?: Hand): PagePlan {
  const least = leastSize(printed);
  const scale = Math.min(size.widthMm / least.widthMm, size.heightMm / least.heightMm, MOST_SCALE);
  const measures = scaled(measuresOf(printed), Math.max(1, scale));
  const used = sizeWith(printed, measures);
  const whole = { left: 0, top: 0, width: size.widthMm, height: size.heightMm };
  const area = centredIn(
    whole,
    used.widthMm - 2 * measures.aroundMm,
    used.heightMm - 2 * measures.aroundMm,
  );
  return printed.response === 'join'
    ? planBetween(printed, area, measures)
    : planBeside(printed, area, measures, hand);
}

function measuresOf(printed: Printed): Measures {
  return {
    cellMm: cellSide(printed),
    gapMm: GAP_MM,
    clearMm: CLEAR_SHARE * GAP_MM,
    padMm: PAD_MM,
    aroundMm: AROUND_MM,
  };
}

function cellSide({ model, choices }: Printed): number {
  const figures = [model, ...choices];
  if (figures.some(({ size = 1 }) => size !== 1)) return SIZED_MM;
  return figures.every((figure) => isShape(formOf(figure))) ? SHAPE_MM : FINE_MM;
}

function scaled(measures: Measures, scale: number): Measures {
  return {
    cellMm: measures.cellMm * scale,
    gapMm: measures.gapMm * scale,
    clearMm: measures.clearMm * scale,
    padMm: measures.padMm * scale,
    aroundMm: measures.aroundMm,
  };
}

function sizeWith(printed: Printed, measures: Measures): Size {
  const { clearMm, aroundMm } = measures;
  const frameMm = frameSide(measures);
  const { columns, rows } = gridOf(printed);
  const [wide, high] = [lengthOf(columns, measures), lengthOf(rows, measures)];
  if (printed.response === 'join') {
    const besideMm = rows === 1 ? clearMm : rows * clearMm;
    const cellsMm = rows * measures.cellMm;
    return {
      widthMm: Math.max(frameMm, wide) + 2 * aroundMm,
      heightMm: frameMm + besideMm + cellsMm + 2 * aroundMm,
    };
  }
  return {
    widthMm: frameMm + clearMm + wide + 2 * aroundMm,
    heightMm: Math.max(frameMm, high) + 2 * aroundMm,
  };
}

/** The frame on the side away from the hand, the choices in the middle of its height. */
function planBeside(printed: Printed, area: Area, measures: Measures, hand: Hand): PagePlan {
  const side = frameSide(measures);
  const first = {
    left: area.left,
    top: area.top + (area.height - side) / 2,
    width: side,
    height: side,
  };
  const frame = onSideFor(hand, first, area);
  const { columns, rows } = gridOf(printed);
  const high = lengthOf(rows, measures);
  const grid = {
    left: first.left + side + measures.clearMm,
    top: area.top + (area.height - high) / 2,
    width: lengthOf(columns, measures),
    height: high,
  };
  return {
    frame,
    model: centredIn(frame, measures.cellMm),
    choices: gridPlaces(
      printed.choices.length,
      columns,
      onSideFor(hand, grid, area),
      measures.gapMm,
    ),
  };
}

/** The frame above one row, or between two: no line from it to a choice crosses another choice. */
function planBetween(printed: Printed, area: Area, measures: Measures): PagePlan {
  const { cellMm, clearMm } = measures;
  const side = frameSide(measures);
  const { columns, rows } = gridOf(printed);
  const aboveMm = rows === 1 ? 0 : cellMm + clearMm;
  const frame = {
    left: area.left + (area.width - side) / 2,
    top: area.top + aboveMm,
    width: side,
    height: side,
  };
  const total = printed.choices.length;
  const tops = rows === 1 ? [frame.top + side + clearMm] : [area.top, frame.top + side + clearMm];
  const choices = tops.flatMap((top, row) => {
    const count = Math.min(columns, total - row * columns);
    const width = lengthOf(count, measures);
    const left = area.left + (area.width - width) / 2;
    return gridPlaces(count, count, { left, top, width, height: cellMm }, measures.gapMm);
  });
  return { frame, model: centredIn(frame, cellMm), choices };
}

function frameSide({ cellMm, padMm }: Measures): number {
  return cellMm + 2 * padMm;
}

/** Of `count` cells with their gaps. */
function lengthOf(count: number, { cellMm, gapMm }: Measures): number {
  return count * cellMm + (count - 1) * gapMm;
}

/** A grid has two rows from four choices on, the upper never the shorter. */
function gridOf({ choices, layout }: Printed): { readonly columns: number; readonly rows: number } {
  const count = choices.length;
  const rows = layout === 'row' || count < 4 ? 1 : 2;
  return { columns: Math.ceil(count / rows), rows };
}
