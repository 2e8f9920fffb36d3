// What is to be added to the boxes, as pieces to cut out; lines from point to point are no pieces.
import type { PrintStyle } from '../../page/index.ts';
import type { Size } from '../activity.ts';
import { figurePiece, type Piece } from '../pieces.ts';
import { figureSideMm } from './draw.ts';
import { planPage, pointIn } from './page-plan.ts';
import { readingOf } from './reading.ts';
import type { Answer, Printed } from './task.ts';

export function pieces(
  printed: Printed,
  answer: Answer,
  size: Size,
  style: PrintStyle,
): readonly Piece[] {
  const reading = readingOf(printed);
  if (reading.content === 'lines') return [];
  const plan = planPage(printed, size, style.hand);
  const { columns } = printed.model;
  return plan.boxes.flatMap((area, box) =>
    (answer[box]?.cells ?? []).flatMap((figure, index) => {
      const isGiven = (printed.boxes[box]?.cells[index] ?? null) !== null;
      if (!figure || isGiven) return [];
      const { x, y } = pointIn(area, plan, Math.floor(index / columns), index % columns);
      const half = plan.cellMm / 2;
      const place = { left: x - half, top: y - half, width: plan.cellMm, height: plan.cellMm };
      return [figurePiece(figure, place, figureSideMm(figure, plan, reading), style)];
    }),
  );
}
