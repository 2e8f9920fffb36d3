// Outlines as black cells on a small fixed grid, so that how much of two outlines overlaps can be counted.
import { flattenPath, type Path, type Point } from '../base/index.ts';
import type { Outline } from './outline-data.ts';

/** Cells along each side of the grid. */
export const GRID = 64;

/** Two 32-bit words a row, left half first; a set bit is an inked cell, the leftmost the highest. */
export type Raster = Uint32Array;

/** Where the grid lies on an outline: its middle and its side, in cell sides of the figure. */
export interface Window {
  readonly x: number;
  readonly y: number;
  readonly side: number;
}

/** The whole cell of a figure. */
export const WHOLE_CELL: Window = { x: 0, y: 0, side: 1 };

/** The cells of the window whose middles are inked. */
export function rasterOf(outline: Outline, window: Window): Raster {
  const polygons = closedPolygons(outline.path);
  const raster = new Uint32Array(2 * GRID);
  const middleOf = (cell: number) => ((cell + 0.5) / GRID - 0.5) * window.side;
  const columns = Array.from({ length: GRID }, (_, column) => window.x + middleOf(column));
  for (let row = 0; row < GRID; row++) {
    const y = window.y + middleOf(row);
    const isInked = outline.drawn
      ? penAt(polygons, y, outline.drawn.widthShare / 2)
      : areaAt(polygons, y, outline.rule);
    columns.forEach((x, column) => {
      if (isInked(x)) setCell(raster, row, column);
    });
  }
  return raster;
}

/** The polygons of a path, each closed one ending where it starts. */
function closedPolygons(path: Path): Polygons {
  const starts = path.flatMap((step, index) => (step[0] === 'M' ? [index] : []));
  return flattenPath(path, 8).map((polygon, index) => {
    const steps = path.slice(starts[index], starts[index + 1]);
    const isClosed = steps.some((step) => step[0] === 'Z');
    return isClosed ? [...polygon, ...polygon.slice(0, 1)] : polygon;
  });
}

function setCell(raster: Raster, row: number, column: number): void {
  const word = 2 * row + (column >> 5);
  raster[word] = (raster[word] ?? 0) | (1 << (31 - (column & 31)));
}

type Polygons = readonly (readonly Point[])[];
type Crossing = { readonly x: number; readonly winds: number };

/** Whether points of a level line, asked from left to right, lie inside the closed polygons. */
function areaAt(polygons: Polygons, y: number, rule: Outline['rule']): (x: number) => boolean {
  const crossings: Crossing[] = [];
  for (const polygon of polygons) addCrossings(crossings, polygon, y);
  crossings.sort((one, other) => one.x - other.x);
  let [next, winding] = [0, 0];
  return (x) => {
    for (let crossing = crossings[next]; crossing && crossing.x <= x; crossing = crossings[next]) {
      winding += rule === 'nonzero' ? crossing.winds : 1;
      next += 1;
    }
    return rule === 'nonzero' ? winding !== 0 : winding % 2 === 1;
  };
}

function addCrossings(crossings: Crossing[], polygon: readonly Point[], y: number): void {
  let start = polygon[polygon.length - 1];
  for (const end of polygon) {
    if (start && start.y <= y !== end.y <= y) {
      const x = start.x + ((y - start.y) / (end.y - start.y)) * (end.x - start.x);
      crossings.push({ x, winds: start.y <= y ? 1 : -1 });
    }
    start = end;
  }
}

/** Whether the points of a level line lie within `reach` of the polygons' lines; only near ones are asked. */
function penAt(polygons: Polygons, y: number, reach: number): (x: number) => boolean {
  const pieces = polygons
    .flatMap((polygon) =>
      polygon.slice(1).map((end, index) => [polygon[index] ?? end, end] as const),
    )
    .filter(
      ([start, end]) =>
        Math.min(start.y, end.y) <= y + reach && Math.max(start.y, end.y) >= y - reach,
    );
  return (x) => pieces.some(([start, end]) => squareDistance(x, y, start, end) <= reach * reach);
}

function squareDistance(x: number, y: number, start: Point, end: Point): number {
  const [dx, dy] = [end.x - start.x, end.y - start.y];
  const square = dx * dx + dy * dy;
  const along = square === 0 ? 0 : ((x - start.x) * dx + (y - start.y) * dy) / square;
  const share = Math.min(1, Math.max(0, along));
  const [awayX, awayY] = [x - start.x - share * dx, y - start.y - share * dy];
  return awayX * awayX + awayY * awayY;
}

/** Middle of all inked cells and their root-mean-square distance from it, in units of the window. */
export function spreadOf(raster: Raster): { x: number; y: number; spread: number; count: number } {
  let [count, sumX, sumY, sumSquares] = [0, 0, 0, 0];
  for (let row = 0; row < GRID; row++) {
    for (let column = 0; column < GRID; column++) {
      if (!isSet(raster, row, column)) continue;
      const [x, y] = [(column + 0.5) / GRID - 0.5, (row + 0.5) / GRID - 0.5];
      count += 1;
      sumX += x;
      sumY += y;
      sumSquares += x * x + y * y;
    }
  }
  if (count === 0) throw new Error('figures › raster: expected an inked cell, got none');
  const [x, y] = [sumX / count, sumY / count];
  return { x, y, spread: Math.sqrt(sumSquares / count - x * x - y * y), count };
}

/** Whether a cell is inked; those beyond the grid are not. */
export function isSet(raster: Raster, row: number, column: number): boolean {
  if (row < 0 || row >= GRID || column < 0 || column >= GRID) return false;
  return (((raster[2 * row + (column >> 5)] ?? 0) >>> (31 - (column & 31))) & 1) === 1;
}

/** Cells inked in both over cells inked in either, `other` moved by whole cells first. */
export function overlapShare(one: Raster, other: Raster, dx: number, dy: number): number {
  let [both, either] = [0, 0];
  for (let row = 0; row < GRID; row++) {
    const from = row - dy;
    const inside = from >= 0 && from < GRID;
    const left = inside ? (other[2 * from] ?? 0) : 0;
    const right = inside ? (other[2 * from + 1] ?? 0) : 0;
    const movedLeft = movedWord(left, 0, right, dx);
    const movedRight = movedWord(right, left, 0, dx);
    const [oneLeft, oneRight] = [one[2 * row] ?? 0, one[2 * row + 1] ?? 0];
    both += bitCount(oneLeft & movedLeft) + bitCount(oneRight & movedRight);
    either += bitCount(oneLeft | movedLeft) + bitCount(oneRight | movedRight);
  }
  return both / either;
}

/** A word moved right by `dx` cells (left if negative), filled from the words before and after it. */
function movedWord(word: number, before: number, after: number, dx: number): number {
  if (dx === 0) return word;
  return dx > 0 ? (word >>> dx) | (before << (32 - dx)) : (word << -dx) | (after >>> (32 + dx));
}

/** Set bits of a 32-bit word, counted in pairs, fours and eights side by side. */
function bitCount(word: number): number {
  const pairs = word - ((word >>> 1) & 0x55555555);
  const fours = (pairs & 0x33333333) + ((pairs >>> 2) & 0x33333333);
  return (((fours + (fours >>> 4)) & 0x0f0f0f0f) * 0x01010101) >>> 24;
}
