// How strongly wrong choices speak for a pair being mixed up: bets against chance that pay only if it is so.

/**
 * How much more often than its share a figure is chosen if it is mixed up with the right one, as ratios of odds.
 * Each has an equal part of the stake, since none is known to be the true one: common practice, no source.
 */
const EFFECTS = [3, 6, 12, 24] as const;
/** Expected shares are reckoned, not known: odds up to so many times theirs count as no confusion. */
const MARGIN = 1.25;

/** What the stake on a pair has become, for each effect; 1 each before any error. */
export type Stakes = readonly number[];

export const NEW_STAKES: Stakes = EFFECTS.map(() => 1);

function shareAt(share: number, odds: number): number {
  return (odds * share) / (odds * share + 1 - share);
}

/**
 * The stakes after one wrong choice in which the other figure of the pair was offered with an expected `share`
 * (above 0 and below 1) of wrong choices. Each is multiplied by the ratio of likelihoods of a confusion and of none;
 * while there is none its mean does not grow (an e-process; Ville 1939: it ever reaches 1/α with probability α at most).
 */
export function afterError(stakes: Stakes, share: number, isChosen: boolean): Stakes {
  const none = shareAt(share, MARGIN);
  return stakes.map((stake, index) => {
    const confused = shareAt(share, EFFECTS[index] ?? 1);
    return stake * (isChosen ? confused / none : (1 - confused) / (1 - none));
  });
}

/** Mean over the effects: the e-value of a pair. */
export function evidenceOf(stakes: Stakes): number {
  return stakes.reduce((sum, stake) => sum + stake, 0) / stakes.length;
}

/** The first pairs share most of the stake evenly. */
const EVEN = 4;

/**
 * The part of a child's whole stake that goes to the pair met as the `place`-th (0 upward):
 * 5 / ((place + 5)(place + 6)), a sixth for the first. All parts together never come to more than 1, however many
 * pairs are met.
 */
export function partOf(place: number): number {
  return (EVEN + 1) / ((place + EVEN + 1) * (place + EVEN + 2));
}
