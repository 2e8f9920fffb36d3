// Draws a task, and with its answer the same task with each end marked by the start that leads to it.
import { circlePath, type Path } from '../../base/index.ts';
import type { Figure } from '../../figures/index.ts';
import {
  type Area,
  asModel,
  asPlace,
  centreOf,
  drawFigure,
  FAINT_INK,
  type Group,
  group,
  INK,
  kept,
  LINE_MM,
  marked,
  type PrintStyle,
  QUIET_INK,
  type Shape,
  stroked,
  type Text,
  text,
} from '../../page/index.ts';
import { type ColourName, hexOf } from '../../palette/index.ts';
import type { Size } from '../activity.ts';
import { drawInCell, stickerCellMm } from '../placing.ts';
import { leastSize, type PagePlan, planPage } from './page-plan.ts';
import { type Answer, keepsDirection, type Printed } from './task.ts';

/** Widths in mm: a line in ink; one to draw along, lighter; one in a colour, and the ink on both its sides. */
const INK_LINE_MM = 1;
const GUIDE_MM = 1.4;
const COLOUR_MM = 1.5;
const EDGE_MM = 0.35;
/** An empty circle to colour in, in cell sides. */
const CIRCLE_SHARE = 0.9;
/** The numbers that show the answer: their height, and how far from a line; in mm. */
const NUMBER_MM = 5;
const NUMBER_AWAY_MM = 1.6;

export function room(printed: Printed): Size {
  return leastSize(printed);
}

export function draw(printed: Printed, size: Size, style: PrintStyle, answer?: Answer): Group {
  const plan = planPage(printed, size);
  const lines = plan.lines.map((path, index) =>
    group('line', drawLine(path, printed, printed.colours?.[index], style)),
  );
  // A start that is taken to an empty circle is looked at again there; else the eyes go on along the line.
  const isCopied = printed.ends === undefined;
  const starts = printed.starts.map((figure, index) => {
    const start = group('start', drawStart(figure, plan.starts[index], printed, style));
    return marked(isCopied ? asModel(start) : start, index);
  });
  const ends = plan.ends.map((cell, index) => {
    const end = group('end', drawEnd(printed.ends?.[index], cell, printed, style));
    return asPlace(marked(end, printed.starts.length + index));
  });
  const key = answer === undefined ? [] : [drawAnswer(printed, plan, answer, style)];
  const task = group('task', [...lines, ...starts, ...ends, ...key]);
  return keepsDirection(printed) ? kept(task, size.widthMm / 2) : task;
}

/** Grey print leaves lines in ink: greys are hard to keep apart along a thin line. */
function drawLine(
  path: Path,
  { response }: Printed,
  colour: ColourName | undefined,
  { print }: PrintStyle,
): readonly Shape[] {
  const isTraced = response === 'trace';
  if (colour === undefined || print === 'grey') {
    return isTraced
      ? [stroked(path, { colour: FAINT_INK, widthMm: GUIDE_MM })]
      : [stroked(path, { colour: INK, widthMm: INK_LINE_MM })];
  }
  return [
    stroked(path, { colour: INK, widthMm: COLOUR_MM + 2 * EDGE_MM }),
    stroked(path, { colour: hexOf(colour), widthMm: COLOUR_MM }),
  ];
}

function drawStart(
  figure: Figure,
  cell: Area | undefined,
  { response, stickerMm }: Printed,
  style: PrintStyle,
): readonly (Group | Shape)[] {
  if (!cell) return [];
  if (response !== 'sticker' || stickerMm === undefined) return drawInCell(figure, cell, style);
  const { x, y } = centreOf(cell);
  return [drawFigure(figure, x, y, stickerCellMm(figure, stickerMm), style)];
}

/** The figure that a line leads to, or an empty circle, for a sticker as wide as the sticker, its line included. */
function drawEnd(
  figure: Figure | undefined,
  cell: Area | undefined,
  printed: Printed,
  style: PrintStyle,
): readonly (Group | Shape)[] {
  if (!cell) return [];
  if (figure) return drawInCell(figure, cell, style);
  const { x, y } = centreOf(cell);
  const radius = (circleMm(cell, printed) - LINE_MM) / 2;
  return [stroked(circlePath(x, y, radius), { widthMm: LINE_MM })];
}

function circleMm(cell: Area, { response, stickerMm }: Printed): number {
  return response === 'sticker' && stickerMm !== undefined ? stickerMm : CIRCLE_SHARE * cell.width;
}

/** Empty ends filled in; else the same number at both ends of each line. */
function drawAnswer(printed: Printed, plan: PagePlan, answer: Answer, style: PrintStyle): Group {
  if (printed.ends) {
    const numbers = answer.flatMap((place, start) =>
      [plan.starts[start], plan.ends[place]].flatMap((cell, side) =>
        cell ? [numberBeside(start + 1, cell, side === 0, printed, plan.scale)] : [],
      ),
    );
    return group('answer', numbers);
  }
  const filled = answer.flatMap((place, start) => {
    const [cell, colour] = [plan.ends[place], printed.starts[start]?.colour];
    if (!cell) return [];
    const { x, y } = centreOf(cell);
    const dot = colour ? { colour } : {};
    return [drawFigure(dot, x, y, stickerCellMm(dot, circleMm(cell, printed)), style)];
  });
  return group('answer', filled);
}

/** Above the beginning or end of a line that runs across, to the right of one that runs down. */
function numberBeside(
  number: number,
  cell: Area,
  isStart: boolean,
  { direction }: Printed,
  scale: number,
): Text {
  const { x, y } = centreOf(cell);
  const away = (isStart ? 1 : -1) * (cell.width / 2 + 3 * scale);
  const quiet = { weight: 'bold', colour: QUIET_INK } as const;
  if (direction === 'down') {
    const baseline = y + away + (isStart ? NUMBER_MM * 0.7 : 0);
    return text(String(number), x + NUMBER_AWAY_MM, baseline, NUMBER_MM, quiet);
  }
  const anchor = isStart ? ('start' as const) : ('end' as const);
  return text(String(number), x + away, y - NUMBER_AWAY_MM, NUMBER_MM, { ...quiet, anchor });
}
