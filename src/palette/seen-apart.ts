// Whether two printed colours of any kind, such as those of a picture, are told apart, however the page is seen.
import { FAIR_DE00 } from './choose-colours.ts';
import { greyLike } from './contrast.ts';
import { differenceDe00, rgbDifferenceDe00 } from './difference.ts';
import type { Hex } from './hex.ts';
import { GREY_MERGING_DE00 } from './merging.ts';
import { SERVED_SIGHTS } from './pair-differences.ts';
import { modelsOf, rgbAsSeen } from './sights.ts';

interface Seeing {
  readonly differenceDe00: (one: Hex, other: Hex) => number;
  readonly leastDe00: number;
}

/** Each model of each sight that is served, then grey print, where a picture has no mark to help. */
const SEEINGS: readonly Seeing[] = [
  ...SERVED_SIGHTS.flatMap((sight) =>
    modelsOf(sight).map((model) => ({
      differenceDe00: (one: Hex, other: Hex) =>
        rgbDifferenceDe00(rgbAsSeen(one, sight, model), rgbAsSeen(other, sight, model)),
      leastDe00: FAIR_DE00,
    })),
  ),
  {
    differenceDe00: (one, other) => differenceDe00(greyLike(one), greyLike(other)),
    leastDe00: GREY_MERGING_DE00,
  },
];

/**
 * For every way in which a page may be seen, always in one order, whether the two colours are told apart in it: by
 * `FAIR_DE00` to each model of each served sight, and by `GREY_MERGING_DE00` once printed or copied in grey.
 */
export function seenApart(one: Hex, other: Hex): readonly boolean[] {
  // Rounded, since powers differ in the last digit between engines.
  return SEEINGS.map(
    ({ differenceDe00: differ, leastDe00 }) =>
      Math.round(100 * differ(one, other)) / 100 >= leastDe00,
  );
}
