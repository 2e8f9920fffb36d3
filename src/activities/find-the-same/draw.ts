// Draws a task, and with its answer the same task with the match ringed, or joined to the model by a line.
import { linePath, type Point } from '../../base/index.ts';
import {
  type Area,
  asModel,
  asPlace,
  box,
  centreOf,
  type Group,
  group,
  marked,
  type PrintStyle,
  QUIET_INK,
  stroked,
} from '../../page/index.ts';
import type { Size } from '../activity.ts';
import { ANSWER_LINE_MM, drawInCell, ringPath } from '../placing.ts';
import { leastSize, type PagePlan, planPage } from './page-plan.ts';
import type { Answer, Printed } from './task.ts';

export function room(printed: Printed): Size {
  return leastSize(printed);
}

export function draw(printed: Printed, size: Size, style: PrintStyle, answer?: Answer): Group {
  const plan = planPage(printed, size, style.hand);
  const { frame } = plan;
  const model = asModel(
    group('model', [
      box(frame.left, frame.top, frame.width, frame.height),
      ...drawInCell(printed.model, plan.model, style),
    ]),
  );
  const choices = printed.choices.map((figure, place) => {
    const area = plan.choices[place];
    return asPlace(marked(group('choice', area ? drawInCell(figure, area, style) : []), place));
  });
  const key = answer === undefined ? [] : [drawAnswer(printed, plan, answer)];
  return group('task', [model, ...choices, ...key]);
}

function drawAnswer({ response }: Printed, plan: PagePlan, answer: Answer): Group {
  const cell = plan.choices[answer];
  const stroke = { colour: QUIET_INK, widthMm: ANSWER_LINE_MM };
  if (!cell) return group('answer', []);
  const path = response === 'join' ? joinPath(plan.frame, cell) : ringPath(cell);
  return group('answer', [stroked(path, stroke)]);
}

/** From the line of the frame to the edge of the cell, along the line between their middles. */
function joinPath(frame: Area, cell: Area) {
  const [from, to] = [centreOf(frame), centreOf(cell)];
  return linePath([edgePoint(frame, to), edgePoint(cell, from)]);
}

/** Where the line from the middle of an area to a point outside it leaves the area. */
function edgePoint(area: Area, towards: Point): Point {
  const { x, y } = centreOf(area);
  const [dx, dy] = [towards.x - x, towards.y - y];
  const share = Math.min(
    dx === 0 ? 1 : area.width / 2 / Math.abs(dx),
    dy === 0 ? 1 : area.height / 2 / Math.abs(dy),
  );
  return { x: x + dx * share, y: y + dy * share };
}
