// The area that a line covers, as polygons that all turn the same way, for the rule `nonzero`.
import type { Point } from '../base/index.ts';
import type { Stroke } from '../page/index.ts';

export type Polygon = readonly Point[];

/** A polyline as it is drawn; of a closed one the last point is the first. */
export interface Run {
  readonly points: Polygon;
  readonly isClosed: boolean;
}

/** A corner so flat, as the sine of its turn, that cut off straight it is as good as round or sharp. */
const FLAT = 0.3;
/** How often half a line's width a sharp corner may stick out (SVG 1.1, 11.4: the usual miter limit is 4). */
const MITER_LIMIT = 4;
const ROUND_CORNERS = 16;

/** The polygons that the line along the runs covers; lengths of the stroke times `scale` are mm. */
export function strokeOutline(
  runs: readonly Run[],
  { widthMm, dashMm = [], ends = 'round' }: Stroke,
  scale: number,
): readonly Polygon[] {
  const half = (widthMm * scale) / 2;
  const dashes = dashMm.map((mm) => mm * scale);
  const drawn = dashes.some((mm) => mm > 0) ? runs.flatMap((run) => dashed(run, dashes)) : runs;
  return drawn.flatMap((run) => outlineOfRun(run, half, ends === 'round')).map(turnedAlike);
}

function outlineOfRun(run: Run, half: number, isRound: boolean): readonly Polygon[] {
  const points = run.points.filter((point, at, all) => at === 0 || !isSame(point, all[at - 1]));
  const [first] = points;
  if (!first) return [];
  if (points.length === 1) return isRound ? [disc(first, half)] : [];
  const bands = points.slice(1).map((end, at) => band(points[at] ?? end, end, half));
  const corners = points.slice(1, -1).flatMap((corner, at) => {
    return join(points[at] ?? corner, corner, points[at + 2] ?? corner, half, isRound);
  });
  if (run.isClosed) {
    const [second, before] = [points[1] ?? first, points.at(-2) ?? first];
    return [...bands, ...corners, ...join(before, first, second, half, isRound)];
  }
  const caps = isRound ? [disc(first, half), disc(points.at(-1) ?? first, half)] : [];
  return [...bands, ...corners, ...caps];
}

function isSame(one: Point, other: Point | undefined): boolean {
  return one.x === other?.x && one.y === other.y;
}

function band(start: Point, end: Point, half: number): Polygon {
  const { x, y } = direction(start, end);
  const [across, down] = [-y * half, x * half];
  return [
    { x: start.x + across, y: start.y + down },
    { x: end.x + across, y: end.y + down },
    { x: end.x - across, y: end.y - down },
    { x: start.x - across, y: start.y - down },
  ];
}

/** What fills the outer side of a corner. */
function join(
  before: Point,
  corner: Point,
  after: Point,
  half: number,
  isRound: boolean,
): Polygon[] {
  const [into, out] = [direction(before, corner), direction(corner, after)];
  const sine = into.x * out.y - into.y * out.x;
  const cosine = into.x * out.x + into.y * out.y;
  const isFlat = cosine > 0 && Math.abs(sine) < FLAT;
  if (isRound && !isFlat) return [disc(corner, half)];
  const side = sine > 0 ? -half : half;
  const from = { x: corner.x - into.y * side, y: corner.y + into.x * side };
  const to = { x: corner.x - out.y * side, y: corner.y + out.x * side };
  // Half a width over the sine of half the inner angle, which is the cosine of half the turn.
  const reach = 1 / Math.sqrt((1 + cosine) / 2);
  if (isFlat || !(reach <= MITER_LIMIT)) return [[corner, from, to]];
  const middle = { x: (from.x + to.x) / 2 - corner.x, y: (from.y + to.y) / 2 - corner.y };
  const stretch = (reach * half) / Math.hypot(middle.x, middle.y);
  const tip = { x: corner.x + middle.x * stretch, y: corner.y + middle.y * stretch };
  return [[corner, from, tip, to]];
}

/** As wide as needed for the area of a circle of this radius. */
function disc({ x, y }: Point, radius: number): Polygon {
  const turn = (2 * Math.PI) / ROUND_CORNERS;
  const reach = radius * Math.sqrt(turn / Math.sin(turn));
  return Array.from({ length: ROUND_CORNERS }, (_, corner) => ({
    x: x + reach * Math.cos(corner * turn),
    y: y + reach * Math.sin(corner * turn),
  }));
}

function direction(start: Point, end: Point): Point {
  const length = Math.hypot(end.x - start.x, end.y - start.y);
  return { x: (end.x - start.x) / length, y: (end.y - start.y) / length };
}

function turnedAlike(polygon: Polygon): Polygon {
  const twice = polygon.reduce((sum, { x, y }, at) => {
    const next = polygon[(at + 1) % polygon.length] ?? { x, y };
    return sum + x * next.y - y * next.x;
  }, 0);
  return twice < 0 ? [...polygon].reverse() : polygon;
}

/** The pieces of a run that are drawn: lengths drawn and left out in turn, from its beginning. */
function dashed({ points }: Run, dashes: readonly number[]): readonly Run[] {
  const pieces: Point[][] = [];
  let [dash, left] = [0, dashes[0] ?? 0];
  let piece: Point[] = points[0] ? [points[0]] : [];
  const turnOver = (at: Point) => {
    if (dash % 2 === 0) pieces.push([...piece, at]);
    dash++;
    left = dashes[dash % dashes.length] ?? 0;
    piece = [at];
  };
  for (const [place, end] of points.slice(1).entries()) {
    let start = points[place] ?? end;
    let length = Math.hypot(end.x - start.x, end.y - start.y);
    while (length > left) {
      const share = left / length;
      start = { x: start.x + share * (end.x - start.x), y: start.y + share * (end.y - start.y) };
      length -= left;
      turnOver(start);
    }
    left -= length;
    piece.push(end);
  }
  if (dash % 2 === 0) pieces.push(piece);
  return pieces.map((piecePoints) => ({ points: piecePoints, isClosed: false }));
}
