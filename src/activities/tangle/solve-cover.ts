// How much of one outline could be found along the lines of others, wherever it is laid: by counting votes.
import type { LinePoint } from '../../figures/index.ts';

/** Directions are told apart by eighths of a half turn; a line runs alike in its own eighth and the two beside it. */
const DIRECTIONS = 8;
const EIGHTH_DEG = 180 / DIRECTIONS;

/** Lines to find outlines along: for each direction the points of all lines that run alike, x and y in turn. */
export interface Lines {
  readonly alike: readonly Float64Array[];
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

const directions = new WeakMap<LinePoint, number>();

/** A whole number, 0 up to but not including 8; worked out once for each point. */
export function directionOf(point: LinePoint): number {
  const before = directions.get(point);
  if (before !== undefined) return before;
  const turnDeg = (Math.atan2(point.alongY, point.alongX) * 180) / Math.PI;
  // To a hundredth first: the last digits of angles differ between engines.
  const eighths = Math.round(Math.round(100 * (turnDeg + 180)) / 100 / EIGHTH_DEG);
  const direction = eighths % DIRECTIONS;
  directions.set(point, direction);
  return direction;
}

/** The lines of outlines whose middles lie at the given places. */
export function linesAt(
  outlines: readonly {
    readonly points: readonly LinePoint[];
    readonly x: number;
    readonly y: number;
  }[],
): Lines {
  const places: number[][] = Array.from({ length: DIRECTIONS }, () => []);
  for (const { points, x, y } of outlines) {
    for (const point of points) places[directionOf(point)]?.push(point.x + x, point.y + y);
  }
  const xs = places.flatMap((list) => list.filter((_, at) => at % 2 === 0));
  const ys = places.flatMap((list) => list.filter((_, at) => at % 2 === 1));
  return {
    alike: places.map((own, direction) => {
      const beside = [1, DIRECTIONS - 1].map(
        (step) => places[(direction + step) % DIRECTIONS] ?? [],
      );
      return Float64Array.from([...own, ...beside.flat()]);
    }),
    left: Math.min(...xs),
    top: Math.min(...ys),
    right: Math.max(...xs),
    bottom: Math.max(...ys),
  };
}

/**
 * The largest share of the outline's points that fall on some point of the lines at one and the same shift, with
 * lines running alike. Each point of the outline and each point of the lines that run alike vote for the shift
 * between them; a point votes once for a shift, and counts in the two by two bins of side `bin` round it.
 */
export function mostCovered(outline: readonly LinePoint[], lines: Lines, bin: number): number {
  const reach = Math.max(...outline.flatMap(({ x, y }) => [Math.abs(x), Math.abs(y)]));
  const [left, top] = [lines.left - reach - bin, lines.top - reach - bin];
  const columns = Math.ceil((lines.right + reach - left) / bin) + 2;
  const rows = Math.ceil((lines.bottom + reach - top) / bin) + 2;
  const votes = new Uint16Array(columns * rows);
  const lastVoter = new Uint16Array(columns * rows);
  let [most, voter] = [0, 0];
  const vote = (at: number) => {
    if (lastVoter[at] === voter) return;
    lastVoter[at] = voter;
    const count = (votes[at] ?? 0) + 1;
    votes[at] = count;
    if (count > most) most = count;
  };
  for (const point of outline) {
    voter += 1;
    const alike = lines.alike[directionOf(point)] ?? new Float64Array();
    for (let index = 0; index < alike.length; index += 2) {
      const column = Math.floor(((alike[index] ?? 0) - point.x - left) / bin);
      const row = Math.floor(((alike[index + 1] ?? 0) - point.y - top) / bin);
      const at = row * columns + column;
      vote(at);
      vote(at + 1);
      vote(at + columns);
      vote(at + columns + 1);
    }
  }
  return outline.length === 0 ? 0 : most / outline.length;
}
