// The figures to stick into the frame in their order, as pieces to cut out.
import type { PrintStyle } from '../../page/index.ts';
import type { Size } from '../activity.ts';
import { type Piece, pieceOf } from '../pieces.ts';
import { drawPlace, inStrip, movedTo } from './draw-answer.ts';
import { CARD_PAD_MM, planPage } from './page-plan.ts';
import type { Answer, Printed } from './task.ts';

/** A piece is so much smaller than its share of the frame, in mm. */
const LESS_MM = 1;

export function pieces(
  printed: Printed,
  answer: Answer,
  size: Size,
  style: PrintStyle,
): readonly Piece[] {
  const plan = planPage(printed, size);
  const ordered = answer.flatMap((at) => plan.places[at] ?? []);
  return inStrip(ordered, plan).map(({ place, area }) => {
    const { width, height } = place.ink;
    const spare = Math.min(area.width - LESS_MM - width, area.height - LESS_MM - height);
    const pad = Math.min(CARD_PAD_MM, spare / 2);
    const drawn = drawPlace(movedTo(place, { left: pad, top: pad }), style);
    const piece = { widthMm: width + 2 * pad, heightMm: height + 2 * pad };
    return pieceOf([place.figure], drawn, piece, area);
  });
}
