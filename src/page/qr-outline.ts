// The outline of the dark modules of a QR code: closed lines along every edge between dark and light.
import type { Path, PathStep } from '../base/index.ts';

/** Steps along the grid, in the order of a clockwise turn: right, down, left, up. */
const STEPS = [
  [1, 0],
  [0, 1],
  [-1, 0],
  [0, -1],
] as const;

/**
 * The dark modules as one path in modules from the top left corner, for the even-odd rule.
 * Edges are walked with the dark module on the right hand; where two dark modules meet at a corner
 * only, the walk keeps to its own module.
 */
export function modulesPath(dark: readonly (readonly boolean[])[]): Path {
  const isDark = (x: number, y: number): boolean => dark[y]?.[x] ?? false;
  const walked = new Set<string>();
  const path: PathStep[] = [];
  dark.forEach((row, y) => {
    row.forEach((_, x) => {
      const startsHere = isDark(x, y) && !isDark(x, y - 1) && !walked.has(`${x} ${y}`);
      if (startsHere) path.push(...walk(x, y, isDark, walked));
    });
  });
  return path;
}

/** Walks one closed line from the top edge of module (x, y), noting every top edge on the way. */
function walk(
  startX: number,
  startY: number,
  isDark: (x: number, y: number) => boolean,
  walked: Set<string>,
): PathStep[] {
  const corners: PathStep[] = [['M', startX, startY]];
  let [x, y, heading] = [startX, startY, 0];
  do {
    if (heading === 0) walked.add(`${x} ${y}`);
    const [dx, dy] = stepOf(heading);
    x += dx;
    y += dy;
    const next = turnAt(x, y, heading, isDark);
    if (next !== heading && !(x === startX && y === startY)) corners.push(['L', x, y]);
    heading = next;
  } while (x !== startX || y !== startY || heading !== 0);
  return [...corners, ['Z']];
}

/** The next heading at a corner: right turn where the module ahead on the right is light. */
function turnAt(
  x: number,
  y: number,
  heading: number,
  isDark: (x: number, y: number) => boolean,
): number {
  const [dx, dy] = stepOf(heading);
  // The two modules ahead of the corner (x, y): on the right hand and on the left hand.
  const right = isDark(x + (dx - dy - 1) / 2, y + (dy + dx - 1) / 2);
  const left = isDark(x + (dx + dy - 1) / 2, y + (dy - dx - 1) / 2);
  if (!right) return (heading + 1) % 4;
  return left ? (heading + 3) % 4 : heading;
}

function stepOf(heading: number): readonly [number, number] {
  const step = STEPS[heading];
  if (!step) throw new Error(`qr › heading: expected 0 to 3, got ${heading}`);
  return step;
}
