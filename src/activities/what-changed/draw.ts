// Draws the two pictures, and with the answer each place that differs ringed or crossed in the second one.
import { linePath, rectanglePath } from '../../base/index.ts';
import {
  type Area,
  asModel,
  asPlace,
  box,
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
import { leastSize, planPage, type ScenePlan } from './page-plan.ts';
import type { Answer, Printed, Scene } from './task.ts';

/** A cross reaches so far into the cell from its corners, in cells. */
const CROSS_INSET = 0.08;

export function room(printed: Printed, style?: PrintStyle): Size {
  return leastSize(printed, style?.hand);
}

export function draw(printed: Printed, size: Size, style: PrintStyle, answer?: Answer): Group {
  const [one, other] = planPage(printed, size, style.hand);
  const key = answer === undefined ? [] : [drawAnswer(printed, other, answer)];
  return group('task', [
    drawFirst(printed.first, one, style),
    drawSecond(printed, other, style),
    ...key,
  ]);
}

function drawFirst(scene: Scene, { frame, cells }: ScenePlan, style: PrintStyle): Group {
  const figures = scene.flatMap((figure, place) => {
    const cell = cells[place];
    return figure && cell ? [group('place', drawInCell(figure, cell, style))] : [];
  });
  return asModel(group('scene', [frameOf(frame), ...figures]));
}

/** Each place is marked; one from which a figure has gone shows nothing, but can be pointed to like the others. */
function drawSecond(
  { first, second }: Printed,
  { frame, cells }: ScenePlan,
  style: PrintStyle,
): Group {
  const places = second.flatMap((figure, place) => {
    const cell = cells[place];
    if (!cell || !(figure ?? first[place])) return [];
    const drawn = figure
      ? group('place', drawInCell(figure, cell, style))
      : group('gone', [unpainted(cell)]);
    return [marked(drawn, place)];
  });
  return asPlace(group('scene', [frameOf(frame), ...places]));
}

function frameOf({ left, top, width, height }: Area): Shape {
  return box(left, top, width, height);
}

function unpainted({ left, top, width, height }: Area): Shape {
  return { kind: 'shape', path: rectanglePath(left, top, width, height) };
}

function drawAnswer({ response }: Printed, { cells }: ScenePlan, answer: Answer): Group {
  const mark = response === 'cross' ? drawCross : drawRing;
  return group(
    'answer',
    answer.flatMap((place) => {
      const cell = cells[place];
      return cell ? mark(cell) : [];
    }),
  );
}

const STROKE = { colour: QUIET_INK, widthMm: ANSWER_LINE_MM };

function drawRing(cell: Area): readonly Shape[] {
  return [stroked(ringPath(cell), STROKE)];
}

function drawCross(cell: Area): readonly Shape[] {
  const { left, top, width, height } = insetArea(cell, CROSS_INSET * cell.width);
  const [right, bottom] = [left + width, top + height];
  const lines = [
    [
      { x: left, y: top },
      { x: right, y: bottom },
    ],
    [
      { x: right, y: top },
      { x: left, y: bottom },
    ],
  ];
  return lines.map((points) => stroked(linePath(points), STROKE));
}
