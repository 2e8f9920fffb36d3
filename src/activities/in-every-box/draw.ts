// Draws a task, and with its answer the same task with the shared figures ringed and the circles filled.
import { circlePath, type Point } from '../../base/index.ts';
import { type Figure, formOf, sameFigure } from '../../figures/index.ts';
import {
  type Area,
  asModel,
  asPlace,
  box,
  drawFigure,
  type Group,
  group,
  marked,
  type PrintStyle,
  QUIET_INK,
  type Shape,
  stroked,
} from '../../page/index.ts';
import type { Size } from '../activity.ts';
import {
  ANSWER_LINE_MM,
  cardPath,
  drawInCell,
  emptyCircle,
  RING_GAP_MM,
  reachOf,
  ringPath,
  stickerCellMm,
} from '../placing.ts';
import { printedWords } from '../printed-words.ts';
import { leastSize } from './columns.ts';
import { type PagePlan, planPage } from './page-plan.ts';
import type { Answer, Printed } from './task.ts';

/** The middle of the line round a figure of the answer is this far from what it goes round at most. */
const MOST_RING_GAP_MM = 1.4;
/** Blank that is left between the rings of two neighbours. */
const RINGS_APART_MM = 0.4;

export function room(printed: Printed): Size {
  return leastSize(printed);
}

export function draw(printed: Printed, size: Size, style: PrintStyle, answer?: Answer): Group {
  const plan = planPage(printed, size);
  const boxes = printed.boxes.map((_, index) => drawBox(printed, plan, index, style));
  const circles = plan.circles.map((middle) => asPlace(drawCircle(middle, plan.figureMm, style)));
  const key = answer ? [drawAnswer(printed, plan, style, answer)] : [];
  const shown = circles.length > 0 ? boxes.map(asModel) : boxes;
  return group('task', [...shown, ...circles, ...key]);
}

function drawBox(printed: Printed, plan: PagePlan, index: number, style: PrintStyle): Group {
  const area = plan.boxes[index];
  const points = plan.figures[index] ?? [];
  const firstMark = printed.boxes.slice(0, index).flatMap((shown) => shown.figures).length;
  const figures = printed.boxes[index]?.figures ?? [];
  const frame = area ? [box(area.left, area.top, area.width, area.height)] : [];
  return group('box', [
    ...frame,
    ...points.flatMap((point, place) => {
      const figure = figures[place];
      if (!figure) return [];
      const drawn = drawPlaced(figure, point, printed, plan, style);
      const choice = marked(group('choice', drawn), firstMark + place);
      return [plan.circles.length > 0 ? choice : asPlace(choice)];
    }),
  ]);
}

/** A figure at its true size, a dot that takes a sticker at the sticker's. */
function drawPlaced(
  figure: Figure,
  point: Point,
  printed: Printed,
  plan: PagePlan,
  style: PrintStyle,
): readonly (Group | Shape)[] {
  return drawInCell(figure, cellAbout(point, cellFor(figure, printed, plan)), style);
}

function cellFor(figure: Figure, { stickerMm }: Printed, { figureMm }: PagePlan): number {
  const isSticker = stickerMm !== undefined && formOf(figure) === 'circle';
  return isSticker ? stickerCellMm(figure, stickerMm) : figureMm;
}

function cellAbout({ x, y }: Point, sideMm: number): Area {
  return { left: x - sideMm / 2, top: y - sideMm / 2, width: sideMm, height: sideMm };
}

function drawCircle(middle: Point, diameterMm: number, { language }: PrintStyle): Group {
  const circle = emptyCircle(middle, diameterMm);
  return group('circle', [circle], printedWords(language).emptyForSticker);
}

function drawAnswer(printed: Printed, plan: PagePlan, style: PrintStyle, answer: Answer): Group {
  const { figures } = answer;
  const ring = ringFor(figures, printed, plan);
  const rings = printed.boxes.flatMap((shown, index) =>
    shown.figures.flatMap((figure, place) => {
      const point = plan.figures[index]?.[place];
      const isShared = figures.some((wanted) => sameFigure(wanted, figure));
      return point && isShared ? [drawRing(figure, point, ring, plan)] : [];
    }),
  );
  const stickers = plan.circles.flatMap(({ x, y }, index) => {
    const figure = figures[index];
    return figure ? [drawFigure(figure, x, y, cellFor(figure, printed, plan), style)] : [];
  });
  return group('answer', [...rings, ...stickers]);
}

/** A ring as wide for all figures of the answer: where round ones would touch, one that follows the cell. */
interface Ring {
  readonly isRound: boolean;
  /** From the middle of a cell to the middle of the line, in mm. */
  readonly reachMm: number;
}

function ringFor(figures: readonly Figure[], printed: Printed, plan: PagePlan): Ring {
  const reaches = figures.map((figure) => {
    const { round, side } = reachOf(figure);
    const cellMm = cellFor(figure, printed, plan);
    return { roundMm: round * cellMm, sideMm: side * cellMm };
  });
  const spareMm = plan.gapMm - RINGS_APART_MM - ANSWER_LINE_MM;
  const gapMm = Math.min(MOST_RING_GAP_MM, spareMm / 2);
  const roundMm = Math.max(0, ...reaches.map(({ roundMm }) => roundMm)) + gapMm;
  const mostMm = (plan.figureMm + spareMm) / 2;
  if (roundMm <= mostMm) return { isRound: true, reachMm: roundMm };
  return { isRound: false, reachMm: Math.max(0, ...reaches.map(({ sideMm }) => sideMm)) + gapMm };
}

/** A quantity has the line of its card drawn thick. */
function drawRing(figure: Figure, point: Point, { isRound, reachMm }: Ring, plan: PagePlan): Shape {
  const about = (sideMm: number) => cellAbout(point, sideMm);
  const line = { colour: QUIET_INK, widthMm: ANSWER_LINE_MM };
  if (formOf(figure) === 'dots') return stroked(cardPath(about(plan.figureMm)), line);
  if (isRound) return stroked(circlePath(point.x, point.y, reachMm), line);
  return stroked(ringPath(about(2 * (reachMm - RING_GAP_MM))), line);
}
