// How much the lines of outlines run along each other, read from a grid of what runs where in which direction.
import type { LinePoint } from '../../figures/index.ts';

/** Eight directions of lines, in eighths of a half turn, as vectors of about a thousand. */
const SECTORS: readonly (readonly [x: number, y: number])[] = [
  [1000, 0],
  [924, 383],
  [707, 707],
  [383, 924],
  [0, 1000],
  [-383, 924],
  [-707, 707],
  [-924, 383],
];

/** A line about its middle, its points laid on a grid. */
export interface GridLine {
  /** For each point x and y in half cells, the bit of its direction, and the bits of that and of those near it. */
  readonly points: Int16Array;
  readonly count: number;
  /** How far any point is from the middle, in cells. */
  readonly reach: number;
}

const FIELDS = 4;

export interface Grid {
  readonly columns: number;
  readonly rows: number;
  /** For each cell, the directions of the lines in it or nearer to it than half a cell. */
  readonly bits: Uint8Array;
}

const gridded = new WeakMap<readonly LinePoint[], GridLine>();

/** Points about the middle of their outline on a grid of cells of `side`, their spacing; made once for the same points. */
export function onGrid(points: readonly LinePoint[], side: number): GridLine {
  const before = gridded.get(points);
  if (before) return before;
  const fields = points.flatMap(({ x, y, alongX, alongY }) => {
    const near = SECTORS.map(([sx, sy]) => Math.round(Math.abs(sx * alongX + sy * alongY)));
    const sector = near.indexOf(Math.max(...near));
    const bits = bitOf(sector - 1) | bitOf(sector) | bitOf(sector + 1);
    return [Math.round((2 * x) / side), Math.round((2 * y) / side), bitOf(sector), bits];
  });
  const reach = Math.max(...points.flatMap(({ x, y }) => [Math.abs(x), Math.abs(y)]));
  const made = {
    points: Int16Array.from(fields),
    count: points.length,
    reach: Math.ceil(reach / side) + 1,
  };
  gridded.set(points, made);
  return made;
}

function bitOf(sector: number): number {
  return 1 << ((sector + 8) % 8);
}

export function emptyGrid(columns: number, rows: number): Grid {
  return { columns, rows, bits: new Uint8Array(columns * rows) };
}

/** Marks a line whose middle lies at a place in half cells, in the cells nearer to it than half a cell. */
export function stamp({ columns, bits }: Grid, line: GridLine, halfX: number, halfY: number): void {
  const { points } = line;
  for (let at = 0; at < points.length; at += FIELDS) {
    const x = halfX + (points[at] ?? 0);
    const y = halfY + (points[at + 1] ?? 0);
    const near = points[at + 3] ?? 0;
    for (let row = (y - 1) >> 1; row <= (y + 1) >> 1; row++) {
      for (let column = (x - 1) >> 1; column <= (x + 1) >> 1; column++) {
        const cell = row * columns + column;
        bits[cell] = (bits[cell] ?? 0) | near;
      }
    }
  }
}

/**
 * The share of a line, its middle at a place in half cells, that runs along the lines of the grid; 0 as soon as it
 * must stay below `least`.
 */
function shareAlong(
  { bits, columns }: Grid,
  { points, count }: GridLine,
  halfX: number,
  halfY: number,
  least: number,
): number {
  const mostMisses = (1 - least) * count;
  let misses = 0;
  for (let at = 0; at < points.length; at += FIELDS) {
    const column = (halfX + (points[at] ?? 0)) >> 1;
    const row = (halfY + (points[at + 1] ?? 0)) >> 1;
    if (((bits[row * columns + column] ?? 0) & (points[at + 2] ?? 0)) !== 0) continue;
    misses += 1;
    if (misses > mostMisses) return 0;
  }
  return 1 - misses / count;
}

/** Whether some place on the grid has at least this share of the line along its lines. */
export function isFound(grid: Grid, line: GridLine, least: number): boolean {
  const { reach } = line;
  for (let row = reach; row < grid.rows - reach; row++) {
    for (let column = reach; column < grid.columns - reach; column++) {
      if (shareAlong(grid, line, 2 * column, 2 * row, least) > 0) return true;
    }
  }
  return false;
}
