// Draws a task, and with its answer the same task with a ring round each outline that is in the tangle.
import { compose, moveBy, scaleBy, transformPath } from '../../base/index.ts';
import { type Figure, figureName, outlineOf } from '../../figures/index.ts';
import {
  asModel,
  asPlace,
  type Group,
  group,
  INK,
  kept,
  marked,
  type PrintStyle,
  QUIET_INK,
  type Shape,
  stroked,
  traced,
} from '../../page/index.ts';
import { hexOf } from '../../palette/index.ts';
import type { Size } from '../activity.ts';
import { ANSWER_LINE_MM, ringPath } from '../placing.ts';
import { leastSize, planPage, type Spot } from './page-plan.ts';
import type { Answer, Printed } from './task.ts';

/** Widths in mm: a line in ink, one in a colour, and the ink on both its sides. */
const INK_LINE_MM = 0.7;
const COLOUR_MM = 1.1;
const EDGE_MM = 0.3;

export function room(printed: Printed): Size {
  return leastSize(printed);
}

export function draw(printed: Printed, size: Size, style: PrintStyle, answer?: Answer): Group {
  const plan = planPage(printed, size);
  const drawn = (figure: Figure, spot: Spot | undefined) =>
    spot ? drawOutline(figure, spot, plan.cellMm, style) : [];
  const tangle = printed.tangle.map(({ figure }, index) =>
    traced(figure, group('outline', drawn(figure, plan.tangle[index]))),
  );
  const candidates = printed.candidates.map((figure, place) => {
    const outline = drawn(figure, plan.candidates[place]?.spot);
    const candidate = group('candidate', outline, figureName(figure, style.language));
    const at = plan.candidates[place]?.spot.x ?? 0;
    return traced(figure, asPlace(marked(kept(candidate, at), place)));
  });
  const rings = (answer ?? []).flatMap((place) => {
    const area = plan.candidates[place]?.place;
    const stroke = { colour: QUIET_INK, widthMm: ANSWER_LINE_MM };
    return area ? [stroked(ringPath(area), stroke)] : [];
  });
  return group('task', [
    // What covers what would change if its outlines changed places.
    asModel(kept(group('tangle', tangle), size.widthMm / 2)),
    ...candidates,
    ...(answer === undefined ? [] : [group('answer', rings)]),
  ]);
}

/** The line alone, nothing inside; in grey print all in ink, since the forms tell them apart. */
function drawOutline(
  figure: Figure,
  { x, y }: Spot,
  cellMm: number,
  { print }: PrintStyle,
): readonly Shape[] {
  const { path } = outlineOf(figure);
  const placed = transformPath(path, compose(moveBy(x, y), scaleBy(cellMm)));
  if (figure.colour === undefined || print === 'grey') {
    return [stroked(placed, { colour: INK, widthMm: INK_LINE_MM })];
  }
  return [
    stroked(placed, { colour: INK, widthMm: COLOUR_MM + 2 * EDGE_MM }),
    stroked(placed, { colour: hexOf(figure.colour), widthMm: COLOUR_MM }),
  ];
}
