// Points along the line of an outline, each with the direction in which the line runs there.
import { flattenPath, type Path, type Point } from '../base/index.ts';
import type { Figure } from './figure.ts';
import { outlineOf } from './outline.ts';

/** A point of a line in cell sides, and the unit vector along the line there. */
export interface LinePoint extends Point {
  readonly alongX: number;
  readonly alongY: number;
}

/** Straight pieces for each cubic curve. */
const PIECES = 10;

/** Forgotten when this many figures are known, so that a hostile file cannot fill the memory. */
const MOST_KNOWN = 2_000;

const known = new Map<string, readonly LinePoint[]>();

/** Points at most `spacing` (in cell sides) apart along the closed outline of a figure; the same each time. */
export function linePointsOf(figure: Figure, spacing: number): readonly LinePoint[] {
  const { form, turn = 0, mirrored = false, size = 1 } = figure;
  const key = `${form} ${turn} ${mirrored} ${size} ${spacing}`;
  const before = known.get(key);
  if (before) return before;
  const points = polygonsOf(outlineOf(figure).path).flatMap((line) => pointsAlong(line, spacing));
  if (known.size >= MOST_KNOWN) known.clear();
  known.set(key, points);
  return points;
}

/**
 * Whether the line round a form never crosses itself: some letters are made of parts that overlap, whose lines
 * would show inside.
 */
export function isPlainLine(figure: Figure): boolean {
  const pieces = polygonsOf(outlineOf(figure).path).flatMap((polygon) =>
    polygon.map((start, index) => [start, polygon[(index + 1) % polygon.length] ?? start] as const),
  );
  return pieces.every((one, index) => pieces.slice(index + 1).every((other) => !cross(one, other)));
}

function polygonsOf(path: Path): readonly (readonly Point[])[] {
  return flattenPath(path, PIECES).map(withoutRepeats);
}

function withoutRepeats(polygon: readonly Point[]): readonly Point[] {
  return polygon.filter(({ x, y }, index) => {
    const before = polygon[(index || polygon.length) - 1];
    return before === undefined || Math.hypot(before.x - x, before.y - y) > 1e-6;
  });
}

/** Points at equal lengths along the closed line. */
function pointsAlong(polygon: readonly Point[], spacing: number): readonly LinePoint[] {
  const pieces = polygon.map((start, index) => {
    const end = polygon[(index + 1) % polygon.length] ?? start;
    const [dx, dy] = [end.x - start.x, end.y - start.y];
    return { start, dx, dy, length: Math.sqrt(dx * dx + dy * dy) };
  });
  const total = pieces.reduce((sum, { length }) => sum + length, 0);
  const step = total / Math.max(1, Math.ceil(total / spacing));
  const points: LinePoint[] = [];
  let next = step / 2;
  for (const { start, dx, dy, length } of pieces) {
    for (; next < length; next += step) {
      const share = next / length;
      points.push({
        x: start.x + share * dx,
        y: start.y + share * dy,
        alongX: dx / length,
        alongY: dy / length,
      });
    }
    next -= length;
  }
  return points;
}

function cross(one: readonly [Point, Point], other: readonly [Point, Point]): boolean {
  const side = ([a, b]: readonly [Point, Point], p: Point) =>
    Math.sign(Math.round(1e9 * ((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x))));
  return (
    side(one, other[0]) * side(one, other[1]) < 0 && side(other, one[0]) * side(other, one[1]) < 0
  );
}
