// Which figures a child mixes up: counts for each pair, and which are more than chance.
import { afterError, evidenceOf, NEW_STAKES, partOf, type Stakes } from './confusion-evidence.ts';

/** A wrong figure that was there to choose. */
export interface Offered {
  /** What it shows: red, b, three. */
  readonly label: string;
  /** What the right figure shows beside this one, where that is not `right` of the look. */
  readonly beside?: string;
  /** Expected share of the wrong choices, from likeness; in any unit, above 0. */
  readonly share: number;
}

/** One choice that a child made. */
export interface Look {
  /** What would have been right. */
  readonly right: string;
  readonly offered: readonly Offered[];
  /** The wrong figure that was chosen; absent where the choice was right or is not known. */
  readonly chosen?: string;
}

/** Two labels, either way round. */
export interface ConfusionRow {
  readonly pair: readonly [string, string];
  /** How often one was chosen instead of the other. */
  readonly times: number;
  /** How often it could have been. */
  readonly opportunities: number;
  /** Errors with another wrong figure to choose: the only ones that tell a confusion from chance. */
  readonly telling: number;
  /** What the pair's part of the stake has become. */
  readonly evidence: number;
  /** Whether this is more than chance. */
  readonly isConfused: boolean;
}

/**
 * One false alarm in so many children at most, over a child's whole record and all pairs: 1 / 20 (Ville's inequality;
 * e-values as in Ramdas, Grünwald, Vovk & Shafer 2023, Stat. Sci. 38, 576–601, from memory).
 */
export const ALARM = 20;

/**
 * All pairs that were there to be mixed up, the most evidence first. However often one looks, a child whose wrong
 * choices fall on the offered figures by their shares has a pair with `isConfused` with probability 1/20 at most.
 */
export function confusionsIn(looks: readonly Look[]): readonly ConfusionRow[] {
  const tallies = new Map<string, Tally>();
  for (const look of looks) count(tallies, look);
  return [...tallies.values()]
    .map(rowOf)
    .sort((one, other) => other.evidence - one.evidence || other.times - one.times);
}

/** Expected shares from how like each wrong figure is to the right one, 0 to 1; none is wholly unlikely. */
export function offeredByLikeness(likeness: Readonly<Record<string, number>>): readonly Offered[] {
  return Object.entries(likeness).map(([label, like]) => ({
    label,
    share: Math.max(like, LEAST_LIKENESS),
  }));
}

/** A child that does not look chooses anything: common practice, no source. */
const LEAST_LIKENESS = 0.1;

interface Tally {
  readonly pair: readonly [string, string];
  times: number;
  opportunities: number;
  telling: number;
  stakes: Stakes;
  /** How many pairs had a telling error before it had its first; infinite before. */
  place: number;
}

function count(tallies: Map<string, Tally>, { right, offered, chosen }: Look): void {
  const shares = sharesOf(right, offered);
  const beside = new Map(offered.map((each) => [each.label, each.beside ?? right]));
  const isError = chosen !== undefined && shares.has(chosen);
  for (const [label, share] of shares) {
    const tally = tallyOf(tallies, beside.get(label) ?? right, label);
    tally.opportunities++;
    if (label === chosen) tally.times++;
    if (!isError || shares.size < 2) continue;
    if (tally.telling === 0) tally.place = toldPairs(tallies);
    tally.telling++;
    tally.stakes = afterError(tally.stakes, share, label === chosen);
  }
}

/** Shares that come to 1, each label once, in the order offered, which knows nothing of the choice. */
function sharesOf(right: string, offered: readonly Offered[]): ReadonlyMap<string, number> {
  const wrong = offered.filter(({ label, share }) => label !== right && share > 0);
  const total = wrong.reduce((sum, { share }) => sum + share, 0);
  const shares = new Map<string, number>();
  for (const { label, share } of wrong) {
    shares.set(label, (shares.get(label) ?? 0) + share / total);
  }
  return shares;
}

function toldPairs(tallies: ReadonlyMap<string, Tally>): number {
  return [...tallies.values()].filter(({ telling }) => telling > 0).length;
}

function tallyOf(tallies: Map<string, Tally>, one: string, other: string): Tally {
  const pair: readonly [string, string] = one < other ? [one, other] : [other, one];
  const key = pair.join('\n');
  const known = tallies.get(key);
  if (known) return known;
  const place = Number.POSITIVE_INFINITY;
  const tally = { pair, times: 0, opportunities: 0, telling: 0, stakes: NEW_STAKES, place };
  tallies.set(key, tally);
  return tally;
}

function rowOf({ pair, times, opportunities, telling, stakes, place }: Tally): ConfusionRow {
  const evidence = partOf(place) * evidenceOf(stakes);
  return { pair, times, opportunities, telling, evidence, isConfused: evidence >= ALARM };
}
