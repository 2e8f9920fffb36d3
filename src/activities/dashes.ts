// The dashed edges of a piece to cut out.
import { linePath, type Path } from '../base/index.ts';
import type { Area } from '../page/index.ts';

/** Dash and gap in mm, as nearly as they divide a side; by eye. */
const DASH_MM = 2;
const GAP_MM = 1.5;

/** All four edges of a square in dashes that begin and end in its corners. */
export function dashedEdges({ left, top, width }: Area): readonly Path[] {
  const count = Math.max(2, Math.round((width + GAP_MM) / (DASH_MM + GAP_MM)));
  const long = (width - (count - 1) * GAP_MM) / count;
  const [right, bottom] = [left + width, top + width];
  return Array.from({ length: count }, (_, index) => index * (long + GAP_MM)).flatMap((at) => [
    dash(left + at, top, left + at + long, top),
    dash(left + at, bottom, left + at + long, bottom),
    dash(left, top + at, left, top + at + long),
    dash(right, top + at, right, top + at + long),
  ]);
}

function dash(x1: number, y1: number, x2: number, y2: number): Path {
  return linePath([
    { x: x1, y: y1 },
    { x: x2, y: y2 },
  ]);
}
