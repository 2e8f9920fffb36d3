// What goes into the empty half, as pieces to cut out: each figure, or where one half is chosen, whole halves.
import type { PrintStyle } from '../../page/index.ts';
import type { Size } from '../activity.ts';
import { figurePiece, filledPiece, type Piece } from '../pieces.ts';
import { cellIn, drawCells, drawGuides, figureSideMm, type Look, missingParts } from './draw.ts';
import { planPage } from './measures.ts';
import type { Answer, Cells, Printed } from './task.ts';

export function pieces(
  printed: Printed,
  answer: Answer,
  size: Size,
  style: PrintStyle,
): readonly Piece[] {
  const look = { printed, plan: planPage(printed, size), style };
  const all = 'choice' in answer ? halves(answer.choice, look) : figures(answer.cells, look);
  // The picture stands in the middle and keeps its look on every page.
  return all.map((piece) => ({ ...piece, isInKept: true }));
}

function figures(whole: Cells, look: Look): readonly Piece[] {
  return missingParts(whole, look).flatMap(({ area, cells }) =>
    cells.flatMap((figure, index) =>
      figure
        ? [figurePiece(figure, cellIn(area, index, look), figureSideMm(figure, look), look.style)]
        : [],
    ),
  );
}

/** The half that finishes the picture first; none where more than one part is empty. */
function halves(right: number, look: Look): readonly Piece[] {
  const { offered = [] } = look.printed;
  const [area, ...others] = look.plan.parts.filter((_, index) => index !== look.plan.given);
  const half = offered[right];
  if (!area || others.length > 0 || !half) return [];
  const pieceOf = (cells: Cells, belongs: boolean) =>
    filledPiece(
      cells.filter((figure) => figure !== null),
      [...drawGuides(area, cells, look), ...drawCells(area, cells, look)],
      area,
      belongs,
    );
  const wrong = offered.filter((_, index) => index !== right);
  return [pieceOf(half.cells, true), ...wrong.map(({ cells }) => pieceOf(cells, false))];
}
