// Draws a task, and with its answer the same task with the shared figures ringed and the circles filled.
import {
  circlePath,
  flattenPath,
  type Path,
  type Point,
  pathBounds,
  rectanglePath,
} from '../../base/index.ts';
import { type Figure, formOf, outlineOf, sameFigure } from '../../figures/index.ts';
import {
  box,
  drawFigure,
  FAINT_INK,
  FINE_MM,
  type Group,
  group,
  OUTLINE_MM,
  type PrintStyle,
  QUIET_INK,
  type Shape,
  stroked,
} from '../../page/index.ts';
import type { Size } from '../activity.ts';
import { leastSize } from './columns.ts';
import { type PagePlan, planPage } from './page-plan.ts';
import type { Answer, Printed } from './task.ts';

/** Line round a figure of the answer: thick and quiet, its middle this far from what it goes round at most. */
const RING_MM = 1.2;
const RING_GAP_MM = 1.4;
/** Blank that is left between the rings of two neighbours. */
const RINGS_APART_MM = 0.4;
/** Line of an empty circle, inside its diameter, so that a sticker covers it. */
const CIRCLE_MM = 0.5;
/** The card that holds the dots of one quantity together: its corners and the dots' cell, in card sides. */
const CARD_CORNER = 0.14;
const CARD_INSIDE = 0.89;

export function room(printed: Printed): Size {
  return leastSize(printed);
}

export function draw(printed: Printed, size: Size, style: PrintStyle, answer?: Answer): Group {
  const plan = planPage(printed, size);
  const boxes = printed.boxes.map((_, index) => drawBox(printed, plan, index, style));
  const circles = plan.circles.map(({ x, y }) => drawCircle(x, y, plan.figureMm));
  const key = answer ? [drawAnswer(printed, plan, style, answer)] : [];
  return group('task', [...boxes, ...circles, ...key]);
}

function drawBox(printed: Printed, plan: PagePlan, index: number, style: PrintStyle): Group {
  const area = plan.boxes[index];
  const points = plan.figures[index] ?? [];
  const figures = printed.boxes[index]?.figures ?? [];
  const frame = area ? [box(area.left, area.top, area.width, area.height)] : [];
  return group('box', [
    ...frame,
    ...points.flatMap((point, place) => {
      const figure = figures[place];
      return figure ? drawPlaced(figure, point, printed, plan, style) : [];
    }),
  ]);
}

/** A figure at its true size; a quantity on a card of its own, so that its dots are counted together. */
function drawPlaced(
  figure: Figure,
  { x, y }: Point,
  printed: Printed,
  plan: PagePlan,
  style: PrintStyle,
): readonly (Group | Shape)[] {
  const drawn = drawFigure(figure, x, y, cellFor(figure, printed, plan), style);
  if (figure.form !== 'dots') return [drawn];
  return [stroked(cardPath(x, y, plan), { colour: FAINT_INK, widthMm: FINE_MM }), drawn];
}

/** The cell in which a dot that takes a sticker comes out at the sticker's diameter, its line included. */
function cellFor(figure: Figure, { stickerMm }: Printed, { figureMm }: PagePlan): number {
  const form = formOf(figure);
  if (form === 'dots') return figureMm * CARD_INSIDE;
  if (stickerMm === undefined || form !== 'circle') return figureMm;
  const { left, right } = pathBounds(outlineOf({ form }).path);
  return (stickerMm - OUTLINE_MM) / (right - left) + OUTLINE_MM;
}

function cardPath(x: number, y: number, { figureMm }: PagePlan): Path {
  const [left, top] = [x - figureMm / 2, y - figureMm / 2];
  return rectanglePath(left, top, figureMm, figureMm, figureMm * CARD_CORNER);
}

function drawCircle(x: number, y: number, diameterMm: number): Group {
  const path = circlePath(x, y, (diameterMm - CIRCLE_MM) / 2);
  const line = stroked(path, { colour: FAINT_INK, widthMm: CIRCLE_MM });
  return group('circle', [line], 'empty circle for a sticker');
}

function drawAnswer(printed: Printed, plan: PagePlan, style: PrintStyle, answer: Answer): Group {
  const { figures } = answer;
  const reachMm = Math.max(0, ...figures.map((figure) => reachOf(figure, printed, plan)));
  const rings = printed.boxes.flatMap((shown, index) =>
    shown.figures.flatMap((figure, place) => {
      const point = plan.figures[index]?.[place];
      const isShared = figures.some((wanted) => sameFigure(wanted, figure));
      return point && isShared ? [drawRing(figure, point, reachMm, plan)] : [];
    }),
  );
  const stickers = plan.circles.flatMap(({ x, y }, index) => {
    const figure = figures[index];
    return figure ? [drawFigure(figure, x, y, cellFor(figure, printed, plan), style)] : [];
  });
  return group('answer', [...rings, ...stickers]);
}

/** A ring as wide for all figures of the answer; a quantity has the line of its card drawn thick. */
function drawRing(figure: Figure, { x, y }: Point, reachMm: number, plan: PagePlan): Shape {
  const isQuantity = figure.form === 'dots';
  const gapMm = Math.min(RING_GAP_MM, (plan.gapMm - RINGS_APART_MM - RING_MM) / 2);
  const path = isQuantity ? cardPath(x, y, plan) : circlePath(x, y, reachMm + gapMm);
  return stroked(path, { colour: QUIET_INK, widthMm: RING_MM });
}

/** How far in mm a figure reaches from the middle of its cell. */
function reachOf(figure: Figure, printed: Printed, plan: PagePlan): number {
  const { path, drawn } = outlineOf(figure);
  const squares = flattenPath(path)
    .flat()
    .map(({ x, y }) => x * x + y * y);
  const furthest = Math.sqrt(Math.max(...squares)) + (drawn?.widthShare ?? 0) / 2;
  return furthest * cellFor(figure, printed, plan);
}
