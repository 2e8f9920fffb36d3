// Which colours of a set some people cannot tell apart, for the warning and for the choice of marks.
import { FAIR_DE00 } from './choose-colours.ts';
import type { ColourName } from './colour-names.ts';
import { sightDifferenceDe00 } from './pair-differences.ts';
import { SIGHTS, type Sight } from './sights.ts';

/**
 * Colours that differ by less than this on the screen may pass for the same once printed and seen apart:
 * what is fair at all, and 4 for the printer, the most that a round trip through a CMYK press profile took
 * from one of these pairs (blue and purple, deutan). ΔE00; common practice, no source.
 */
export const MERGING_DE00 = FAIR_DE00 + 4;

/** Greys on paper need more: screens, toner and paper shift them. ΔE00; common practice, no source. */
export const GREY_MERGING_DE00 = 15;

export interface MergingPair {
  readonly a: ColourName;
  readonly b: ColourName;
  readonly sight: Sight;
  /** By the model of that sight that finds them most alike. */
  readonly differenceDe00: number;
}

/** The pairs of `names` that differ by less than `MERGING_DE00` to a sight; tritan is advice only. */
export function mergingPairs(names: readonly ColourName[]): readonly MergingPair[] {
  return SIGHTS.flatMap((sight) =>
    pairsOf(names)
      .map(([a, b]) => ({ a, b, sight, differenceDe00: sightDifferenceDe00(a, b, sight) }))
      .filter((pair) => pair.differenceDe00 < MERGING_DE00),
  );
}

function pairsOf<T>(items: readonly T[]): readonly (readonly [T, T])[] {
  return items.flatMap((one, index) =>
    items.slice(index + 1).map((other) => [one, other] as const),
  );
}
