// Draws a task, and with its answer the same task with each shadow ringed, or joined to its model by a line.
import { circlePath, linePath, type Point } from '../../base/index.ts';
import {
  type Area,
  asModel,
  asPlace,
  box,
  FAINT_INK,
  filled,
  type Group,
  group,
  marked,
  type PrintStyle,
  QUIET_INK,
  type Shape,
  stroked,
} from '../../page/index.ts';
import type { Size } from '../activity.ts';
import { ANSWER_LINE_MM, drawInCell, ringPath } from '../placing.ts';
import { leastSize, type PagePlan, planPage } from './page-plan.ts';
import type { Answer, Printed } from './task.ts';

/** The dots that a line is drawn from and to: their radius, and how far they stand off, in mm. */
const END_MM = 0.9;
const END_OFF_MM = 3;

export function room(printed: Printed): Size {
  return leastSize(printed);
}

export function draw(printed: Printed, size: Size, style: PrintStyle, answer?: Answer): Group {
  const plan = planPage(printed, size, style.hand);
  const models = printed.models.map((figure, index) => {
    const [frame, cell] = [plan.frames[index], plan.models[index]];
    if (!frame || !cell) return marked(group('model', []), index);
    const { left, top, width, height } = frame;
    const framed = [box(left, top, width, height), ...drawInCell(figure, cell, style)];
    return asModel(marked(group('model', framed), index));
  });
  const shadows = printed.shadows.map((figure, place) => {
    const cell = plan.shadows[place];
    const drawn = cell ? drawInCell(figure, cell, style) : [];
    return asPlace(marked(group('shadow', drawn), printed.models.length + place));
  });
  const key = answer === undefined ? [] : [group('answer', drawAnswer(printed, plan, answer))];
  return group('task', [...models, ...shadows, ...drawEnds(printed, plan), ...key]);
}

function drawEnds({ response }: Printed, { frames, filled: shadows }: PagePlan): readonly Group[] {
  if (response !== 'join') return [];
  const ends = [...frames.map(below), ...shadows.map(above)];
  return [
    group(
      'ends',
      ends.map(({ x, y }) => filled(circlePath(x, y, END_MM), FAINT_INK)),
    ),
  ];
}

function drawAnswer({ response }: Printed, plan: PagePlan, answer: Answer): readonly Shape[] {
  const stroke = { colour: QUIET_INK, widthMm: ANSWER_LINE_MM };
  return answer.flatMap((place, index) => {
    const [frame, cell] = [plan.frames[index], plan.filled[place]];
    if (!frame || !cell) return [];
    const path = response === 'join' ? linePath([below(frame), above(cell)]) : ringPath(cell);
    return [stroked(path, stroke)];
  });
}

function below({ left, top, width, height }: Area): Point {
  return { x: left + width / 2, y: top + height + END_OFF_MM };
}

function above({ left, top, width }: Area): Point {
  return { x: left + width / 2, y: top - END_OFF_MM };
}
