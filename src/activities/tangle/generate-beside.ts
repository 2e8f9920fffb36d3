// How much of one laid outline runs beside another, so near that the two lines look like one.
import { type LinePoint, linePointsOf } from '../../figures/index.ts';
import type { Placed } from './task.ts';

/** Two lines run alike when the cosine of their angle is at least this: 28 degrees, a little more than matters. */
const ALIKE_COSINE = 0.88;
/** No point of an outline is further from its middle along either side, in cell sides. */
const REACH = 0.5;

/** 0 to 1; `near` in cell sides. */
export function shareBeside(one: Placed, other: Placed, near: number): number {
  const [right, down] = [one.x - other.x, one.y - other.y];
  const points = linePointsOf(one.figure, near);
  const along = linePointsOf(other.figure, near);
  const beside = points.filter(
    (point) =>
      Math.abs(point.x + right) <= REACH + near &&
      Math.abs(point.y + down) <= REACH + near &&
      along.some((next) => isBeside(point, next, right, down, near)),
  );
  return beside.length / points.length;
}

function isBeside(
  { x, y, alongX, alongY }: LinePoint,
  other: LinePoint,
  right: number,
  down: number,
  near: number,
): boolean {
  const across = x + right - other.x;
  if (across > near || across < -near) return false;
  const below = y + down - other.y;
  if (below > near || below < -near) return false;
  return Math.abs(alongX * other.alongX + alongY * other.alongY) >= ALIKE_COSINE;
}
