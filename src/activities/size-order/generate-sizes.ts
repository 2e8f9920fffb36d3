// How big the figures of a task are: their ratios, and for different forms sizes that agree in every measure.
import { flattenPath, type Point, pathBounds, type Random } from '../../base/index.ts';
import { outlineOf, type Shape } from '../../figures/index.ts';
import type { Difference } from './task.ts';

/**
 * Ratio of a length to the next smaller one, by how many figures there are. Wide and plain ones are at least
 * what is fair at three (1.42, see `FAIR_SIZE_RATIO`) as far as so many have room; fine ones are at the floor
 * of what is fair at all, 1.3, and a little above. Common practice, no source.
 */
const SIZE_RATIO: Readonly<Record<Difference, Readonly<Record<number, number>>>> = {
  wide: { 3: 1.75, 4: 1.5, 5: 1.4 },
  plain: { 3: 1.5, 4: 1.42, 5: 1.37 },
  fine: { 3: 1.32, 4: 1.32, 5: 1.32 },
};

const FINEST = 1.32;

/** The most where forms differ, so that nearly any form can be the biggest or the smallest and all have room. */
const MIXED_RATIO: Readonly<Record<number, number>> = { 3: 1.75, 4: 1.45, 5: FINEST };

/** Least ratio of numbers of dots: what is fair at three, four and five (Halberda & Feigenson 2008, from memory). */
export const COUNT_RATIO: Readonly<Record<Difference, number>> = {
  wide: 2,
  plain: 1.5,
  fine: 1.33,
};

/** Shapes about as wide as they are high that fill much of their width, so that no measure gainsays another. */
const COMPACT: readonly Shape[] = [
  'circle',
  'square',
  'hexagon',
  'pentagon',
  'heart',
  'cross',
  'triangle',
];

/** A row is at most so many times as wide as its smallest figure is long: 137.5 mm, without the gaps. */
const MOST_ROW = 11;
/** The least size that a figure can have. */
const LEAST_SIZE = 0.2;

/** `count` sizes from the biggest, 1, downward. */
export function sizesOf(count: number, difference: Difference): readonly number[] {
  const ratio = SIZE_RATIO[difference][count] ?? FINEST;
  return Array.from({ length: count }, (_, step) => thousandth(1 / ratio ** step));
}

export interface Sized {
  readonly form: Shape;
  readonly size: number;
}

/** `count` compact forms, no two alike, with sizes from the biggest downward that agree in every measure. */
export function drawSized(count: number, difference: Difference, random: Random): readonly Sized[] {
  const ratio = Math.min(SIZE_RATIO[difference][count] ?? FINEST, MIXED_RATIO[count] ?? FINEST);
  return chainOf(random.pick(roomyOrders(count, ratio)), ratio);
}

const roomy = new Map<string, readonly (readonly Shape[])[]>();

/**
 * Every order of `count` compact forms that has room in a row: where a slender form is followed by a
 * stout one, that has to be the smaller.
 */
function roomyOrders(count: number, ratio: number): readonly (readonly Shape[])[] {
  const key = `${count} ${ratio}`;
  const before = roomy.get(key);
  if (before) return before;
  const orders = ordersOf(COMPACT, count).filter((order) => {
    const chain = chainOf(order, ratio);
    const isSeen = chain.every(({ size }) => size >= LEAST_SIZE);
    return isSeen && rowOf(chain) <= MOST_ROW;
  });
  roomy.set(key, orders);
  return orders;
}

function ordersOf(forms: readonly Shape[], count: number): readonly (readonly Shape[])[] {
  if (count === 0) return [[]];
  return forms.flatMap((first) => {
    const others = forms.filter((form) => form !== first);
    return ordersOf(others, count - 1).map((rest) => [first, ...rest]);
  });
}

function chainOf(forms: readonly Shape[], ratio: number): readonly Sized[] {
  const chain: Sized[] = [];
  for (const form of forms) {
    const before = chain.at(-1);
    chain.push({ form, size: before ? sizeAfter(before, form, ratio) : 1 });
  }
  const most = Math.max(...chain.map(({ size }) => size));
  return chain.map(({ form, size }) => ({ form, size: thousandth(size / most) }));
}

/** The biggest size of `form` at which all its measures are `ratio` times below those of the figure before. */
function sizeAfter(before: Sized, form: Shape, ratio: number): number {
  const bigger = measuresOf(before.form).map((measure) => measure * before.size);
  const shares = measuresOf(form).map((measure, index) => (bigger[index] ?? 0) / measure);
  return Math.min(...shares) / ratio;
}

/** Width of all figures together over the length of the smallest. */
function rowOf(chain: readonly Sized[]): number {
  const sides = chain.map(({ form, size }) =>
    measuresOf(form)
      .slice(0, 2)
      .map((side) => side * size),
  );
  const width = sides.reduce((sum, [wide = 0]) => sum + wide, 0);
  return width / Math.min(...sides.map((both) => Math.max(...both)));
}

const known = new Map<Shape, readonly number[]>();

/** Width, height and the side of a square as large, in cell sides. */
function measuresOf(form: Shape): readonly number[] {
  const before = known.get(form);
  if (before) return before;
  const { path } = outlineOf({ form });
  const { left, top, right, bottom } = pathBounds(path);
  const area = flattenPath(path).reduce((sum, polygon) => sum + areaOf(polygon), 0);
  const measures = [right - left, bottom - top, Math.sqrt(Math.abs(area))].map(thousandth);
  known.set(form, measures);
  return measures;
}

function areaOf(polygon: readonly Point[]): number {
  return polygon.reduce((sum, { x, y }, index) => {
    const next = polygon[(index + 1) % polygon.length] ?? { x, y };
    return sum + (x * next.y - next.x * y) / 2;
  }, 0);
}

function thousandth(share: number): number {
  return Math.round(1000 * share) / 1000;
}
