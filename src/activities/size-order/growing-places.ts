// The row of empty places that lines are drawn to: the bigger the further right.
import type { Area } from '../../page/index.ts';

/** Sides of the first and of the last place, and the blank between two, in mm; common practice, no source. */
const LEAST_MM = 12;
export const GROWING_MM = 20;
const GAP_MM = 10;

/** All places with the blanks between them, in mm. */
export function growingWidth(count: number): number {
  return placeSides(count).reduce((sum, side) => sum + side, 0) + GAP_MM * (count - 1);
}

/** Places that grow from left to right and stand on one line, so that they say which end is the big one. */
export function growing(
  count: number,
  top: number,
  scale: number,
  middle: number,
): readonly Area[] {
  const sides = placeSides(count).map((side) => side * scale);
  const bottom = top + GROWING_MM * scale;
  let left = middle - (scale * growingWidth(count)) / 2;
  return sides.map((side) => {
    const area = { left, top: bottom - side, width: side, height: side };
    left += side + GAP_MM * scale;
    return area;
  });
}

function placeSides(count: number): readonly number[] {
  return Array.from(
    { length: count },
    (_, index) => LEAST_MM + ((GROWING_MM - LEAST_MM) * index) / Math.max(1, count - 1),
  );
}
