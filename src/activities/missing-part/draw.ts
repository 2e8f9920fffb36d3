// Draws the field with its hole and the pieces; with the answer, the hole filled and the right piece marked.
import { linePath, type Point, rectanglePath } from '../../base/index.ts';
import {
  type Area,
  asModel,
  asPlace,
  box,
  centreOf,
  FAINT_INK,
  FINE_MM,
  type Group,
  group,
  insetArea,
  marked,
  type PrintStyle,
  QUIET_INK,
  type Shape,
  STRONG_MM,
  stroked,
} from '../../page/index.ts';
import type { Size } from '../activity.ts';
import { ANSWER_LINE_MM, drawInCell, ringPath } from '../placing.ts';
import { printedWords } from '../printed-words.ts';
import { sameFigures } from '../same-figures.ts';
import { leastSize, type PagePlan, planPage } from './page-plan.ts';
import { type Answer, type Piece, type Printed, responseTo } from './task.ts';

const CORNER_MM = 2;
const STROKE = { colour: QUIET_INK, widthMm: ANSWER_LINE_MM };

export function room(printed: Printed): Size {
  return leastSize(printed);
}

export function draw(printed: Printed, size: Size, style: PrintStyle, answer?: Answer): Group {
  const plan = planPage(printed, size, style.hand);
  const pieces = (printed.offered ?? []).map((piece, index) => {
    const place = plan.pieces[index];
    const drawn = place ? [...edge(place.area), ...figuresIn(piece, place.cells, style)] : [];
    return asPlace(marked(group('piece', drawn), index));
  });
  return group('task', [
    drawField(printed, plan, style),
    ...(pieces.length > 0 ? [group('pieces', pieces)] : []),
    ...(answer ? [drawAnswer(printed, plan, answer, style)] : []),
  ]);
}

function drawField(
  { field, offered }: Printed,
  { frame, cells, hole }: PagePlan,
  style: PrintStyle,
): Group {
  const figures = field.map((figure, place) => {
    const cell = cells[place];
    return group('place', figure && cell ? drawInCell(figure, cell, style) : []);
  });
  const empty = box(hole.left, hole.top, hole.width, hole.height, {
    radiusMm: CORNER_MM,
    widthMm: STRONG_MM,
  });
  const around = stroked(outlineOf(frame), { colour: FAINT_INK, widthMm: FINE_MM });
  const hollow = group('hole', [empty], printedWords(style.language).hole);
  return offered
    ? asModel(group('field', [around, ...figures, hollow]))
    : group('field', [around, ...figures, asPlace(hollow)]);
}

function outlineOf(frame: Area) {
  const { left, top, width, height } = insetArea(frame, FINE_MM / 2);
  return rectanglePath(left, top, width, height, CORNER_MM);
}

/** The edge of a piece: as large as the hole. */
function edge({ left, top, width, height }: Area): readonly Shape[] {
  return [box(left, top, width, height, { radiusMm: CORNER_MM, widthMm: FINE_MM })];
}

export function figuresIn(piece: Piece, cells: readonly Area[], style: PrintStyle) {
  return piece.flatMap((figure, index) => {
    const cell = cells[index];
    return cell ? drawInCell(figure, cell, style) : [];
  });
}

function drawAnswer(
  printed: Printed,
  plan: PagePlan,
  { figures }: Answer,
  style: PrintStyle,
): Group {
  const holes = plan.cells.filter((_, place) => printed.field[place] === null);
  const filling = group('filling', figuresIn(figures, holes, style));
  const fitting = (printed.offered ?? []).findIndex((piece) => sameFigures(piece, figures));
  const place = plan.pieces[fitting];
  if (!place) return group('answer', [filling]);
  const path =
    responseTo(printed) === 'join' ? joinPath(place.area, plan.hole) : ringPath(place.area);
  return group('answer', [filling, stroked(path, STROKE)]);
}

/** From the edge of the piece to the edge of the hole, along the line between their middles. */
function joinPath(piece: Area, hole: Area) {
  return linePath([edgePoint(piece, centreOf(hole)), edgePoint(hole, centreOf(piece))]);
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
