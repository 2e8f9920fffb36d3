// Draws a task, and with its answer the same task with the match ringed, or joined to the model by a line.
import { linePath, type Point, rectanglePath } from '../../base/index.ts';
import { type Figure, formOf } from '../../figures/index.ts';
import {
  type Area,
  box,
  centreOf,
  drawFigure,
  FAINT_INK,
  FINE_MM,
  type Group,
  group,
  insetArea,
  type PrintStyle,
  QUIET_INK,
  type Shape,
  stroked,
} from '../../page/index.ts';
import type { Size } from '../activity.ts';
import { leastSize, type PagePlan, planPage } from './page-plan.ts';
import type { Answer, Printed } from './task.ts';

/** The line of the answer: thick and quiet, a ring's middle this far outside the cell. */
const ANSWER_MM = 1.2;
const RING_GAP_MM = 1.8;
/** Rounding of a ring, in its sides: little, so that it goes round marks in the corners of a cell. */
const RING_CORNER = 0.22;
/** The card that holds the dots of one quantity together: its corners and the dots' cell, in card sides. */
const CARD_CORNER = 0.14;
const CARD_INSIDE = 0.89;

export function room(printed: Printed): Size {
  return leastSize(printed);
}

export function draw(printed: Printed, size: Size, style: PrintStyle, answer?: Answer): Group {
  const plan = planPage(printed, size);
  const { frame } = plan;
  const model = group('model', [
    box(frame.left, frame.top, frame.width, frame.height),
    ...drawPlaced(printed.model, plan.model, style),
  ]);
  const choices = printed.choices.map((figure, place) => {
    const area = plan.choices[place];
    return group('choice', area ? drawPlaced(figure, area, style) : []);
  });
  const key = answer === undefined ? [] : [drawAnswer(printed, plan, answer)];
  return group('task', [model, ...choices, ...key]);
}

/** A figure in its cell; a quantity on a card of its own, so that its dots are counted together. */
function drawPlaced(figure: Figure, cell: Area, style: PrintStyle): readonly (Group | Shape)[] {
  const { x, y } = centreOf(cell);
  if (formOf(figure) !== 'dots') return [drawFigure(figure, x, y, cell.width, style)];
  const { left, top, width, height } = insetArea(cell, FINE_MM / 2);
  const card = rectanglePath(left, top, width, height, cell.width * CARD_CORNER);
  return [
    stroked(card, { colour: FAINT_INK, widthMm: FINE_MM }),
    drawFigure(figure, x, y, cell.width * CARD_INSIDE, style),
  ];
}

function drawAnswer({ response }: Printed, plan: PagePlan, answer: Answer): Group {
  const cell = plan.choices[answer];
  const stroke = { colour: QUIET_INK, widthMm: ANSWER_MM };
  if (!cell) return group('answer', []);
  const path = response === 'join' ? joinPath(plan.frame, cell) : ringPath(cell);
  return group('answer', [stroked(path, stroke)]);
}

function ringPath({ left, top, width, height }: Area) {
  const side = width + 2 * RING_GAP_MM;
  return rectanglePath(
    left - RING_GAP_MM,
    top - RING_GAP_MM,
    side,
    height + 2 * RING_GAP_MM,
    RING_CORNER * side,
  );
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
