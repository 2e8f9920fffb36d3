// Paths of the plain shapes that everything else is put together from.
import type { Path, PathStep, Point } from './path.ts';

/** Control distance for a quarter circle of radius 1 by one cubic curve: 4/3 · (√2 − 1), exact at 45°. */
export const QUARTER_CIRCLE = (4 / 3) * (Math.SQRT2 - 1);

export function circlePath(x: number, y: number, radius: number): Path {
  return ellipsePath(x, y, radius, radius);
}

export function ellipsePath(x: number, y: number, rx: number, ry: number): Path {
  const [kx, ky] = [rx * QUARTER_CIRCLE, ry * QUARTER_CIRCLE];
  return [
    ['M', x + rx, y],
    ['C', x + rx, y + ky, x + kx, y + ry, x, y + ry],
    ['C', x - kx, y + ry, x - rx, y + ky, x - rx, y],
    ['C', x - rx, y - ky, x - kx, y - ry, x, y - ry],
    ['C', x + kx, y - ry, x + rx, y - ky, x + rx, y],
    ['Z'],
  ];
}

/** An upright rectangle, its corners rounded by `radius` (0: sharp). */
export function rectanglePath(
  left: number,
  top: number,
  width: number,
  height: number,
  radius = 0,
): Path {
  const [right, bottom] = [left + width, top + height];
  if (radius <= 0) {
    return polygonPath([
      { x: left, y: top },
      { x: right, y: top },
      { x: right, y: bottom },
      { x: left, y: bottom },
    ]);
  }
  const near = radius * (1 - QUARTER_CIRCLE);
  return [
    ['M', left + radius, top],
    ['L', right - radius, top],
    ['C', right - near, top, right, top + near, right, top + radius],
    ['L', right, bottom - radius],
    ['C', right, bottom - near, right - near, bottom, right - radius, bottom],
    ['L', left + radius, bottom],
    ['C', left + near, bottom, left, bottom - near, left, bottom - radius],
    ['L', left, top + radius],
    ['C', left, top + near, left + near, top, left + radius, top],
    ['Z'],
  ];
}

/** Straight lines through the points, closed. */
export function polygonPath(points: readonly Point[]): Path {
  return [...linePath(points), ['Z']];
}

/** Straight lines through the points, left open. */
export function linePath(points: readonly Point[]): Path {
  return points.map((point, index): PathStep => [index === 0 ? 'M' : 'L', point.x, point.y]);
}
