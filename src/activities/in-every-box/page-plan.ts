// Where the boxes, the figures in them and the circles below them stand on paper.
import type { Point } from '../../base/index.ts';
import { type Area, centreOf, gridPlaces } from '../../page/index.ts';
import type { Size } from '../activity.ts';
import { boxSize, figureRows } from './box-shape.ts';
import { columnsOf, leastSize } from './columns.ts';
import { AROUND_MM, type Measures, measuresOf } from './measures.ts';
import type { Box, Printed } from './task.ts';

/** All of a task from (0, 0) to the size it was planned for, in mm. */
export interface PagePlan {
  readonly boxes: readonly Area[];
  /** Middles of the figures of each box. */
  readonly figures: readonly (readonly Point[])[];
  /** Middles of the empty circles. */
  readonly circles: readonly Point[];
  /** Side of a figure's cell, or the diameter of a dot that takes a sticker. */
  readonly figureMm: number;
  /** Between figures, and between figures and the line of the box. */
  readonly gapMm: number;
}

/** Beyond these, times the least, a page looks stretched, not calm (by eye). */
const MOST_SCALE = 1.35;
const MOST_BETWEEN = 1.6;

/** Plans the task in the middle of `size`, which is at least its least size; stickers keep their diameter. */
export function planPage(printed: Printed, size: Size): PagePlan {
  const scale = scaleIn(size, leastSize(printed));
  const measures = measuresOf(printed);
  const grown = scaled(measures, scale);
  const frame = frameIn(size, printed, grown, scale);
  const boxes = gridPlaces(printed.boxes.length, columnsOf(printed), frame.area, frame.gap);
  return {
    boxes,
    figures: printed.boxes.map((box, index) => {
      const area = boxes[index];
      return area ? figurePoints(box, printed, area, grown, scale) : [];
    }),
    circles: circlePoints(printed.circles ?? 0, size, frame.circlesMm, grown),
    figureMm: printed.stickerMm ?? grown.figureMm,
    gapMm: grown.gapMm,
  };
}

function scaleIn(size: Size, least: Size): number {
  const most = Math.min(size.widthMm / least.widthMm, size.heightMm / least.heightMm, MOST_SCALE);
  return Math.max(1, most);
}

function scaled(measures: Measures, scale: number): Measures {
  return {
    figureMm: measures.figureMm * scale,
    cellMm: measures.cellMm * scale,
    gapMm: measures.gapMm * scale,
    betweenMm: measures.betweenMm * scale,
  };
}

interface Frame {
  /** What the boxes fill. */
  readonly area: Area;
  readonly gap: { readonly across: number; readonly down: number };
  /** Height of the middles of the circles. */
  readonly circlesMm: number;
}

/** The boxes with room between them, the circles as far below as rows are apart, all in the middle. */
function frameIn(size: Size, printed: Printed, measures: Measures, scale: number): Frame {
  const least = boxSize(printed);
  const columns = columnsOf(printed);
  const rows = Math.ceil(printed.boxes.length / columns);
  const circles = (printed.circles ?? 0) > 0;
  const [wide, high] = [columns * least.widthMm * scale, rows * least.heightMm * scale];
  const circleMm = circles ? measures.cellMm : 0;
  const freeMm = {
    across: size.widthMm - 2 * AROUND_MM - wide,
    down: size.heightMm - 2 * AROUND_MM - high - circleMm,
  };
  const across = between(freeMm.across, columns - 1, measures);
  const down = between(freeMm.down, rows - 1 + (circles ? 1 : 0), measures);
  const width = wide + (columns - 1) * across;
  const height = high + (rows - 1) * down;
  const all = height + (circles ? down + circleMm : 0);
  const top = (size.heightMm - all) / 2;
  return {
    area: { left: (size.widthMm - width) / 2, top, width, height },
    gap: { across, down },
    circlesMm: top + all - circleMm / 2,
  };
}

/** The width of each of `gaps` gaps that share `freeMm` with the space about the task, within what is calm. */
function between(freeMm: number, gaps: number, { betweenMm }: Measures): number {
  if (gaps === 0) return betweenMm;
  return Math.max(betweenMm, Math.min(freeMm / (gaps + 1), betweenMm * MOST_BETWEEN));
}

function figurePoints(
  { figures, places }: Box,
  { layout = 'grid' }: Printed,
  area: Area,
  { cellMm, gapMm }: Measures,
  scale: number,
): readonly Point[] {
  if (places) {
    return places.map(({ x, y }) => ({ x: area.left + x * scale, y: area.top + y * scale }));
  }
  const pitch = cellMm + gapMm;
  const rows = figureRows(layout === 'row' ? 'row' : 'grid', figures.length);
  const middle = centreOf(area);
  return rows.flatMap((count, row) =>
    lineOf(count, middle.x, middle.y + (row - (rows.length - 1) / 2) * pitch, pitch),
  );
}

function circlePoints(count: number, size: Size, y: number, measures: Measures): readonly Point[] {
  return lineOf(count, size.widthMm / 2, y, measures.cellMm + measures.gapMm);
}

/** Points at equal distances on a level line, about its middle. */
function lineOf(count: number, middle: number, y: number, pitch: number): readonly Point[] {
  return Array.from({ length: count }, (_, index) => ({
    x: middle + (index - (count - 1) / 2) * pitch,
    y,
  }));
}
