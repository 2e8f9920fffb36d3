// How much of one laid outline runs beside another, so near that the two lines look like one.
import { type LinePoint, linePointsOf } from '../../figures/index.ts';
import type { Placed } from './task.ts';

/** Two lines run alike when the cosine of their angle is at least this: 26 degrees. */
const ALIKE_COSINE = 0.9;
/** Points of the one stand so many times further apart than those of the other. */
const COARSE = 2;

/** 0 to 1; `near` in cell sides. */
export function shareBeside(one: Placed, other: Placed, near: number): number {
  const [right, down] = [one.x - other.x, one.y - other.y];
  const points = linePointsOf(one.figure, COARSE * near);
  const along = linePointsOf(other.figure, near);
  const beside = points.filter((point) =>
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
