// Where the field, its hole and the pieces stand on paper: the pieces beside the field or below it.
import {
  type Area,
  centredIn,
  centreOf,
  gridPlaces,
  type Hand,
  HOME_PAPERS,
  insetArea,
  onSideFor,
  sheetArea,
} from '../../page/index.ts';
import type { Size } from '../activity.ts';
import { leastCellMm } from '../placing.ts';
import { type Printed, responseTo } from './task.ts';

export interface PagePlan {
  readonly frame: Area;
  /** Cells of the field, row by row. */
  readonly cells: readonly Area[];
  readonly hole: Area;
  /** The pieces as large as the hole, each with the cells of its figures. */
  readonly pieces: readonly { readonly area: Area; readonly cells: readonly Area[] }[];
}

/** Between cells, in cells; half of it lies between a figure and the edge of the hole or of a piece, less its line. */
const GAP_SHARE = 0.26;
const EDGE_SHARE = 0.1;
/** In mm, common practice, no source. Between the field and its frame: */
const PAD_MM = 4;
/** Between pieces, and between the field and the pieces. */
const APART_MM = 6;
const CLEAR_MM = 11;
/** Blank all round the task, for a ring. */
const AROUND_MM = 2.4;
/** Beyond this, times the least, a page looks stretched, not calm (by eye). */
const MOST_SCALE = 1.4;

const SHEETS = HOME_PAPERS.map((paper) => sheetArea(paper, 'portrait'));
const WIDTH_MM = Math.min(...SHEETS.map(({ width }) => width));

export function leastSize(printed: Printed): Size {
  return arranged(printed, leastCell(printed), 1).size;
}

/** The task in the middle of `size`, which is at least the least size. */
export function planPage(printed: Printed, size: Size, hand?: Hand): PagePlan {
  const least = leastSize(printed);
  const within = Math.min(size.widthMm / least.widthMm, size.heightMm / least.heightMm);
  const scale = Math.max(1, Math.min(within, MOST_SCALE));
  const cellMm = scale * leastCell(printed);
  const { size: used, isBeside, across } = arranged(printed, cellMm, scale);
  const field = fieldSize(printed, cellMm, scale);
  const { pieces, piece } = piecesSize(printed, cellMm, scale, across);
  const inside = insetArea(
    centredIn(wholeOf(size), used.widthMm, used.heightMm),
    AROUND_MM * scale,
  );
  const [first, last] = atBothEnds(field, pieces, inside, isBeside);
  const [frame, tray] = [onSideFor(hand, first, inside), onSideFor(hand, last, inside)];
  const cells = gridPlaces(
    printed.field.length,
    printed.columns,
    insetArea(frame, PAD_MM * scale),
    GAP_SHARE * cellMm,
  );
  return {
    frame,
    cells,
    hole: holeArea(printed, cells, cellMm),
    pieces: pieceAreas(printed, tray, across, scale).map((area) => ({
      area: { ...area, width: piece.widthMm, height: piece.heightMm },
      cells: cellsOf(printed, area, cellMm),
    })),
  };
}

/** Two sizes at the ends of an area, each in its middle: beside each other, or one above the other. */
function atBothEnds(one: Size, other: Size, area: Area, isBeside: boolean): readonly [Area, Area] {
  const { x, y } = centreOf(area);
  const sized = ({ widthMm, heightMm }: Size, left: number, top: number): Area => ({
    left,
    top,
    width: widthMm,
    height: heightMm,
  });
  return isBeside
    ? [
        sized(one, area.left, y - one.heightMm / 2),
        sized(other, area.left + area.width - other.widthMm, y - other.heightMm / 2),
      ]
    : [
        sized(one, x - one.widthMm / 2, area.top),
        sized(other, x - other.widthMm / 2, area.top + area.height - other.heightMm),
      ];
}

/** The side of a figure's cell at the least size. */
function leastCell({ field, offered = [] }: Printed): number {
  return leastCellMm([...field, ...offered.flat()].filter((figure) => figure !== null));
}

interface Arranged {
  readonly size: Size;
  readonly isBeside: boolean;
  /** How many pieces stand side by side. */
  readonly across: number;
}

/** Of all ways that fit across a sheet the lowest, of equals the narrowest. */
function arranged(printed: Printed, cellMm: number, scale: number): Arranged {
  const field = fieldSize(printed, cellMm, scale);
  const count = printed.offered?.length ?? 0;
  if (count === 0) return { size: withBlank(field, scale), isBeside: true, across: 1 };
  const ways = Array.from({ length: count }, (_, index) => index + 1).flatMap((across) =>
    [true, false].map((isBeside): Arranged => {
      const { pieces } = piecesSize(printed, cellMm, scale, across);
      return { size: together(field, pieces, isBeside, scale), isBeside, across };
    }),
  );
  // A line to the field must pass no other piece: one column beside it, or one row below.
  const isFree = ({ isBeside, across }: Arranged) => across === (isBeside ? 1 : count);
  const free = responseTo(printed) === 'join' ? ways.filter(isFree) : ways.filter(isEven(count));
  const fitting = free.filter(({ size }) => size.widthMm <= WIDTH_MM * scale);
  return (fitting.length > 0 ? fitting : free).reduce((best, way) =>
    isLower(way, best) ? way : best,
  );
}

/** Full rows of pieces, as far as the number allows. */
function isEven(count: number): (way: Arranged) => boolean {
  return ({ across }) => count % across === 0;
}

/** Lower by more than what does not count, or as low and narrower. */
function isLower({ size: one }: Arranged, { size: other }: Arranged): boolean {
  const byMm = Math.round(100 * (one.heightMm - other.heightMm));
  return byMm < 0 || (byMm === 0 && one.widthMm < other.widthMm - 0.01);
}

function together(field: Size, pieces: Size, isBeside: boolean, scale: number): Size {
  const clear = CLEAR_MM * scale;
  const size = isBeside
    ? {
        widthMm: field.widthMm + clear + pieces.widthMm,
        heightMm: Math.max(field.heightMm, pieces.heightMm),
      }
    : {
        widthMm: Math.max(field.widthMm, pieces.widthMm),
        heightMm: field.heightMm + clear + pieces.heightMm,
      };
  return withBlank(size, scale);
}

function withBlank({ widthMm, heightMm }: Size, scale: number): Size {
  const blank = 2 * AROUND_MM * scale;
  return { widthMm: widthMm + blank, heightMm: heightMm + blank };
}

function wholeOf({ widthMm, heightMm }: Size): Area {
  return { left: 0, top: 0, width: widthMm, height: heightMm };
}

function fieldSize({ field, columns }: Printed, cellMm: number, scale: number): Size {
  const sideOf = (count: number) => lengthOf(count, cellMm) + 2 * PAD_MM * scale;
  return { widthMm: sideOf(columns), heightMm: sideOf(Math.ceil(field.length / columns)) };
}

function piecesSize(printed: Printed, cellMm: number, scale: number, across: number) {
  const { rows, columns } = holeShape(printed);
  const edges = 2 * EDGE_SHARE * cellMm;
  const piece = {
    widthMm: lengthOf(columns, cellMm) + edges,
    heightMm: lengthOf(rows, cellMm) + edges,
  };
  const down = Math.ceil((printed.offered?.length ?? 0) / across);
  const allOf = (count: number, oneMm: number) =>
    Math.max(0, count * oneMm + (count - 1) * APART_MM * scale);
  const pieces = {
    widthMm: down === 0 ? 0 : allOf(across, piece.widthMm),
    heightMm: allOf(down, piece.heightMm),
  };
  return { piece, pieces };
}

function pieceAreas({ offered = [] }: Printed, tray: Area, across: number, scale: number) {
  return offered.length === 0 ? [] : gridPlaces(offered.length, across, tray, APART_MM * scale);
}

/** The cells inside a piece. */
function cellsOf(printed: Printed, area: Area, cellMm: number): readonly Area[] {
  const { rows, columns } = holeShape(printed);
  return gridPlaces(
    rows * columns,
    columns,
    insetArea(area, EDGE_SHARE * cellMm),
    GAP_SHARE * cellMm,
  );
}

function lengthOf(count: number, cellMm: number): number {
  return (count + (count - 1) * GAP_SHARE) * cellMm;
}

function holesIn({ field }: Printed): readonly number[] {
  return field.flatMap((figure, place) => (figure ? [] : [place]));
}

/** Rows and columns of the hole. */
function holeShape(printed: Printed): { readonly rows: number; readonly columns: number } {
  const holes = holesIn(printed);
  const span = (at: readonly number[]) => 1 + Math.max(...at) - Math.min(...at);
  return {
    rows: span(holes.map((place) => Math.floor(place / printed.columns))),
    columns: span(holes.map((place) => place % printed.columns)),
  };
}

/** Round the cells of the hole, as far from the figures beside it as from those that belong in it. */
function holeArea(printed: Printed, cells: readonly Area[], cellMm: number): Area {
  const holes = holesIn(printed);
  const [first, last] = [cells[holes[0] ?? 0], cells[holes.at(-1) ?? 0]];
  if (!first || !last) throw new Error('missing-part › hole: the field has none');
  const edge = EDGE_SHARE * cellMm;
  return {
    left: first.left - edge,
    top: first.top - edge,
    width: last.left + last.width - first.left + 2 * edge,
    height: last.top + last.height - first.top + 2 * edge,
  };
}
