// Draws a task, and with its answer the same task with the right choices ringed, or crossed.
import { linePath, type Path } from '../../base/index.ts';
import {
  type Area,
  asModel,
  asPlace,
  box,
  type Group,
  group,
  marked,
  type PrintStyle,
  QUIET_INK,
  stroked,
} from '../../page/index.ts';
import type { Size } from '../activity.ts';
import { ANSWER_LINE_MM, drawInCell, ringPath } from '../placing.ts';
import { leastSize, planPage } from './page-plan.ts';
import type { Answer, Printed } from './task.ts';

export function room(printed: Printed): Size {
  return leastSize(printed);
}

export function draw(printed: Printed, size: Size, style: PrintStyle, answer?: Answer): Group {
  const plan = planPage(printed, size, style.hand);
  const { left, top, width, height } = plan.frame;
  const model = asModel(
    group('model', [
      box(left, top, width, height),
      ...drawInCell(printed.model, plan.model, style),
    ]),
  );
  const choices = printed.choices.map((figure, place) => {
    const area = plan.choices[place];
    return asPlace(marked(group('choice', area ? drawInCell(figure, area, style) : []), place));
  });
  const key = answer?.flatMap((place) => {
    const cell = plan.choices[place];
    return cell ? [drawMark(cell, printed)] : [];
  });
  return group('task', [model, ...choices, ...(key ? [group('answer', key)] : [])]);
}

function drawMark(cell: Area, { response }: Printed) {
  const stroke = { colour: QUIET_INK, widthMm: ANSWER_LINE_MM };
  return stroked(response === 'cross' ? crossPath(cell) : ringPath(cell), stroke);
}

/** From corner to corner of the cell. */
function crossPath({ left, top, width, height }: Area): Path {
  const [right, bottom] = [left + width, top + height];
  return [
    ...linePath([
      { x: left, y: top },
      { x: right, y: bottom },
    ]),
    ...linePath([
      { x: left, y: bottom },
      { x: right, y: top },
    ]),
  ];
}
