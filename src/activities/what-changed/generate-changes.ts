// Changes looks: one attribute of each chosen figure, or two figures changing places.
import type { Random } from '../../base/index.ts';
import { type Figure, figureAt } from '../../figures/index.ts';
import { compareFigures } from '../figure-comparison.ts';
import type { Look, Stock } from './generate-looks.ts';
import type { ChangeValues } from './task.ts';

/** Of looks in order of likeness, one of this share of them at the wanted end is taken. */
const TAKEN_SHARE = 1 / 3;

/**
 * New looks for the places, each unlike the old one in a single attribute, and none of them the old look of
 * another such place: what appears in one place has not gone from another.
 */
export function alter(
  { space }: Stock,
  looks: readonly Look[],
  places: readonly number[],
  { kind, likeness }: ChangeValues,
  random: Random,
): ReadonlyMap<number, Look> {
  const all = random.shuffle(space.axes.map((_, axis) => axis));
  const order = kind === 'first' ? [0] : all;
  const old = new Set(places.map((place) => String(looks[place])));
  const changed = places.map((place, index) => {
    const look = looks[place] ?? [];
    const axis = order[index % order.length] ?? 0;
    const free = othersOn(axis, space.axes[axis]?.values.length ?? 0, look).filter(
      (other) => !old.has(String(other)),
    );
    const figure = figureAt(space, look);
    const news = byLikeness(figure, free, (other) => figureAt(space, other), likeness);
    return [place, random.pick(news)] as const;
  });
  return new Map(changed);
}

/** Every look that differs from this one on the axis alone. */
function othersOn(axis: number, values: number, look: Look): readonly Look[] {
  return Array.from({ length: values }, (_, value) =>
    look.map((old, index) => (index === axis ? value : old)),
  ).filter((other) => other[axis] !== look[axis]);
}

/** Two and two places with each other's looks, as often as half the changes. */
export function swap(
  { space }: Stock,
  looks: readonly Look[],
  { changes, likeness }: ChangeValues,
  random: Random,
): ReadonlyMap<number, Look> {
  const changed = new Map<number, Look>();
  const shuffled = random.shuffle(looks.map((_, place) => place));
  while (changed.size < changes) {
    const left = shuffled.filter((place) => !changed.has(place));
    const [one = 0] = mostCrowdedFirst(left, looks);
    const partners = left.filter((place) => String(looks[place]) !== String(looks[one]));
    const figureOf = (place: number) => figureAt(space, looks[place] ?? []);
    const other = random.pick(byLikeness(figureOf(one), partners, figureOf, likeness));
    changed.set(one, looks[other] ?? []).set(other, looks[one] ?? []);
  }
  return changed;
}

/** Places whose look most others share come first: so two different ones are left as long as can be. */
function mostCrowdedFirst(places: readonly number[], looks: readonly Look[]): readonly number[] {
  const sharing = (place: number) =>
    places.filter((other) => String(looks[other]) === String(looks[place])).length;
  return [...places].sort((one, other) => sharing(other) - sharing(one));
}

/** The items whose figures are likest to `figure`, or least like it: a third of all, at least one. */
function byLikeness<T>(
  figure: Figure,
  items: readonly T[],
  figureOf: (item: T) => Figure,
  likeness: ChangeValues['likeness'],
): readonly T[] {
  const sign = likeness === 'near' ? -1 : 1;
  const ranked = items
    .map((item) => ({ item, likeness: compareFigures(figure, figureOf(item)).likeness }))
    .sort((one, other) => sign * (one.likeness - other.likeness));
  return ranked
    .slice(0, Math.max(1, Math.floor(items.length * TAKEN_SHARE)))
    .map(({ item }) => item);
}
