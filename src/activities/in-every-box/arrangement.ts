// Which figures stand in which box, as numbers: the shared ones in all, near misses in all but one.
import type { Random } from '../../base/index.ts';

export interface Numbers {
  readonly boxes: number;
  readonly figures: number;
  readonly shared: number;
  readonly nearMisses: number;
}

/** What is left for the figures that are neither shared nor near misses. */
export interface Rest {
  /** Places in all boxes together. */
  readonly places: number;
  /** The fewest and the most different figures that can take these places. */
  readonly fewest: number;
  readonly most: number;
}

/**
 * The rest, each figure of which stands in 1 to `boxes` − 2 boxes, when there are `pool` figures to draw
 * from. No arrangement exists where `fewest` exceeds `most`.
 */
export function restOf({ boxes, figures, shared, nearMisses }: Numbers, pool: number): Rest {
  const places = boxes * (figures - shared) - nearMisses * (boxes - 1);
  const fewest = places === 0 ? 0 : Math.ceil(places / (boxes - 2));
  return { places, fewest, most: Math.min(places, pool - shared - nearMisses) };
}

/** The figures of the boxes that are not shared, while they are being arranged. */
interface Others {
  readonly boxes: readonly Set<number>[];
  /** In how many boxes each figure stands; near misses come first. */
  readonly counts: number[];
  readonly nearMisses: number;
  /** The most figures there may be. */
  readonly most: number;
}

/**
 * The boxes as lists of figure numbers, those below `shared` in every box. Every arrangement that the
 * numbers allow can come out, but two boxes hold the same figures only where the numbers force it.
 */
export function arrangeBoxes(numbers: Numbers, pool: number, random: Random): readonly number[][] {
  const counts = drawCounts(numbers, pool, random);
  const boxes = fillBoxes(counts, numbers, random);
  mixBoxes(boxes, random);
  const others = { boxes, counts, nearMisses: numbers.nearMisses, most: pool - numbers.shared };
  if (canAllDiffer(numbers, pool)) tellApart(others, random);
  return numbered(random.shuffle(boxes), numbers.shared);
}

/** In how many boxes each figure that is not shared stands: near misses in all but one, then the rest. */
function drawCounts(numbers: Numbers, pool: number, random: Random): number[] {
  const { places, fewest, most } = restOf(numbers, pool);
  const rest = Array.from({ length: random.int(fewest, most) }, () => 1);
  for (let left = places - rest.length; left > 0; left--) {
    const open = [...rest.keys()].filter((index) => (rest[index] ?? 0) < numbers.boxes - 2);
    const index = random.pick(open);
    rest[index] = (rest[index] ?? 0) + 1;
  }
  const near = Array.from({ length: numbers.nearMisses }, () => numbers.boxes - 1);
  return [...near, ...rest];
}

/**
 * Puts each figure into the boxes that have most room left, which succeeds whenever any way does (Gale
 * 1957, Pacific J. Math. 7, 1073–1082; Ryser 1957, Canad. J. Math. 9, 371–377). A way exists: the boxes
 * are equally large and no figure stands in more boxes than there are.
 */
function fillBoxes(
  counts: readonly number[],
  { boxes, figures, shared }: Numbers,
  random: Random,
): readonly Set<number>[] {
  const filled = Array.from({ length: boxes }, () => new Set<number>());
  const byCount = random.shuffle([...counts.entries()]).sort(([, one], [, other]) => other - one);
  for (const [figure, count] of byCount) {
    const roomiest = random.shuffle(filled).sort((one, other) => one.size - other.size);
    for (const box of roomiest.slice(0, count)) box.add(figure);
  }
  if (filled.some((box) => box.size !== figures - shared)) {
    throw new Error(`in-every-box › arrangement: no way to fill ${boxes} boxes with ${counts}`);
  }
  return filled;
}

/** Exchanges for each place of all boxes; beyond this the arrangement keeps no trace of how it was filled. */
const EXCHANGES_PER_PLACE = 4;

/**
 * Exchanges figures between boxes, each staying in as many boxes as before. Such exchanges lead from any
 * arrangement to any other (Ryser 1957, as above).
 */
function mixBoxes(boxes: readonly Set<number>[], random: Random): void {
  const places = boxes.reduce((sum, box) => sum + box.size, 0);
  for (let left = places * EXCHANGES_PER_PLACE; left > 0; left--) {
    const [one, other] = random.sample(boxes, 2);
    if (one && other) exchange(one, other, random);
  }
}

/** Exchanges a figure of each box that the other box lacks, if both have one; gives the way back. */
function exchange(one: Set<number>, other: Set<number>, random: Random): (() => void) | undefined {
  const given = [...one].filter((figure) => !other.has(figure));
  const taken = [...other].filter((figure) => !one.has(figure));
  if (given.length === 0 || taken.length === 0) return undefined;
  const [x, y] = [random.pick(given), random.pick(taken)];
  replace(one, x, y);
  replace(other, y, x);
  return () => {
    replace(one, y, x);
    replace(other, x, y);
  };
}

function replace(box: Set<number>, out: number, into: number): void {
  box.delete(out);
  box.add(into);
}

/**
 * Whether there are enough different contents for the boxes. Boxes that lack a near miss differ, for each
 * near miss is missing from one box only. The others, at least as many as `boxes` exceeds `nearMisses`,
 * hold all near misses and differ only in the figures of the rest that fill them up.
 */
function canAllDiffer(numbers: Numbers, pool: number): boolean {
  const { boxes, figures, shared, nearMisses } = numbers;
  const free = figures - shared - nearMisses;
  return free < 0 || ways(restOf(numbers, pool).most, free) >= boxes - nearMisses;
}

/** In how many ways `taken` of `count` things can be chosen. */
function ways(count: number, taken: number): number {
  if (taken > count) return 0;
  return taken === 0 ? 1 : (ways(count - 1, taken - 1) * count) / taken;
}

/** Far more than were ever needed where all boxes can differ; a limit so that no seed can hang. */
const MOST_CHANGES = 2000;

/** Changes boxes that hold the same figures until none do. */
function tellApart(others: Others, random: Random): void {
  let alike = alikeBoxes(others.boxes);
  for (let left = MOST_CHANGES; left > 0 && alike.length > 0; left--) {
    const undo = change(others, random.pick(alike), random);
    const after = alikeBoxes(others.boxes);
    if (after.length > alike.length) undo?.();
    else alike = after;
  }
}

/** The boxes that hold the same figures as some other box. */
function alikeBoxes(boxes: readonly Set<number>[]): readonly Set<number>[] {
  const contents = boxes.map((box) => [...box].sort((a, b) => a - b).join(' '));
  return boxes.filter((_, index) =>
    contents.some((content, at) => at !== index && content === contents[index]),
  );
}

/** Exchanges a figure of `box` with another box, or gives it another of the rest. */
function change(others: Others, box: Set<number>, random: Random): (() => void) | undefined {
  const { boxes, counts } = others;
  const leaving = [...box].filter(
    (figure) => figure >= others.nearMisses && countOf(counts, figure) > 1,
  );
  const coming = newcomers(others, box);
  if (leaving.length === 0 || coming.length === 0 || random.int(0, 1) === 0) {
    return exchange(box, random.pick(boxes.filter((other) => other !== box)), random);
  }
  const [x, y] = [random.pick(leaving), random.pick(coming)];
  substitute(counts, box, x, y);
  return () => substitute(counts, box, y, x);
}

/** Figures of the rest that may still come into `box`, a new one among them while there are any. */
function newcomers({ boxes, counts, nearMisses, most }: Others, box: Set<number>): number[] {
  const numbers = Array.from({ length: Math.min(counts.length + 1, most) }, (_, index) => index);
  return numbers.filter(
    (figure) =>
      figure >= nearMisses && !box.has(figure) && countOf(counts, figure) < boxes.length - 2,
  );
}

function countOf(counts: readonly number[], figure: number): number {
  return counts[figure] ?? 0;
}

function substitute(counts: number[], box: Set<number>, out: number, into: number): void {
  replace(box, out, into);
  counts[out] = countOf(counts, out) - 1;
  counts[into] = countOf(counts, into) + 1;
}

/** The boxes as lists: the shared figures, then the others numbered on from them as they come. */
function numbered(boxes: readonly Set<number>[], shared: number): readonly number[][] {
  const numbers = new Map<number, number>();
  for (const figure of boxes.flatMap((box) => [...box])) {
    if (!numbers.has(figure)) numbers.set(figure, shared + numbers.size);
  }
  const inAll = Array.from({ length: shared }, (_, index) => index);
  return boxes.map((box) => [...inAll, ...[...box].map((figure) => numbers.get(figure) ?? 0)]);
}
