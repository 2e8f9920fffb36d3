// Lays outlines over one another, so that each can be seen and none is there that is not shown.
import type { Random } from '../../base/index.ts';
import { type Figure, linePointsOf } from '../../figures/index.ts';
import { shareBeside } from './generate-beside.ts';
import { emptyGrid, isFound, onGrid, stamp } from './generate-raster.ts';
import { closeness, type Placed, type TangleValues } from './task.ts';

/** Where the middles lie, in steps from each other, by how many there are. */
const PATTERNS: readonly (readonly (readonly [x: number, y: number])[])[] = [
  [],
  [[0, 0]],
  [
    [-0.5, 0.1],
    [0.5, -0.1],
  ],
  [
    [-0.5, 0.4],
    [0.5, 0.4],
    [0, -0.45],
  ],
  [
    [-0.5, -0.45],
    [0.5, -0.5],
    [-0.5, 0.5],
    [0.5, 0.45],
  ],
  [
    [-1, -0.45],
    [0, -0.5],
    [1, -0.45],
    [-0.5, 0.45],
    [0.5, 0.5],
  ],
  [
    [-1, -0.5],
    [0, -0.45],
    [1, -0.5],
    [-1, 0.45],
    [0, 0.5],
    [1, 0.45],
  ],
];

/** A step in cell sides by how much outlines overlap; letters, which fill less of their cells, have shorter ones. */
const STEPS: Readonly<Record<TangleValues['overlap'], number>> = {
  little: 0.62,
  half: 0.5,
  much: 0.4,
};
const LETTER_SHARE = 0.8;
/** Each middle is shifted by so much at most each way, in cell sides. */
const SHIFT = 0.06;
/** So many shifts are tried for each outline, and the first taken that hides little, else the one that hides least. */
const SHIFTS = 4;
/** With each outline more than two, steps grow by this share, since more lines leave more to be found. */
const CROWD = 0.13;
/** At most so much of an outline may run along others, and of an absent one be found along those shown. */
const MOST_HIDDEN = 0.18;
const MOST_FOUND = 0.83;
/** After so many draws outlines are drawn apart by a little with each further one. */
const DRAWS = 2;
const MOST_DRAWS = 30;
const APART = 0.05;

/** The outlines of a tangle in their places, and those that are not in it. */
export interface Tangled {
  readonly tangle: readonly Placed[];
  readonly absent: readonly Figure[];
}

/** Lays `shown` of the figures over one another, and takes others of which none is found among them. */
export function layOver(
  figures: readonly Figure[],
  { shown, absent, overlap }: Pick<TangleValues, 'shown' | 'absent' | 'overlap'>,
  random: Random,
): Tangled {
  const near = Math.min(...figures.map(closeness));
  const crowd = 1 + CROWD * (shown - 2);
  const step = crowd * STEPS[overlap] * (near < closeness({}) ? LETTER_SHARE : 1);
  for (let draw = 0; ; draw++) {
    const order = random.shuffle(figures);
    const apart = APART * Math.max(0, draw - DRAWS);
    const { tangle, hidden } = drawPlaces(order.slice(0, shown), step + apart, near, random);
    const isLast = draw >= MOST_DRAWS;
    if (hidden > MOST_HIDDEN && !isLast) continue;
    const others = order.slice(shown);
    const clear = isLast ? others : notFound(others, absent, tangle, near);
    if (clear.length >= absent) {
      return { tangle: fromCorner(tangle), absent: clear.slice(0, absent) };
    }
  }
}

interface Drawn {
  readonly tangle: readonly Placed[];
  /** The most that is hidden of any outline, about. */
  readonly hidden: number;
}

/** One outline after the other, each shifted so that it hides, and is hidden by, little of those before it. */
function drawPlaces(shown: readonly Figure[], step: number, near: number, random: Random): Drawn {
  const most = Math.round(100 * SHIFT);
  const shifted = (length: number) => (Math.round(100 * length) + random.int(-most, most)) / 100;
  const pattern = PATTERNS[shown.length] ?? [];
  const [mirror, flip] = [random.pick([-step, step]), random.pick([-step, step])];
  let drawn: readonly Laid[] = [];
  for (const [index, figure] of shown.entries()) {
    const [x, y] = pattern[index] ?? [0, 0];
    let best: readonly Laid[] = [];
    for (let shift = 0; shift < SHIFTS; shift++) {
      const laid = layOn(drawn, { figure, x: shifted(mirror * x), y: shifted(flip * y) }, near);
      if (best.length === 0 || mostHidden(laid) < mostHidden(best)) best = laid;
      if (mostHidden(best) <= MOST_HIDDEN) break;
    }
    drawn = best;
  }
  return { tangle: drawn.map(({ placed }) => placed), hidden: mostHidden(drawn) };
}

interface Laid {
  readonly placed: Placed;
  /** The share that runs along others, where two hide the same counted twice. */
  readonly hidden: number;
}

function mostHidden(laid: readonly Laid[]): number {
  return Math.max(...laid.map(({ hidden }) => hidden));
}

function layOn(before: readonly Laid[], placed: Placed, near: number): readonly Laid[] {
  const others = before.map(({ placed: other }) => other);
  const own = others.reduce((sum, other) => sum + shareBeside(placed, other, near), 0);
  return [
    ...before.map((laid) => ({
      placed: laid.placed,
      hidden: laid.hidden + shareBeside(laid.placed, placed, near),
    })),
    { placed, hidden: own },
  ];
}

/** The same, its first cell in the first corner. */
function fromCorner(tangle: readonly Placed[]): readonly Placed[] {
  const cents = (length: number) => Math.round(100 * length);
  const left = Math.min(...tangle.map(({ x }) => cents(x)));
  const top = Math.min(...tangle.map(({ y }) => cents(y)));
  return tangle.map(({ figure, x, y }) => ({
    figure,
    x: (cents(x) - left + 50) / 100,
    y: (cents(y) - top + 50) / 100,
  }));
}

/** Cells of blank round the grid, for lines of an absent outline that is laid over the rim. */
const RIM = 4;

/** The first `count` of the figures that are not found among those laid; fewer where there are not so many. */
function notFound(
  figures: readonly Figure[],
  count: number,
  placed: readonly Placed[],
  near: number,
): readonly Figure[] {
  const side = 2 * near;
  const tangle = fromCorner(placed);
  const halvesOf = (length: number) => Math.round((2 * length) / side) + 2 * RIM;
  const wide = (halvesOf(Math.max(...tangle.map(({ x }) => x)) + 0.5) >> 1) + RIM;
  const high = (halvesOf(Math.max(...tangle.map(({ y }) => y)) + 0.5) >> 1) + RIM;
  const lineOf = (figure: Figure) => onGrid(linePointsOf(figure, side), side);
  const grid = emptyGrid(wide, high);
  for (const { figure, x, y } of tangle) stamp(grid, lineOf(figure), halvesOf(x), halvesOf(y));
  const clear: Figure[] = [];
  for (const figure of figures) {
    if (clear.length === count) break;
    if (!isFound(grid, lineOf(figure), MOST_FOUND)) clear.push(figure);
  }
  return clear;
}
