// Tasks as they stand on a page that is read from right to left: places mirrored, figures as they are.
import {
  beforeMirroring,
  type Group,
  isMirrored,
  kept,
  mirrored,
  mirroredArea,
  type PrintStyle,
} from '../page/index.ts';
import type { Piece } from './pieces.ts';
import type { Size } from './size.ts';

/** The style for which a task is laid out, before its places are mirrored where the language asks for that. */
export function laidOutFor(style: PrintStyle): PrintStyle {
  return isMirrored(style.language) ? beforeMirroring(style) : style;
}

/** The task as it is drawn for a language; on its page it is one whole that only moves. */
export function drawnFor(
  style: PrintStyle,
  { widthMm }: Size,
  draw: (style: PrintStyle) => Group,
): Group {
  if (!isMirrored(style.language)) return draw(style);
  return kept(mirrored(draw(laidOutFor(style)), widthMm / 2), widthMm / 2);
}

/** The pieces with their places on the task as it is drawn for a language. */
export function piecesFor(
  style: PrintStyle,
  { widthMm }: Size,
  pieces: (style: PrintStyle) => readonly Piece[],
): readonly Piece[] {
  if (!isMirrored(style.language)) return pieces(style);
  return pieces(laidOutFor(style)).map(({ isInKept = false, ...piece }) => {
    const middle = piece.widthMm / 2;
    const { drawing, place } = piece;
    return {
      ...piece,
      drawing: kept(isInKept ? drawing : mirrored(drawing, middle), middle),
      ...(place && { place: isInKept ? place : mirroredArea(place, widthMm) }),
    };
  });
}
