// Draws a task, and with its answer the same task with the odd figure ringed or crossed out.
import {
  type Area,
  asPlace,
  centredIn,
  centreOf,
  type Group,
  gridPlaces,
  group,
  INK,
  insetArea,
  line,
  marked,
  type PrintStyle,
  QUIET_INK,
  type SceneNode,
  stroked,
  WHITE,
} from '../../page/index.ts';
import type { Size } from '../activity.ts';
import { ANSWER_LINE_MM, drawInCell, ringPath } from '../placing.ts';
import { AROUND_MM, measuresOf, room } from './room.ts';
import type { Answer, Printed } from './task.ts';

/** Beyond this, times the least, a page looks stretched, not calm (by eye). */
const MOST_SCALE = 1.5;
/** A cross, edged with white so that it shows on every colour; its arm as a share of the cell. */
const CROSS_MM = 0.8;
const CROSS_EDGE_MM = 0.3;
const CROSS_ARM = 0.52;

export function draw(printed: Printed, size: Size, style: PrintStyle, answer?: Answer): Group {
  const places = placesIn(printed, size);
  const figures = places.flatMap((place, index) => {
    const figure = printed.figures[index];
    const choice = figure && group('choice', drawInCell(figure, place, style));
    return choice ? [asPlace(marked(choice, index))] : [];
  });
  const oddPlace = answer && places[answer.odd];
  return group('task', [...figures, ...(oddPlace ? [drawAnswer(printed, oddPlace)] : [])]);
}

/** A square for each figure, the task in the middle of the size. */
function placesIn(printed: Printed, size: Size): readonly Area[] {
  const { figures, columns = figures.length, shifts } = printed;
  const least = room(printed);
  const scale = Math.min(size.widthMm / least.widthMm, size.heightMm / least.heightMm, MOST_SCALE);
  const { figureMm, gapMm } = measuresOf(printed);
  const loose = shifts ? gapMm / 2 : 0;
  const page = { left: 0, top: 0, width: size.widthMm, height: size.heightMm };
  const task = centredIn(page, least.widthMm * scale, least.heightMm * scale);
  const grid = insetArea(task, (AROUND_MM + loose) * scale);
  const pitchMm = (figureMm + gapMm) * scale;
  return gridPlaces(figures.length, columns, grid, gapMm * scale).map((place, index) => {
    const { x = 0, y = 0 } = shifts?.[index] ?? {};
    return { ...place, left: place.left + x * pitchMm, top: place.top + y * pitchMm };
  });
}

function drawAnswer({ response }: Printed, place: Area): Group {
  const ring = stroked(ringPath(place), { colour: QUIET_INK, widthMm: ANSWER_LINE_MM });
  return group('answer', response === 'cross' ? drawCross(place) : [ring]);
}

function drawCross(place: Area): readonly SceneNode[] {
  const { x, y } = centreOf(place);
  const arm = CROSS_ARM * place.width;
  const arms = (stroke: { readonly colour: typeof INK; readonly widthMm: number }) => [
    line(x - arm, y - arm, x + arm, y + arm, stroke),
    line(x - arm, y + arm, x + arm, y - arm, stroke),
  ];
  return [
    ...arms({ colour: WHITE, widthMm: CROSS_MM + 2 * CROSS_EDGE_MM }),
    ...arms({ colour: INK, widthMm: CROSS_MM }),
  ];
}
