// Draws a task, and with its answer the same task with its pairs ringed, crossed out or marked in their circles.
import { circlePath, linePath, type Path } from '../../base/index.ts';
import {
  type Area,
  asModel,
  asPlace,
  box,
  centreOf,
  FAINT_INK,
  FINE_MM,
  filled,
  type Group,
  group,
  insetArea,
  marked,
  type PrintStyle,
  QUIET_INK,
  type Shape,
  stroked,
} from '../../page/index.ts';
import type { Size } from '../activity.ts';
import { ANSWER_LINE_MM, drawInCell, ringPath } from '../placing.ts';
import { leastSize, type PairPlan, planPage } from './page-plan.ts';
import type { Answer, Printed, Response } from './task.ts';

/** Radius of a dot drawn in a circle, and half the length of a line, in the circle's sides. */
const DOT_SHARE = 0.22;
const LINE_SHARE = 0.3;
/** How far the lines of a cross stay off the edges of its box, in mm. */
const CROSS_INSET_MM = 1.5;

export function room(printed: Printed): Size {
  return leastSize(printed);
}

export function draw(printed: Printed, size: Size, style: PrintStyle, answer?: Answer): Group {
  const plans = planPage(printed, size, style.hand);
  const pairs = plans.map((plan, place) => {
    const { left, top, width, height } = plan.box;
    const figures = (printed.pairs[place] ?? []).map((figure, side) => {
      const cell = plan.cells[side];
      const member = group('member', cell ? drawInCell(figure, cell, style) : []);
      return plan.circle ? asModel(member) : member;
    });
    const drawn = [box(left, top, width, height), ...figures, ...drawCircle(plan)];
    const pair = marked(group('pair', drawn), place);
    return plan.circle ? pair : asPlace(pair);
  });
  if (answer === undefined) return group('task', pairs);
  const marks = plans.flatMap((plan, place) =>
    markOf(printed.response ?? 'point', plan, answer.includes(place)),
  );
  return group('task', [...pairs, group('answer', marks)]);
}

function drawCircle({ circle }: PairPlan): readonly Shape[] {
  if (!circle) return [];
  const { x, y } = centreOf(circle);
  const path = circlePath(x, y, (circle.width - FINE_MM) / 2);
  return [asPlace(stroked(path, { colour: FAINT_INK, widthMm: FINE_MM }))];
}

/** What a pair gets on the answer drawing, by whether its two are the same. */
function markOf(response: Response, plan: PairPlan, isSame: boolean): readonly Shape[] {
  const stroke = { colour: QUIET_INK, widthMm: ANSWER_LINE_MM };
  const { circle = plan.box } = plan;
  const { x, y } = centreOf(circle);
  const dot = () => filled(circlePath(x, y, DOT_SHARE * circle.width), QUIET_INK);
  const reach = LINE_SHARE * circle.width;
  switch (response) {
    case 'dot':
      return isSame ? [dot()] : [];
    case 'signs':
      return [isSame ? dot() : stroked(straight(x, y - reach, x, y + reach), stroke)];
    case 'cross':
      return isSame ? [] : crossPaths(plan.box).map((path) => stroked(path, stroke));
    default:
      return isSame ? [stroked(ringPath(plan.box), stroke)] : [];
  }
}

function crossPaths(area: Area): readonly Path[] {
  const { left, top, width, height } = insetArea(area, CROSS_INSET_MM);
  return [
    straight(left, top, left + width, top + height),
    straight(left, top + height, left + width, top),
  ];
}

function straight(x1: number, y1: number, x2: number, y2: number): Path {
  return linePath([
    { x: x1, y: y1 },
    { x: x2, y: y2 },
  ]);
}
