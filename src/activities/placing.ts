// How figures stand in their cells on every page: sizes that can be seen and touched, cards for dots, rings.
import {
  circlePath,
  flattenPath,
  type Path,
  type Point,
  pathBounds,
  rectanglePath,
} from '../base/index.ts';
import { type Figure, formOf, isShape, outlineOf } from '../figures/index.ts';
import {
  type Area,
  centreOf,
  drawFigure,
  FAINT_INK,
  FINE_MM,
  type Group,
  insetArea,
  OUTLINE_MM,
  type PrintStyle,
  type Shape,
  stroked,
} from '../page/index.ts';

/**
 * Least sides of a figure's cell, in mm; common practice, no source: a letter fills about half of its cell, a
 * picture has fine parts, the dots of a quantity must be large enough to count; of several sizes the smallest,
 * about half of the biggest or less, must still be 12 mm.
 */
const SHAPE_MM = 16;
const FINE_PARTS_MM = 20;
const SMALLEST_MM = 12;

/** The line of an answer drawn in: thick and quiet; in mm. */
export const ANSWER_LINE_MM = 1.2;
/** Between a cell and the middle of the ring round it, in mm. */
export const RING_GAP_MM = 1.8;
/** Line of an empty circle, inside its diameter, so that a sticker covers it; in mm. */
const CIRCLE_MM = 0.5;
/** Rounding of a ring, in its sides: little, so that it goes round marks in the corners of a cell. */
const RING_CORNER = 0.22;
/** The card that holds the dots of one quantity together: its corners and the dots' cell, in card sides. */
const CARD_CORNER = 0.14;
const CARD_INSIDE = 0.89;

/** The least side of the cells, in mm, for figures that all stand in equal cells. */
export function leastCellMm(figures: readonly Figure[]): number {
  const isPlain = figures.every((figure) => isShape(formOf(figure)));
  const least = Math.min(1, ...figures.map(({ size = 1 }) => size));
  const side = Math.max(isPlain ? SHAPE_MM : FINE_PARTS_MM, SMALLEST_MM / least);
  return Math.ceil(10 * side) / 10;
}

/** A figure in its cell; a quantity on a card of its own, so that its dots are counted together. */
export function drawInCell(
  figure: Figure,
  cell: Area,
  style: PrintStyle,
): readonly (Group | Shape)[] {
  const { x, y } = centreOf(cell);
  const drawn = drawFigure(figure, x, y, sideInCard(figure, cell.width), style);
  return formOf(figure) === 'dots'
    ? [stroked(cardPath(cell), { colour: FAINT_INK, widthMm: FINE_MM }), drawn]
    : [drawn];
}

/**
 * The side of a figure's own cell, in mm, where it stands in one of `cellMm`: all of it, but that a quantity stands clear
 * of the edge of its card, which may be the line of a table's cell.
 */
export function sideInCard(figure: Figure, cellMm: number): number {
  return formOf(figure) === 'dots' ? CARD_INSIDE * cellMm : cellMm;
}

/** The edge of the card of a quantity; its line lies inside the cell. */
export function cardPath(cell: Area): Path {
  const { left, top, width, height } = insetArea(cell, FINE_MM / 2);
  return rectanglePath(left, top, width, height, cell.width * CARD_CORNER);
}

/** The cell in which a dot comes out at the diameter of a sticker, its printed outline included; mm. */
export function stickerCellMm(figure: Figure, stickerMm: number): number {
  const { left, right } = pathBounds(outlineOf({ form: formOf(figure) }).path);
  return (stickerMm - OUTLINE_MM) / (right - left) + OUTLINE_MM;
}

/** The faint circle about a middle that a sticker, or a dot as wide, goes into. */
export function emptyCircle({ x, y }: Point, diameterMm: number): Shape {
  const path = circlePath(x, y, (diameterMm - CIRCLE_MM) / 2);
  return stroked(path, { colour: FAINT_INK, widthMm: CIRCLE_MM });
}

/** The ring round a cell; its line reaches `RING_GAP_MM` and half its width beyond the cell. */
export function ringPath({ left, top, width, height }: Area): Path {
  const [across, down] = [width + 2 * RING_GAP_MM, height + 2 * RING_GAP_MM];
  const corner = RING_CORNER * Math.min(across, down);
  return rectanglePath(left - RING_GAP_MM, top - RING_GAP_MM, across, down, corner);
}

/** How far a figure reaches from the middle of its cell, in cell sides: all round, and along or across. */
export function reachOf(figure: Figure): { readonly round: number; readonly side: number } {
  const { path, drawn } = outlineOf(figure);
  const points = flattenPath(path).flat();
  const halfLine = (drawn?.widthShare ?? 0) / 2;
  const square = Math.max(...points.map(({ x, y }) => x * x + y * y));
  const side = Math.max(...points.map(({ x, y }) => Math.max(Math.abs(x), Math.abs(y))));
  return { round: Math.sqrt(square) + halfLine, side: side + halfLine };
}
