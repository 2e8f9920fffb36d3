// What goes into the empty places of the row, as pieces to cut out; then the wrong figures that are offered.
import { sameFigure } from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import type { Size } from '../activity.ts';
import { figurePiece, type Piece } from '../pieces.ts';
import { filledSideMm, placesOf } from './draw.ts';
import { measuresWithin, standsOnCards } from './measures.ts';
import type { Answer, Printed } from './task.ts';

export function pieces(
  printed: Printed,
  { figures }: Answer,
  size: Size,
  style: PrintStyle,
): readonly Piece[] {
  const measures = measuresWithin(printed, size);
  const ways = { printed, measures, style, hasCards: standsOnCards(printed) };
  const places = placesOf(printed, measures, size);
  const empty = places.filter((_, at) => printed.row[at] === null);
  const [first] = empty;
  const extra = (printed.offered ?? []).filter(
    (offered) => !figures.some((figure) => sameFigure(figure, offered)),
  );
  return [
    ...figures.flatMap((figure, at) => {
      const place = empty[at];
      return place ? [figurePiece(figure, place, filledSideMm(figure, ways), style)] : [];
    }),
    ...extra.flatMap((figure) =>
      first ? [figurePiece(figure, first, filledSideMm(figure, ways), style, false)] : [],
    ),
  ];
}
