// Where two printed lines cross, at which angle, and where they only come near each other.
import { flattenPath, type Point } from '../../base/index.ts';
import { type Curve, pathOf } from './task.ts';

/** A place on a line: the straight piece of it, and the point in mm along and across. */
export interface Spot extends Point {
  readonly piece: number;
}

/** Two lines where they meet. */
export interface Meeting {
  readonly lines: readonly [number, number];
  readonly spots: readonly [Spot, Spot];
  /** 0 to 90 between two lines that cross; absent: they only come near. */
  readonly angleDeg?: number;
}

/** Straight pieces for each cubic curve: at most 0.1 mm from a curve as long and bent as on any sheet. */
const PIECES = 12;

/** Two lines nearer than this are near, in mm: five times the width of a printed line. */
export const NEAR_MM = 6;
/** So far from a crossing of their own, lines may be near without any doubt; in mm. */
const ROUND_CROSSING_MM = 10;

/** What rounding may be off, in shares of a piece; crossings this near in mm, at a point of a line, are one. */
const ROUNDING = 1e-9;
const SAME_MM = 1e-6;

/** Points of a line, each `PIECES` apart a point of the printed chain. */
export function pointsOf(curve: Curve): readonly Point[] {
  return flattenPath(pathOf(curve), PIECES)[0] ?? [];
}

/** All meetings of all lines, those of the first line first. */
export function meetingsOf(lines: readonly (readonly Point[])[]): readonly Meeting[] {
  const boxed = lines.map(boxesOf);
  return lines.flatMap((line, index) =>
    lines.slice(index + 1).flatMap((other, more) => {
      const spans = nearSpans(boxed[index] ?? [], boxed[index + 1 + more] ?? []);
      return meetingsOfPair(line, other, spans, [index, index + 1 + more]);
    }),
  );
}

interface Box {
  readonly from: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** The upright rectangle round each curve of a line. */
function boxesOf(line: readonly Point[]): readonly Box[] {
  const count = Math.max(1, Math.ceil((line.length - 1) / PIECES));
  return Array.from({ length: count }, (_, index) => {
    const points = line.slice(index * PIECES, (index + 1) * PIECES + 1);
    const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
    return {
      from: index * PIECES,
      left: Math.min(...xs),
      right: Math.max(...xs),
      top: Math.min(...ys),
      bottom: Math.max(...ys),
    };
  });
}

/** First pieces of every two curves whose rectangles are near each other. */
function nearSpans(
  ones: readonly Box[],
  others: readonly Box[],
): readonly (readonly [number, number])[] {
  return ones.flatMap((one) =>
    others
      .filter(
        (other) =>
          one.left - other.right < NEAR_MM &&
          other.left - one.right < NEAR_MM &&
          one.top - other.bottom < NEAR_MM &&
          other.top - one.bottom < NEAR_MM,
      )
      .map((other) => [one.from, other.from] as const),
  );
}

function meetingsOfPair(
  line: readonly Point[],
  other: readonly Point[],
  spans: readonly (readonly [number, number])[],
  lines: readonly [number, number],
): readonly Meeting[] {
  const all = spans.flatMap(([from, start]) => crossingsIn(line, other, from, start, lines));
  const crossings = all.filter(
    ({ spots: [spot] }, index) =>
      !all.slice(0, index).some(({ spots: [before] }) => distance(spot, before) < SAME_MM),
  );
  const isApart = (point: Point) =>
    crossings.every(({ spots: [spot] }) => distance(point, spot) > ROUND_CROSSING_MM);
  const near = spans.flatMap(([from, start]) => nearIn(line, other, from, start, lines, isApart));
  return [...crossings, ...near];
}

function crossingsIn(
  line: readonly Point[],
  other: readonly Point[],
  from: number,
  start: number,
  lines: readonly [number, number],
): readonly Meeting[] {
  const found: Meeting[] = [];
  for (let piece = from; piece < from + PIECES; piece++) {
    for (let more = start; more < start + PIECES; more++) {
      const [a, b, c, d] = [line[piece], line[piece + 1], other[more], other[more + 1]];
      if (!a || !b || !c || !d || !overlap(a.x, b.x, c.x, d.x) || !overlap(a.y, b.y, c.y, d.y)) {
        continue;
      }
      const point = crossingOf(a, b, c, d);
      if (!point) continue;
      const spots = [
        { ...point, piece },
        { ...point, piece: more },
      ] as const;
      found.push({ lines, spots, angleDeg: angleBetween(a, b, c, d) });
    }
  }
  return found;
}

function overlap(one: number, other: number, third: number, fourth: number): boolean {
  return (
    Math.min(one, other) <= Math.max(third, fourth) &&
    Math.min(third, fourth) <= Math.max(one, other)
  );
}

/** Of two straight pieces, their ends included. */
function crossingOf(a: Point, b: Point, c: Point, d: Point): Point | undefined {
  const [ux, uy, vx, vy] = [b.x - a.x, b.y - a.y, d.x - c.x, d.y - c.y];
  const turn = ux * vy - uy * vx;
  if (turn === 0) return undefined;
  const along = ((c.x - a.x) * vy - (c.y - a.y) * vx) / turn;
  const alongOther = ((c.x - a.x) * uy - (c.y - a.y) * ux) / turn;
  const isInside = isWithin(along) && isWithin(alongOther);
  return isInside ? { x: a.x + along * ux, y: a.y + along * uy } : undefined;
}

/** On the piece, by its shares from its beginning to its end. */
function isWithin(share: number): boolean {
  return share >= -ROUNDING && share <= 1 + ROUNDING;
}

/** 0 to 90, of the two pieces' directions. */
function angleBetween(a: Point, b: Point, c: Point, d: Point): number {
  const [ux, uy, vx, vy] = [b.x - a.x, b.y - a.y, d.x - c.x, d.y - c.y];
  const [across, along] = [Math.abs(ux * vy - uy * vx), Math.abs(ux * vx + uy * vy)];
  return (Math.atan2(across, along) * 180) / Math.PI;
}

/** Points of one line that are near the other and not at a crossing of theirs. */
function nearIn(
  line: readonly Point[],
  other: readonly Point[],
  from: number,
  start: number,
  lines: readonly [number, number],
  isApart: (point: Point) => boolean,
): readonly Meeting[] {
  const found: Meeting[] = [];
  for (let piece = from; piece <= from + PIECES; piece++) {
    const point = line[piece];
    if (!point) continue;
    for (let more = start; more < start + PIECES; more++) {
      const [c, d] = [other[more], other[more + 1]];
      if (!c || !d || isFar(point, c, d)) continue;
      const near = nearestOn(point, c, d);
      if (distance(point, near) >= NEAR_MM || !isApart(point)) continue;
      found.push({
        lines,
        spots: [
          { ...point, piece },
          { ...near, piece: more },
        ],
      });
    }
  }
  return found;
}

function isFar({ x, y }: Point, c: Point, d: Point): boolean {
  return (
    Math.min(c.x, d.x) - x >= NEAR_MM ||
    x - Math.max(c.x, d.x) >= NEAR_MM ||
    Math.min(c.y, d.y) - y >= NEAR_MM ||
    y - Math.max(c.y, d.y) >= NEAR_MM
  );
}

function nearestOn({ x, y }: Point, c: Point, d: Point): Point {
  const [ux, uy] = [d.x - c.x, d.y - c.y];
  const square = ux * ux + uy * uy;
  const along = square === 0 ? 0 : ((x - c.x) * ux + (y - c.y) * uy) / square;
  const share = Math.min(1, Math.max(0, along));
  return { x: c.x + share * ux, y: c.y + share * uy };
}

export function distance(one: Point, other: Point): number {
  return Math.hypot(one.x - other.x, one.y - other.y);
}
