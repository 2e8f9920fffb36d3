// What the files `wrong-to-test.ts` hold: made tasks with one rule broken on purpose, which the solver must notice.
import type { Random } from '../base/index.ts';
import { type Figure, sameFigure } from '../figures/index.ts';

/** A task in the types of its own activity. */
export interface Made<P, A> {
  readonly printed: P;
  readonly answer: A;
}

/**
 * Ways to break a rule, each by what is wrong then. Each makes of a proven task one that its schemas still read and
 * that must not be proven, and undefined where the task has nothing to be broken in this way.
 */
export type WrongWays<P, A> = Readonly<
  Record<string, (task: Made<P, A>, random: Random) => Made<P, A> | undefined>
>;

/** The places of a list (0 upward) of which something holds. */
export function placesWhere<T>(
  list: readonly T[],
  holds: (item: T, place: number) => boolean,
): readonly number[] {
  return list.flatMap((item, place) => (holds(item, place) ? [place] : []));
}

/** One of the list by lot; undefined where it is empty. */
export function anyOf<T>(random: Random, list: readonly T[]): T | undefined {
  return list.length > 0 ? random.pick(list) : undefined;
}

/** A list with one item put in the place of another. */
export function replaced<T>(list: readonly T[], at: number, item: T): readonly T[] {
  return list.map((other, place) => (place === at ? item : other));
}

/** A list without the item at a place. */
export function without<T>(list: readonly T[], at: number): readonly T[] {
  return list.filter((_, place) => place !== at);
}

/** A list with the items of two places exchanged. */
export function exchanged<T>(list: readonly T[], one: number, other: number): readonly T[] {
  return list.map((item, place) => {
    const from = place === one ? other : place === other ? one : place;
    return list[from] ?? item;
  });
}

/** Two places of a list whose items differ, by lot; undefined where all are alike. */
export function twoThatDiffer<T>(
  random: Random,
  list: readonly T[],
  differ: (one: T, other: T) => boolean,
): readonly [number, number] | undefined {
  const pairs = list.flatMap((one, place) =>
    placesWhere(list, (other, second) => second > place && differ(one, other)).map(
      (second) => [place, second] as const,
    ),
  );
  return anyOf(random, pairs);
}

/** A list of places with one put in or left out, in rising order. */
export function toggled(places: readonly number[], place: number): readonly number[] {
  const others = places.filter((other) => other !== place);
  return others.length < places.length
    ? others
    : [...places, place].sort((one, other) => one - other);
}

/** The same figure smaller or bigger by so little that nobody can say which of both it is. */
export function hardlyOther(figure: Figure): Figure {
  const { size = 1 } = figure;
  return { ...figure, size: size > 0.5 ? size * 0.97 : size * 1.03 };
}

/** A task whose key is figures in their order. */
interface Keyed {
  readonly answer: { readonly figures: readonly Figure[] };
}

export function looksOther(one: Figure, other: Figure): boolean {
  return !sameFigure(one, other);
}

/** Those of what is shown that look other than the figure; none where there is no figure. */
export function othersThan(
  shown: readonly (Figure | null)[],
  figure: Figure | null | undefined,
): readonly Figure[] {
  return shown.flatMap((each) => (each && figure && looksOther(each, figure) ? [each] : []));
}

/** The places of the figures of the key among those that are shown. */
export function placesOfKey({ answer }: Keyed, shown: readonly Figure[]): readonly number[] {
  return placesWhere(shown, (figure) => answer.figures.some((each) => sameFigure(each, figure)));
}

/** The key has, in one place, another of the figures that are shown. */
export function withOtherInKey<T extends Keyed>(
  task: T,
  shown: readonly (Figure | null)[],
  random: Random,
): T | undefined {
  const { figures } = task.answer;
  const at = random.int(0, figures.length - 1);
  const other = anyOf(random, othersThan(shown, figures[at]));
  return other && { ...task, answer: { figures: replaced(figures, at, other) } };
}

/** Two figures of the key, which look other than each other, have their places exchanged. */
export function withKeyExchanged<T extends Keyed>(task: T, random: Random): T | undefined {
  const { figures } = task.answer;
  const two = twoThatDiffer(random, figures, looksOther);
  return two && { ...task, answer: { figures: exchanged(figures, ...two) } };
}
