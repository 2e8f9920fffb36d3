// Which colours stand together on a sheet: the set whose two most alike members differ most, or one near it.
import type { Random } from '../base/index.ts';
import { COLOUR_NAMES, type ColourName, FIGURE_COLOURS } from './colour-names.ts';
import { greyDifferenceDe00, worstDifferenceDe00 } from './pair-differences.ts';

/** Whether a sheet is printed with coloured ink or in grey. */
export type ColourPrint = 'colour' | 'grey';

/** How a sheet prints its colours, and which of them there are. */
export interface ColourStock {
  readonly print: ColourPrint;
  /** The only colours that figures and responses may have, such as those of the stickers of a house; absent: all. */
  readonly colours?: readonly ColourName[];
}

/** Those of `among` that a sheet may have: all of them, or what the house has. */
export function coloursOf(
  { colours }: Pick<ColourStock, 'colours'>,
  among: readonly ColourName[] = FIGURE_COLOURS,
): readonly ColourName[] {
  return colours ? among.filter((name) => colours.includes(name)) : among;
}

/** Colours that differ by less may look alike to some child; ΔE00, common practice, no source. */
export const FAIR_DE00 = 10;

/** A drawn set differs by at least this share of what the best set of its count does; no source. */
export const NEAR_BEST_SHARE = 0.4;

interface RankedSet {
  readonly names: readonly ColourName[];
  /** The least difference of two of them where coloured ink prints them. */
  readonly leastSeen: number;
  /** Differences of all pairs, smallest first. */
  readonly differences: readonly number[];
}

interface Ranking {
  readonly best: RankedSet;
  /** All sets of the count, the best first. */
  readonly sets: readonly RankedSet[];
}

const rankings = new Map<string, Ranking>();

/**
 * `count` colours of `from` in random order, all sets alike likely that keep `promisedDe00`; in grey, where
 * marks tell what greys do not, of those sets alone that are fair in colour, if there are any.
 * A defect if `from` has too few.
 */
export function drawColours(
  random: Random,
  count: number,
  print: ColourPrint,
  from: readonly ColourName[] = FIGURE_COLOURS,
): readonly ColourName[] {
  const { best, sets } = rankingOf(count, print, from);
  const fair = sets.filter((set) => set.leastSeen >= FAIR_DE00);
  const promise = promiseOf(fair[0] ?? best);
  const kept = (fair.length > 0 ? fair : sets).filter((set) => least(set) >= promise);
  return random.shuffle(random.pick(kept).names);
}

/**
 * The least difference that any two colours of a drawn set have: a share of the best possible and no less
 * than fair, or the best possible where that is less than fair. ΔE00; infinite for one colour.
 */
export function promisedDe00(
  count: number,
  print: ColourPrint,
  from: readonly ColourName[] = FIGURE_COLOURS,
): number {
  return promiseOf(rankingOf(count, print, from).best);
}

function promiseOf(best: RankedSet): number {
  const most = least(best);
  return Math.min(most, Math.max(FAIR_DE00, NEAR_BEST_SHARE * most));
}

/** The least difference of any two of the colours as printed, ΔE00; infinite for fewer than two. */
export function leastDifferenceDe00(names: readonly ColourName[], print: ColourPrint): number {
  return differencesOf(names, print)[0] ?? Number.POSITIVE_INFINITY;
}

/** The most colours of `from` that can stand together with every two at least `FAIR_DE00` apart. */
export function mostFairColours(
  print: ColourPrint,
  from: readonly ColourName[] = FIGURE_COLOURS,
): number {
  const counts = [...new Set(from)].map((_, index) => index + 1);
  return counts.filter((count) => least(rankingOf(count, print, from).best) >= FAIR_DE00).length;
}

/** Worked out once for each count, print and choice of names: at most 252 sets of 45 pairs. */
function rankingOf(count: number, print: ColourPrint, from: readonly ColourName[]): Ranking {
  const names = COLOUR_NAMES.filter((name) => from.includes(name));
  const key = [count, print, ...names].join(' ');
  const ranking = rankings.get(key) ?? rank(names, count, print);
  rankings.set(key, ranking);
  return ranking;
}

function rank(names: readonly ColourName[], count: number, print: ColourPrint): Ranking {
  const sets = subsets(names, count)
    .map((set) => ({
      names: set,
      leastSeen: leastDifferenceDe00(set, 'colour'),
      differences: differencesOf(set, print),
    }))
    .sort(byDifferences);
  const best = sets[0];
  if (best) return { best, sets };
  throw new Error(`palette › colours: expected 0 to ${names.length}, got ${count}`);
}

function byDifferences(one: RankedSet, other: RankedSet): number {
  const at = one.differences.findIndex((value, index) => value !== other.differences[index]);
  return at < 0 ? 0 : (other.differences[at] ?? 0) - (one.differences[at] ?? 0);
}

/** The differences of all pairs, smallest first. */
function differencesOf(names: readonly ColourName[], print: ColourPrint): readonly number[] {
  return names
    .flatMap((one, index) => names.slice(index + 1).map((other) => apart(one, other, print)))
    .sort((a, b) => a - b);
}

function apart(one: ColourName, other: ColourName, print: ColourPrint): number {
  const seen = worstDifferenceDe00(one, other);
  return print === 'colour' ? seen : Math.min(seen, greyDifferenceDe00(one, other));
}

function subsets<T>(items: readonly T[], count: number): readonly (readonly T[])[] {
  if (count === 0) return [[]];
  return items.flatMap((item, index) =>
    subsets(items.slice(index + 1), count - 1).map((rest) => [item, ...rest]),
  );
}

function least(set: RankedSet): number {
  return set.differences[0] ?? Number.POSITIVE_INFINITY;
}
