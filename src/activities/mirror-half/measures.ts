// How large the parts of a task are in mm, and where they stand: the picture with its line, what is offered below.
import { type Figure, formOf, isShape } from '../../figures/index.ts';
import { type Area, centredIn, gridPlaces, rowPlaces } from '../../page/index.ts';
import type { Size } from '../activity.ts';
import { UPRIGHT_ROOM } from '../upright-room.ts';
import { isChosen, type Printed, responseTo } from './task.ts';

/** Line of a frame; its middle is the edge of the cells and their blank. */
export const FRAME_MM = 0.7;
/** From frame to frame across the mirror line, and what the line reaches beyond the frames. */
const ACROSS_MM = 6;
export const BEYOND_MM = 5;
/** Between offered halves, and between them and the picture. */
const GAP_MM = 10;
const BELOW_MM = 16;
const AROUND_MM = 2;
/** Blank between stickers, and inside the frame round circles. */
const BETWEEN_STICKERS_MM = 3;
const TARGET_MM = 12;
/** Beyond this, times the least, a page looks stretched (by eye). */
const MOST_SCALE = 1.3;
export const USUAL_STICKER_MM = 16;

/**
 * Sides of a cell; common practice, no source. What is made in a cell needs room for the hand; where a half is
 * chosen, the half is what is touched, and its figures need only be seen.
 */
const CELL_MM = {
  made: { filled: 15, shapes: 19, fine: 24, sized: 28.5 },
  chosen: { filled: 10, shapes: 12, fine: 14, sized: 16 },
} as const;

export interface PagePlan {
  /** The parts of the picture, row by row: two, or with both lines four. */
  readonly parts: readonly Area[];
  /** Which of them is given. */
  readonly given: number;
  readonly offered: readonly Area[];
  readonly cellMm: number;
  readonly padMm: number;
}

/** What stands in the cells: dots for stickers or to look at, filled cells, or figures of any kind. */
export function cellKind(printed: Printed): 'dots' | 'filled' | 'figures' {
  const figures = figuresOf(printed);
  const isAll = (form: string) =>
    figures.every((figure) => formOf(figure) === form && (figure.size ?? 1) === 1 && !figure.fill);
  const response = responseTo(printed);
  if (response === 'sticker' || (isChosen(response) && isAll('circle'))) return 'dots';
  return response === 'colour-in' && isAll('square') ? 'filled' : 'figures';
}

export function figuresOf({ part }: Printed): readonly Figure[] {
  return part.cells.filter((figure) => figure !== null);
}

export function leastSize(printed: Printed): Size {
  return sizeWith(printed, leastCellMm(printed));
}

function leastCellMm(printed: Printed): number {
  const response = responseTo(printed);
  if (response === 'sticker') {
    return Math.max(TARGET_MM, (printed.stickerMm ?? USUAL_STICKER_MM) + BETWEEN_STICKERS_MM);
  }
  const sides = CELL_MM[isChosen(response) ? 'chosen' : 'made'];
  if (cellKind(printed) !== 'figures') return sides.filled;
  const figures = figuresOf(printed);
  if (figures.some(({ size = 1 }) => size !== 1)) return sides.sized;
  return figures.every((figure) => isShape(formOf(figure))) ? sides.shapes : sides.fine;
}

/** Plans the task in the middle of `size`, which is at least its least size. */
export function planPage(printed: Printed, size: Size): PagePlan {
  const least = leastSize(printed);
  const scale = Math.min(size.widthMm / least.widthMm, size.heightMm / least.heightMm, MOST_SCALE);
  const isTrue = responseTo(printed) === 'sticker';
  const cellMm = leastCellMm(printed) * (isTrue ? 1 : Math.max(1, scale));
  const whole = { left: 0, top: 0, width: size.widthMm, height: size.heightMm };
  const perRow = perRowWithin(printed, cellMm, size);
  const used = sizeWith(printed, cellMm, perRow);
  const area = centredIn(whole, used.widthMm - 2 * AROUND_MM, used.heightMm - 2 * AROUND_MM);
  const picture = pictureSize(printed, cellMm);
  const top = { ...area, height: picture.heightMm };
  const inner = centredIn(
    top,
    picture.widthMm - beyond(printed).across,
    picture.heightMm - beyond(printed).down,
  );
  const { columns, rows } = partsOf(printed);
  return {
    parts: gridPlaces(rows * columns, columns, inner, ACROSS_MM),
    given: { first: 0, second: rows * columns - 1, 'upper-right': columns - 1 }[
      printed.given ?? 'first'
    ],
    offered: offeredPlaces(printed, area, picture.heightMm, cellMm, perRow),
    cellMm,
    padMm: padOf(printed),
  };
}

function offeredPlaces(
  printed: Printed,
  area: Area,
  takenMm: number,
  cellMm: number,
  perRow: number,
): readonly Area[] {
  const count = printed.offered?.length ?? 0;
  if (count === 0) return [];
  const { widthMm, heightMm } = partSize(printed, cellMm);
  const piece = { width: widthMm, height: heightMm };
  const rows = Math.ceil(count / perRow);
  return Array.from({ length: rows }, (_, row) => {
    const top = area.top + takenMm + BELOW_MM + row * (heightMm + offeredGap(printed).down);
    const inRow = Math.min(perRow, count - row * perRow);
    const pieces = Array.from({ length: inRow }, () => piece);
    return rowPlaces(pieces, { ...area, top, height: heightMm }, offeredGap(printed).across);
  }).flat();
}

/** Pieces stand further apart where the stub of their line is between them. */
function offeredGap({ axis }: Printed): { readonly across: number; readonly down: number } {
  return axis === 'upright'
    ? { across: GAP_MM + ACROSS_MM, down: GAP_MM }
    : { across: GAP_MM, down: GAP_MM + ACROSS_MM };
}

/** Four stand two by two where a row of them is wider than the paper. */
function offeredPerRow(printed: Printed, cellMm: number): number {
  const count = printed.offered?.length ?? 0;
  const { widthMm } = partSize(printed, cellMm);
  const gap = offeredGap(printed).across;
  const fits = (perRow: number) =>
    perRow * (widthMm + gap) - gap + 2 * AROUND_MM <= UPRIGHT_ROOM.widthMm;
  if (fits(count)) return count;
  return Math.max(1, fits(2) ? Math.ceil(count / 2) : 1);
}

/** Sizes that come from sums may differ in their last digits. */
const SLACK_MM = 0.001;

/** On paper that lies, grown halves would stand in more rows than there is height for: then as many side by side as before. */
function perRowWithin(printed: Printed, cellMm: number, { heightMm }: Size): number {
  const perRow = offeredPerRow(printed, cellMm);
  const isWithin = sizeWith(printed, cellMm, perRow).heightMm <= heightMm + SLACK_MM;
  return isWithin ? perRow : offeredPerRow(printed, leastCellMm(printed));
}

/** Of all that is drawn, with a little blank around. */
function sizeWith(printed: Printed, cellMm: number, perRow = offeredPerRow(printed, cellMm)): Size {
  const picture = pictureSize(printed, cellMm);
  const count = printed.offered?.length ?? 0;
  if (count === 0) {
    return { widthMm: picture.widthMm + 2 * AROUND_MM, heightMm: picture.heightMm + 2 * AROUND_MM };
  }
  const { widthMm, heightMm } = partSize(printed, cellMm);
  const gap = offeredGap(printed);
  const rows = Math.ceil(count / perRow);
  const wide = perRow * (widthMm + gap.across) + (printed.axis === 'upright' ? 0 : 2 * BEYOND_MM);
  const high = rows * (heightMm + gap.down) - gap.down + BEYOND_MM;
  return {
    widthMm: Math.max(picture.widthMm, wide) + 2 * AROUND_MM,
    heightMm: picture.heightMm + BELOW_MM + high + 2 * AROUND_MM,
  };
}

/** Of the frames with what the lines reach beyond them. */
function pictureSize(printed: Printed, cellMm: number): Size {
  const { widthMm, heightMm } = partSize(printed, cellMm);
  const { columns, rows } = partsOf(printed);
  return {
    widthMm: columns * widthMm + (columns - 1) * ACROSS_MM + beyond(printed).across,
    heightMm: rows * heightMm + (rows - 1) * ACROSS_MM + beyond(printed).down,
  };
}

/** What lines reach beyond the frames on both sides together. */
function beyond({ axis }: Printed): { readonly across: number; readonly down: number } {
  return {
    across: axis === 'upright' ? 0 : 2 * BEYOND_MM,
    down: axis === 'level' ? 0 : 2 * BEYOND_MM,
  };
}

function partsOf({ axis }: Printed): { readonly columns: number; readonly rows: number } {
  return { columns: axis === 'level' ? 1 : 2, rows: axis === 'upright' ? 1 : 2 };
}

function partSize(printed: Printed, cellMm: number): Size {
  const edge = 2 * padOf(printed) + FRAME_MM;
  const { rows, columns } = printed.part;
  return { widthMm: columns * cellMm + edge, heightMm: rows * cellMm + edge };
}

function padOf(printed: Printed): number {
  return cellKind(printed) === 'dots' ? BETWEEN_STICKERS_MM / 2 : 0;
}

/** The distance from a frame to the middle of the mirror line beside it. */
export const TO_LINE_MM = ACROSS_MM / 2;
