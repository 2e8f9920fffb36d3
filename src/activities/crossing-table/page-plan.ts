// Where the table, its heads and the loose figures stand on paper, all figures at one size.
import type { Figure } from '../../figures/index.ts';
import { type Area, gridPlaces, type Hand, onSideFor } from '../../page/index.ts';
import type { Size } from '../activity.ts';
import { leastCellMm } from '../placing.ts';
import { type Printed, responseTo } from './task.ts';

/** All of a task from (0, 0) to the size it was planned for. */
export interface PagePlan {
  readonly grid: Area;
  /** Cells of the table with their lines, in reading order; figures stand in the middle. */
  readonly cells: readonly Area[];
  readonly rowHeads: readonly Area[];
  readonly columnHeads: readonly Area[];
  /** Cells of the loose figures: of pieces to cut out, the pieces. */
  readonly loose: readonly Area[];
  /** Side of a figure's cell, in mm. */
  readonly figureMm: number;
}

/** Lengths in mm; common practice, no source. */
const PAD_MM = 2;
/** Between the heads and the table: they belong together, and are no row of it. */
const HEAD_GAP_MM = 3;
/** Between the table and what is loose below it. */
const APART_MM = 9;
const LOOSE_GAP_MM = 5;
const PIECE_GAP_MM = 3;
/** A piece is so much smaller than its cell, so that it goes in. */
const PIECE_LESS_MM = 1;
const AROUND_MM = 1;
/** Beyond this, times the least, a page looks stretched, not calm (by eye). */
const MOST_SCALE = 1.35;
/** As many loose figures as have room across a page; of those whose sizes differ fewer. */
const MOST_IN_ROW = 7;
const MOST_IN_ROW_SIZED = 5;

export function leastSize(printed: Printed): Size {
  return sizeWith(printed, leastFigureMm(printed));
}

/** Plans the task in the middle of `size`, which is at least its least size. */
export function planPage(printed: Printed, size: Size, hand?: Hand): PagePlan {
  const figureMm = figureWithin(printed, size);
  const used = sizeWith(printed, figureMm);
  const table = tableSize(printed, figureMm);
  const cellMm = cellSide(figureMm);
  const [beside, above] = headsMm(printed, figureMm);
  const left = (size.widthMm - table.widthMm) / 2;
  const top = (size.heightMm - used.heightMm) / 2 + AROUND_MM;
  const whole = { left, width: table.widthMm };
  const cells = {
    left: left + beside,
    top: top + above,
    width: table.widthMm - beside,
    height: table.heightMm - above,
  };
  const grid = onSideFor(hand, cells, whole);
  const heads = onSideFor(hand, { ...cells, left, width: cellMm }, whole);
  const columns = printed.rows[0]?.length ?? 1;
  return {
    grid,
    cells: gridPlaces(printed.rows.length * columns, columns, grid),
    rowHeads: printed.rowHeads ? gridPlaces(printed.rows.length, 1, heads) : [],
    columnHeads: printed.columnHeads
      ? gridPlaces(columns, columns, { ...grid, top, height: cellMm })
      : [],
    loose: loosePlaces(printed, figureMm, size.widthMm / 2, grid.top + grid.height + APART_MM),
    figureMm,
  };
}

function loosePlaces(
  printed: Printed,
  figureMm: number,
  middle: number,
  top: number,
): readonly Area[] {
  const { widthMm, heightMm } = looseSize(printed, figureMm);
  const area = { left: middle - widthMm / 2, top, width: widthMm, height: heightMm };
  const count = printed.loose?.length ?? 0;
  return gridPlaces(count, looseInRow(printed), area, looseGap(printed));
}

/** The largest side of figures, in steps of half a mm, with which the task stays within `size`. */
function figureWithin(printed: Printed, size: Size): number {
  const least = leastFigureMm(printed);
  for (let figureMm = MOST_SCALE * least; figureMm > least; figureMm -= 0.5) {
    const { widthMm, heightMm } = sizeWith(printed, figureMm);
    if (widthMm <= size.widthMm && heightMm <= size.heightMm) return figureMm;
  }
  return least;
}

/** Heads tell all sizes and forms that are nowhere else. */
function leastFigureMm({ rows, loose = [], rowHeads = [], columnHeads = [] }: Printed): number {
  const figures: readonly (Figure | null)[] = [
    ...rows.flat(),
    ...loose,
    ...rowHeads,
    ...columnHeads,
  ];
  return leastCellMm(figures.filter((figure) => figure !== null));
}

function cellSide(figureMm: number): number {
  return figureMm + 2 * PAD_MM;
}

function sizeWith(printed: Printed, figureMm: number): Size {
  const table = tableSize(printed, figureMm);
  const loose = looseSize(printed, figureMm);
  const below = loose.heightMm === 0 ? 0 : APART_MM + loose.heightMm;
  return {
    widthMm: Math.max(table.widthMm, loose.widthMm) + 2 * AROUND_MM,
    heightMm: table.heightMm + below + 2 * AROUND_MM,
  };
}

/** With its heads. */
function tableSize(printed: Printed, figureMm: number): Size {
  const cellMm = cellSide(figureMm);
  const [beside, above] = headsMm(printed, figureMm);
  return {
    widthMm: beside + (printed.rows[0]?.length ?? 1) * cellMm,
    heightMm: above + printed.rows.length * cellMm,
  };
}

/** What the heads take beside the table and above it. */
function headsMm(
  { rowHeads, columnHeads }: Printed,
  figureMm: number,
): readonly [beside: number, above: number] {
  const headMm = cellSide(figureMm) + HEAD_GAP_MM;
  return [rowHeads ? headMm : 0, columnHeads ? headMm : 0];
}

function looseSize(printed: Printed, figureMm: number): Size {
  const count = printed.loose?.length ?? 0;
  if (count === 0) return { widthMm: 0, heightMm: 0 };
  const isCut = responseTo(printed) === 'cut';
  const sideMm = isCut ? cellSide(figureMm) - PIECE_LESS_MM : figureMm;
  const gapMm = looseGap(printed);
  const inRow = looseInRow(printed);
  const lengthOf = (figures: number) => figures * (sideMm + gapMm) - gapMm;
  return { widthMm: lengthOf(inRow), heightMm: lengthOf(Math.ceil(count / inRow)) };
}

function looseGap(printed: Printed): number {
  return responseTo(printed) === 'cut' ? PIECE_GAP_MM : LOOSE_GAP_MM;
}

/** In rows as even as can be. */
function looseInRow({ loose = [] }: Printed): number {
  const isSized = loose.some(({ size = 1 }) => size < 1);
  const rows = Math.max(1, Math.ceil(loose.length / (isSized ? MOST_IN_ROW_SIZED : MOST_IN_ROW)));
  return Math.ceil(loose.length / rows);
}
