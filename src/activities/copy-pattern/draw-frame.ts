// Draws the empty frame that the model and every box share: cells, faint circles for dots, or the points of a lattice.
import { circlePath } from '../../base/index.ts';
import {
  type Area,
  box,
  FAINT_INK,
  FINE_MM,
  filled,
  type Group,
  group,
  line,
  type SceneNode,
} from '../../page/index.ts';
import { emptyCircle } from '../placing.ts';
import { dotMm } from './dot-size.ts';
import { FRAME_MM } from './measures.ts';
import { type PagePlan, pointIn } from './page-plan.ts';
import type { Reading } from './reading.ts';
import type { Cells, Model } from './task.ts';

/** Points to draw between: large enough to aim at, faint enough to draw over. */
const POINT_MM = 1.8;
const CORNER_MM = 2.5;

/** The frame with all that is printed in it before any figure; circles stand where `cells` holds nothing. */
export function drawFrame(
  area: Area,
  cells: Cells,
  model: Model,
  plan: PagePlan,
  reading: Reading,
): Group {
  const hasCells = reading.content !== 'lines' && !reading.hasCircles;
  const radiusMm = hasCells ? 0 : CORNER_MM;
  const frame = box(area.left, area.top, area.width, area.height, { radiusMm, widthMm: FRAME_MM });
  return group('frame', [frame, ...guides(area, cells, model, plan, reading)]);
}

function guides(
  area: Area,
  cells: Cells,
  model: Model,
  plan: PagePlan,
  reading: Reading,
): readonly SceneNode[] {
  const points = Array.from({ length: model.rows * model.columns }, (_, point) =>
    pointIn(area, plan, Math.floor(point / model.columns), point % model.columns),
  );
  if (reading.content === 'lines') {
    return points.map(({ x, y }) => filled(circlePath(x, y, POINT_MM / 2), FAINT_INK));
  }
  if (!reading.hasCircles) return gridLines(area, model, plan.cellMm);
  return points
    .filter((_, index) => (cells[index] ?? null) === null)
    .map((point) => emptyCircle(point, dotMm(reading, plan.cellMm)));
}

function gridLines(
  { left, top, width, height }: Area,
  { rows, columns }: Model,
  cellMm: number,
): readonly SceneNode[] {
  const thin = { colour: FAINT_INK, widthMm: FINE_MM };
  const [right, bottom] = [left + width, top + height];
  const upright = Array.from({ length: columns - 1 }, (_, index) => {
    const x = left + FRAME_MM / 2 + (index + 1) * cellMm;
    return line(x, top + FRAME_MM, x, bottom - FRAME_MM, thin);
  });
  const level = Array.from({ length: rows - 1 }, (_, index) => {
    const y = top + FRAME_MM / 2 + (index + 1) * cellMm;
    return line(left + FRAME_MM, y, right - FRAME_MM, y, thin);
  });
  return [...upright, ...level];
}
