// Where the figures to use, the grid and the pieces to cut out stand on paper, all figures at one size.
import { type Area, gridPlaces, insetArea } from '../../page/index.ts';
import type { Size } from '../activity.ts';
import { leastCellMm } from '../placing.ts';
import type { Printed } from './task.ts';

/** All of a task from (0, 0) to the size it was planned for. */
export interface PagePlan {
  /** Round the figures to use. */
  readonly tray: Area;
  /** Cells of the figures to use. */
  readonly figures: readonly Area[];
  readonly grid: Area;
  /** Cells of the grid with their lines, in reading order; figures stand in the middle. */
  readonly cells: readonly Area[];
  readonly pieces: readonly Area[];
  /** Side of a figure's cell, in mm. */
  readonly figureMm: number;
}

/** Lengths in mm; common practice, no source. */
const PAD_MM = 2;
const TRAY_PAD_MM = 2.5;
const TRAY_GAP_MM = 4;
/** Between the tray, the grid and the pieces: more than between figures anywhere. */
const APART_MM = 8;
const PIECE_GAP_MM = 3;
/** A piece is so much smaller than its cell, so that it goes in. */
const PIECE_LESS_MM = 1;
/** Blank all round the task. */
const AROUND_MM = 1;
/** Beyond this, times the least, a page looks stretched, not calm (by eye). */
const MOST_SCALE = 1.35;
/** Pieces in a row at most, as many as have room across a sheet. */
const MOST_IN_ROW = 7;

interface Measures {
  readonly figureMm: number;
  readonly cellMm: number;
}

export function leastSize(printed: Printed): Size {
  return sizeWith(printed, measuresAt(leastFigureMm(printed)));
}

/** Plans the task in the middle of `size`, which is at least its least size. */
export function planPage(printed: Printed, size: Size): PagePlan {
  const measures = measuresWithin(printed, size);
  const used = sizeWith(printed, measures);
  const middle = size.widthMm / 2;
  const top = (size.heightMm - used.heightMm) / 2 + AROUND_MM;
  const traySize = traySizeWith(printed, measures);
  const tray = areaAt(middle, top, traySize);
  const side = printed.rows.length * measures.cellMm;
  const grid = areaAt(middle, top + traySize.heightMm + APART_MM, {
    widthMm: side,
    heightMm: side,
  });
  const piecesSize = piecesSizeWith(printed, measures);
  const piecesArea = areaAt(middle, grid.top + side + APART_MM, piecesSize);
  const pieces = printed.pieces ?? [];
  return {
    tray,
    figures: gridPlaces(
      printed.figures.length,
      printed.figures.length,
      insetArea(tray, TRAY_PAD_MM),
      TRAY_GAP_MM,
    ),
    grid,
    cells: gridPlaces(printed.rows.flat().length, printed.rows.length, grid),
    pieces: gridPlaces(pieces.length, piecesInRow(printed), piecesArea, PIECE_GAP_MM),
    figureMm: measures.figureMm,
  };
}

function areaAt(middle: number, top: number, { widthMm, heightMm }: Size): Area {
  return { left: middle - widthMm / 2, top, width: widthMm, height: heightMm };
}

function leastFigureMm({ figures, stickerMm }: Printed): number {
  return Math.max(leastCellMm(figures), stickerMm ?? 0);
}

/** The largest measures, in steps of half a mm, with which the task stays within `size`. */
function measuresWithin(printed: Printed, size: Size): Measures {
  const least = leastFigureMm(printed);
  const most = printed.stickerMm === undefined ? MOST_SCALE * least : least;
  for (let figureMm = most; figureMm > least; figureMm -= 0.5) {
    const measures = measuresAt(figureMm);
    const { widthMm, heightMm } = sizeWith(printed, measures);
    if (widthMm <= size.widthMm && heightMm <= size.heightMm) return measures;
  }
  return measuresAt(least);
}

function measuresAt(figureMm: number): Measures {
  return { figureMm, cellMm: figureMm + 2 * PAD_MM };
}

function sizeWith(printed: Printed, measures: Measures): Size {
  const tray = traySizeWith(printed, measures);
  const side = printed.rows.length * measures.cellMm;
  const pieces = piecesSizeWith(printed, measures);
  const below = pieces.heightMm === 0 ? 0 : APART_MM + pieces.heightMm;
  return {
    widthMm: Math.max(tray.widthMm, side, pieces.widthMm) + 2 * AROUND_MM,
    heightMm: tray.heightMm + APART_MM + side + below + 2 * AROUND_MM,
  };
}

function traySizeWith({ figures }: Printed, { figureMm }: Measures): Size {
  const count = figures.length;
  return {
    widthMm: count * figureMm + (count - 1) * TRAY_GAP_MM + 2 * TRAY_PAD_MM,
    heightMm: figureMm + 2 * TRAY_PAD_MM,
  };
}

function piecesSizeWith(printed: Printed, { cellMm }: Measures): Size {
  const count = printed.pieces?.length ?? 0;
  if (count === 0) return { widthMm: 0, heightMm: 0 };
  const side = cellMm - PIECE_LESS_MM;
  const inRow = piecesInRow(printed);
  const lengthOf = (pieces: number) => pieces * (side + PIECE_GAP_MM) - PIECE_GAP_MM;
  return { widthMm: lengthOf(inRow), heightMm: lengthOf(Math.ceil(count / inRow)) };
}

/** In rows as even as can be. */
function piecesInRow({ pieces = [] }: Printed): number {
  const rows = Math.max(1, Math.ceil(pieces.length / MOST_IN_ROW));
  return Math.ceil(pieces.length / rows);
}
