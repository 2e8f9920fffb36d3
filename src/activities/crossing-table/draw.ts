// Draws a table with its heads and what is loose below it; with the answer, the cells filled or the lines drawn in.
import { circlePath, linePath, rectanglePath } from '../../base/index.ts';
import { type Figure, sameFigure } from '../../figures/index.ts';
import {
  type Area,
  asModel,
  asPlace,
  centredIn,
  centreOf,
  drawFigure,
  FAINT_INK,
  FINE_MM,
  filled,
  type Group,
  group,
  LINE_MM,
  line,
  type PrintStyle,
  QUIET_INK,
  type SceneNode,
  STRONG_MM,
  stroked,
} from '../../page/index.ts';
import type { Size } from '../activity.ts';
import { dashedEdges } from '../dashes.ts';
import { ANSWER_LINE_MM, drawInCell, sideInCard } from '../placing.ts';
import { drawHeads } from './draw-heads.ts';
import { leastSize, type PagePlan, planPage } from './page-plan.ts';
import { type Answer, type Printed, responseTo } from './task.ts';

/** The dot at the end of a line of the answer: its radius, in mm. */
const END_MM = 1.6;

/** How every figure of a task is drawn. */
interface Ways {
  readonly printed: Printed;
  readonly plan: PagePlan;
  readonly style: PrintStyle;
}

export function room(printed: Printed): Size {
  return leastSize(printed);
}

export function draw(printed: Printed, size: Size, style: PrintStyle, answer?: Answer): Group {
  const plan = planPage(printed, size, style.hand);
  const ways = { printed, plan, style };
  const { rowHeads = [], columnHeads = [] } = printed;
  const given = printed.rows.flat().flatMap((figure, place) => {
    const cell = plan.cells[place];
    return figure && cell ? [group('given', [drawStanding(figure, cell, ways)])] : [];
  });
  return group('task', [
    group(
      'heads',
      [
        ...drawHeads(rowHeads, plan.rowHeads, printed, plan.figureMm, style),
        ...drawHeads(columnHeads, plan.columnHeads, printed, plan.figureMm, style),
      ].map(asModel),
    ),
    asPlace(group('table', [...given, ...tableLines(printed, plan)])),
    ...drawLoose(ways),
    ...(answer ? [drawAnswer(answer, ways)] : []),
  ]);
}

/** The cells of the table are the cards of dots, which are as large there as on a card of their own. */
function drawStanding(figure: Figure, cell: Area, { plan, style }: Ways): Group {
  const { x, y } = centreOf(cell);
  return drawFigure(figure, x, y, sideInCard(figure, plan.figureMm), style);
}

function tableLines({ rows }: Printed, { grid }: PagePlan): readonly SceneNode[] {
  const { left, top, width, height } = grid;
  const [right, bottom] = [left + width, top + height];
  const columns = rows[0]?.length ?? 1;
  const across = rows.slice(1).map((_, index) => {
    const y = top + ((index + 1) * height) / rows.length;
    return line(left, y, right, y, { widthMm: LINE_MM });
  });
  const down = Array.from({ length: columns - 1 }, (_, index) => {
    const x = left + ((index + 1) * width) / columns;
    return line(x, top, x, bottom, { widthMm: LINE_MM });
  });
  const around = stroked(rectanglePath(left, top, width, height, 0), { widthMm: STRONG_MM });
  return [...across, ...down, around];
}

function drawLoose(ways: Ways): readonly Group[] {
  const { printed, plan, style } = ways;
  const isCut = responseTo(printed) === 'cut';
  return (printed.loose ?? []).flatMap((figure, place) => {
    const area = plan.loose[place];
    if (!area) return [];
    if (!isCut) return [group('loose', drawInCell(figure, centredIn(area, plan.figureMm), style))];
    const edges = dashedEdges(area).map((path) =>
      stroked(path, { colour: FAINT_INK, widthMm: FINE_MM }),
    );
    return [group('loose', [...edges, drawStanding(figure, area, ways)])];
  });
}

/** What belongs into each empty cell, or where it is joined the line from the loose figure to its cell. */
function drawAnswer({ figures }: Answer, ways: Ways): Group {
  const { printed, plan } = ways;
  const cells = printed.rows.flat();
  const empty = plan.cells.filter((_, place) => cells[place] === null);
  const isJoined = responseTo(printed) === 'join';
  const drawn = empty.flatMap((cell, place) => {
    const figure = figures[place];
    if (!figure) return [];
    return isJoined ? joinTo(figure, cell, ways) : [drawStanding(figure, cell, ways)];
  });
  return group('answer', drawn);
}

function joinTo(figure: Figure, cell: Area, { printed, plan }: Ways): readonly SceneNode[] {
  const place = (printed.loose ?? []).findIndex((other) => sameFigure(other, figure));
  const from = plan.loose[place];
  if (!from) return [];
  const [start, end] = [{ x: centreOf(from).x, y: from.top }, centreOf(cell)];
  return [
    stroked(linePath([start, end]), { colour: QUIET_INK, widthMm: ANSWER_LINE_MM }),
    filled(circlePath(end.x, end.y, END_MM), QUIET_INK),
  ];
}
