// Draws a task: the model on a quiet plate, the boxes in the same frame; with the answer, what was to be added.
import { rectanglePath } from '../../base/index.ts';
import { type Figure, figureName } from '../../figures/index.ts';
import {
  type Area,
  asModel,
  asPlace,
  centreOf,
  drawFigure,
  filled,
  type Group,
  group,
  INK,
  kept,
  line,
  OUTLINE_MM,
  type Paint,
  type PrintStyle,
  traced,
} from '../../page/index.ts';
import type { Size } from '../activity.ts';
import { cellForWidth, dotMm, drawnCellMm } from './dot-size.ts';
import { drawFrame } from './draw-frame.ts';
import { type PagePlan, planPage, pointIn, roomFor } from './page-plan.ts';
import { placesOf } from './places.ts';
import { type Reading, readingOf } from './reading.ts';
import type { Answer, Cells, Model, Printed } from './task.ts';

/** The model's plate: a warm grey that prints as a light one and is none of the children's colours. */
const PLATE_TONE: Paint = '#e9e5dc';
const PLATE_CORNER_MM = 4;
/** A line of the lattice: as broad as a thick crayon's, so that it stands out from frame and points. */
const LATTICE_LINE_MM = 1.8;

interface Look {
  readonly model: Model;
  readonly plan: PagePlan;
  readonly reading: Reading;
  readonly style: PrintStyle;
}

export function room(printed: Printed): Size {
  return roomFor(printed);
}

export function draw(printed: Printed, size: Size, style: PrintStyle, answer?: Answer): Group {
  const plan = planPage(printed, size, style.hand);
  const { model } = printed;
  const look = { model, plan, reading: readingOf(printed), style };
  const boxes = plan.boxes.map((area, index) => {
    const cells = printed.boxes[index]?.cells ?? [];
    return asPlace(drawPattern('box', area, cells, look, answer?.[index]?.cells));
  });
  return group('task', [
    drawPlate(plan.plate),
    asModel(drawPattern('model', plan.model, model.cells, look)),
    ...boxes,
  ]);
}

function drawPlate({ left, top, width, height }: Area): Group {
  const path = rectanglePath(left, top, width, height, PLATE_CORNER_MM);
  return group('plate', [filled(path, PLATE_TONE)]);
}

/** A frame, what stands in it, and what `finished` has beyond that. */
function drawPattern(role: string, area: Area, cells: Cells, look: Look, finished?: Cells): Group {
  const frame = drawFrame(area, cells, look.model, look.plan, look.reading);
  const shown = drawCells(area, cells, look);
  const added = finished?.map((figure, index) => (cells[index] ? null : figure));
  const answer = added ? [group('answer', drawCells(area, added, look))] : [];
  const pattern = group(role, [frame, ...shown, ...answer]);
  // Lines from point to point are one figure together.
  return look.reading.content === 'lines' ? kept(pattern, centreOf(area).x) : pattern;
}

function drawCells(area: Area, cells: Cells, look: Look): readonly Group[] {
  const { columns } = look.model;
  const places = placesOf(look.reading.content === 'lines' ? 'lattice' : 'grid', look.model);
  return places.flatMap(({ kind, from, to }, index) => {
    const figure = cells[index];
    if (!figure) return [];
    const start = pointIn(area, look.plan, Math.floor(from / columns), from % columns);
    if (kind === 'cell') return [drawInCell(figure, start.x, start.y, look)];
    const end = pointIn(area, look.plan, Math.floor(to / columns), to % columns);
    const stroke = { colour: INK, widthMm: LATTICE_LINE_MM };
    const drawn = line(start.x, start.y, end.x, end.y, stroke);
    const name = figureName(figure, look.style.language);
    return [traced(figure, group('figure', [drawn], name))];
  });
}

/** The lines round filled neighbours fall together, and into the line of the frame. */
function drawInCell(figure: Figure, x: number, y: number, { plan, reading, style }: Look): Group {
  return drawFigure(figure, x, y, figureSideMm(figure, plan, reading), style);
}

/** The side of the cell that a figure is drawn in. */
export function figureSideMm(figure: Figure, { cellMm }: PagePlan, reading: Reading): number {
  const isDrawn = reading.response === 'draw' && reading.content !== 'dots';
  if (isDrawn) return drawnCellMm(figure, cellMm);
  const isWholeCell = reading.content === 'filled-cells';
  return cellForWidth(figure, isWholeCell ? cellMm + OUTLINE_MM : dotMm(reading, cellMm));
}
