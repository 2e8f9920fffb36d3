// What goes into the empty cells, as pieces to cut out; then the loose figures that belong nowhere.
import { type Figure, sameFigure } from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import type { Size } from '../activity.ts';
import { figurePiece, type Piece } from '../pieces.ts';
import { sideInCard } from '../placing.ts';
import { planPage } from './page-plan.ts';
import type { Answer, Printed } from './task.ts';

export function pieces(
  printed: Printed,
  { figures }: Answer,
  size: Size,
  style: PrintStyle,
): readonly Piece[] {
  const plan = planPage(printed, size, style.hand);
  const cells = printed.rows.flat();
  const empty = plan.cells.filter((_, index) => cells[index] === null);
  const pieceIn = (figure: Figure, place: (typeof empty)[number] | undefined, belongs: boolean) => {
    const sideMm = sideInCard(figure, plan.figureMm);
    return place ? [figurePiece(figure, place, sideMm, style, belongs)] : [];
  };
  const extra = (printed.loose ?? []).filter(
    (loose) => !figures.some((figure) => sameFigure(figure, loose)),
  );
  return [
    ...figures.flatMap((figure, index) => pieceIn(figure, empty[index], true)),
    ...extra.flatMap((figure) => pieceIn(figure, empty[0], false)),
  ];
}
