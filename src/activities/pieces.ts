// Pieces to cut out: what of an answer goes into an empty place, a little smaller than the place.
import { compose, moveBy, scaleBy } from '../base/index.ts';
import type { Figure } from '../figures/index.ts';
import {
  type Area,
  centreOf,
  drawFigure,
  type Group,
  group,
  type PrintStyle,
  type SceneNode,
} from '../page/index.ts';
import { reachOf } from './placing.ts';
import type { Size } from './size.ts';

/** A piece of paper with one figure of the answer, or with several that go into one place together. */
export interface Piece extends Size {
  /** Row by row, as they stand on the piece. */
  readonly figures: readonly Figure[];
  /** From (0, 0) to its size, without the line to cut along. */
  readonly drawing: Group;
  /** The empty place on the drawn task that it goes into, larger than the piece; absent: it belongs nowhere. */
  readonly place?: Area;
  /** Whether it belongs to a part in the middle of the task that keeps its look on a mirrored page; absent: it does not. */
  readonly isInKept?: boolean;
}

/** A piece is so much smaller than its place, in mm, so that it goes in. */
const LESS_MM = 1;
/** Least blank between the figure on a piece and the edge that is cut, in mm; common practice, no source. */
const BLANK_MM = 1.5;

/** One figure in the middle of its piece, as large as on the task where the piece has room for that. */
export function figurePiece(
  figure: Figure,
  place: Area,
  cellMm: number,
  style: PrintStyle,
  belongs = true,
): Piece {
  const size = { widthMm: place.width - LESS_MM, heightMm: place.height - LESS_MM };
  // The whole figure, so that of several sizes the small ones stay as much smaller as they are.
  const reach = 2 * reachOf({ ...figure, size: undefined }).side;
  const roomMm = Math.min(size.widthMm, size.heightMm) - 2 * BLANK_MM;
  const side = Math.min(cellMm, roomMm / reach);
  const drawn = drawFigure(figure, size.widthMm / 2, size.heightMm / 2, side, style);
  return pieceOf([figure], [drawn], size, belongs ? place : undefined);
}

/** All that fills a place, made a little smaller with its piece; `drawn` where it stands on the task. */
export function filledPiece(
  figures: readonly Figure[],
  drawn: readonly SceneNode[],
  place: Area,
  belongs = true,
): Piece {
  const size = { widthMm: place.width - LESS_MM, heightMm: place.height - LESS_MM };
  const scale = Math.min(size.widthMm / place.width, size.heightMm / place.height);
  const { x, y } = centreOf(place);
  const whole = {
    ...group('filling', drawn),
    transform: compose(
      moveBy(size.widthMm / 2, size.heightMm / 2),
      compose(scaleBy(scale), moveBy(-x, -y)),
    ),
  };
  return pieceOf(figures, [whole], size, belongs ? place : undefined);
}

/** A piece of a drawing of its own. */
export function pieceOf(
  figures: readonly Figure[],
  drawn: readonly SceneNode[],
  size: Size,
  place: Area | undefined,
): Piece {
  const drawing = group('piece-drawing', drawn);
  return { ...size, figures, drawing, ...(place === undefined ? {} : { place }) };
}
