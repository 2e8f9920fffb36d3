// Draws a task: figures on their ground line or loose, and below them what the answer goes into.
import { polygonPath, rectanglePath } from '../../base/index.ts';
import {
  type Area,
  asModel,
  asPlace,
  box,
  FAINT_INK,
  FINE_MM,
  filled,
  type Group,
  group,
  LINE_MM,
  line,
  marked,
  type PrintStyle,
  type SceneNode,
  STRONG_MM,
  stroked,
} from '../../page/index.ts';
import type { Size } from '../activity.ts';
import { drawAnswer, drawPlace } from './draw-answer.ts';
import { CARD_PAD_MM, leastSize, type PagePlan, planPage, WEDGE_MM } from './page-plan.ts';
import { type Answer, isOneAsked, type Printed } from './task.ts';

/** The ground line goes so far beyond the figures, in mm. */
const GROUND_BEYOND_MM = 3;
const CUT_DASH_MM = [2.4, 1.8];
/** The corners of a box to put dots in, or to join to. */
const CORNER_MM = 2;

export function room(printed: Printed): Size {
  return leastSize(printed);
}

export function draw(printed: Printed, size: Size, style: PrintStyle, answer?: Answer): Group {
  const plan = planPage(printed, size);
  const figures = plan.places.map((place, index) => {
    const choice = group('choice', [
      ...(printed.response === 'cut' ? [cutLine(place.ink)] : []),
      ...drawPlace(place, style),
    ]);
    const using = plan.boxes.length > 0 || plan.strip ? asModel : asPlace;
    return using(isOneAsked(printed) ? marked(choice, index) : choice);
  });
  const key = answer === undefined ? [] : [drawAnswer(printed, plan, answer, style)];
  return group('task', [...ground(plan), ...figures, ...below(plan), ...key]);
}

function ground({ groundMm, left, width }: PagePlan): readonly SceneNode[] {
  if (groundMm === undefined) return [];
  const y = groundMm + STRONG_MM / 2;
  const stroke = { colour: FAINT_INK, widthMm: STRONG_MM };
  return [line(left - GROUND_BEYOND_MM, y, left + width + GROUND_BEYOND_MM, y, stroke)];
}

function cutLine({ left, top, width, height }: Area): SceneNode {
  const path = rectanglePath(
    left - CARD_PAD_MM,
    top - CARD_PAD_MM,
    width + 2 * CARD_PAD_MM,
    height + 2 * CARD_PAD_MM,
  );
  return stroked(path, { colour: FAINT_INK, widthMm: LINE_MM, dashMm: CUT_DASH_MM });
}

function below({ boxes, strip }: PagePlan): readonly SceneNode[] {
  const places = boxes.map(({ left, top, width, height }) =>
    asPlace(group('place', [box(left, top, width, height, { radiusMm: CORNER_MM })])),
  );
  if (!strip) return places;
  const { left, top, width, height } = strip;
  return [asPlace(group('strip', [box(left, top, width, height), wedgeBelow(strip)]))];
}

/** Says without words which end is for the small ones. */
function wedgeBelow({ left, top, width, height }: Area): SceneNode {
  const bottom = top + height + WEDGE_MM - FINE_MM;
  const corners = [
    { x: left + 2, y: bottom },
    { x: left + width - 2, y: bottom },
    { x: left + width - 2, y: top + height + 2 },
  ];
  return filled(polygonPath(corners), FAINT_INK);
}
