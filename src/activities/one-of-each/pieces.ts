// What goes into the empty cells, as pieces to cut out.
import type { PrintStyle } from '../../page/index.ts';
import type { Size } from '../activity.ts';
import { figurePiece, type Piece } from '../pieces.ts';
import { sideInGrid } from './draw.ts';
import { planPage } from './page-plan.ts';
import type { Answer, Printed } from './task.ts';

export function pieces(
  printed: Printed,
  { figures }: Answer,
  size: Size,
  style: PrintStyle,
): readonly Piece[] {
  const plan = planPage(printed, size);
  const cells = printed.rows.flat();
  const empty = plan.cells.filter((_, index) => cells[index] === null);
  return figures.flatMap((figure, index) => {
    const place = empty[index];
    return place ? [figurePiece(figure, place, sideInGrid(figure, printed, plan), style)] : [];
  });
}
