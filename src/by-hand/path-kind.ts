// What kind of mark a path is to a hand with a ruler: a straight line, an upright box, a circle, or none of these.
import { type Bounds, flattenPath, type Path, type Point, pathBounds } from '../base/index.ts';

export type PathKind = 'line' | 'rising-line' | 'box' | 'circle' | 'other';

/** Points that lie so near, in mm, are taken to lie on the line. */
const NEAR_MM = 0.05;
/** Corners rounded by more than this share of the shorter side make no box. */
const MOST_CORNER = 0.34;
/** A circle is drawn in so many curves. */
const CIRCLE_CURVES = 4;

export function pathKind(path: Path): PathKind {
  const points = flattenPath(path).flat();
  if (isSegment(path)) {
    const [first, last] = points;
    const isRising = first && last && (last.x - first.x) * (last.y - first.y) < 0;
    return isRising ? 'rising-line' : 'line';
  }
  if (path.filter(([step]) => step === 'M').length !== 1) return 'other';
  const bounds = pathBounds(path);
  if (isCircle(path, points, bounds)) return 'circle';
  return isBox(path, points, bounds) ? 'box' : 'other';
}

function isSegment(path: Path): boolean {
  return path.length === 2 && path[0]?.[0] === 'M' && path[1]?.[0] === 'L';
}

function isCircle(
  path: Path,
  points: readonly Point[],
  { left, top, right, bottom }: Bounds,
): boolean {
  const curves = path.filter(([step]) => step === 'C').length;
  if (curves !== CIRCLE_CURVES || path.some(([step]) => step === 'L')) return false;
  const [x, y, radius] = [(left + right) / 2, (top + bottom) / 2, (right - left) / 2];
  return points.every((point) => Math.abs(Math.hypot(point.x - x, point.y - y) - radius) < NEAR_MM);
}

/** Every straight part lies on an edge, and what is not straight stays in the corners. */
function isBox(
  path: Path,
  points: readonly Point[],
  { left, top, right, bottom }: Bounds,
): boolean {
  const cornerMm = MOST_CORNER * Math.min(right - left, bottom - top);
  const straight = path.filter(([step]) => step === 'L').length;
  if (straight < 3) return false;
  return points.every(({ x, y }) => {
    const across = Math.min(x - left, right - x);
    const down = Math.min(y - top, bottom - y);
    const isOnEdge = Math.min(across, down) < NEAR_MM;
    return isOnEdge || (across < cornerMm && down < cornerMm);
  });
}
