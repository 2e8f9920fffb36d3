// What goes into the hole, as a piece to cut out; then the wrong ones that are offered.
import type { PrintStyle } from '../../page/index.ts';
import type { Size } from '../activity.ts';
import { filledPiece, type Piece as PieceToCut } from '../pieces.ts';
import { sameFigures } from '../same-figures.ts';
import { figuresIn } from './draw.ts';
import { planPage } from './page-plan.ts';
import type { Answer, Piece, Printed } from './task.ts';

export function pieces(
  printed: Printed,
  { figures }: Answer,
  size: Size,
  style: PrintStyle,
): readonly PieceToCut[] {
  const { cells, hole } = planPage(printed, size, style.hand);
  const holes = cells.filter((_, place) => printed.field[place] === null);
  const pieceOf = (piece: Piece, belongs: boolean) =>
    filledPiece(piece, figuresIn(piece, holes, style), hole, belongs);
  return [
    pieceOf(figures, true),
    ...(printed.offered ?? [])
      .filter((piece) => !sameFigures(piece, figures))
      .map((piece) => pieceOf(piece, false)),
  ];
}
