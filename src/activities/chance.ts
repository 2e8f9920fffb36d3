// How probable it is to get a task right without looking: the ways to answer in the form that is asked for, one right.

/** A task that chance alone gets right more often than this tells nothing: of no task is more said. */
export const MOST_CHANCE = 0.9;

/**
 * Chance of pointing at exactly the right `answers` of `choices` figures when that many are asked for; 0 where there are
 * not so many, as on a page that was changed and is no longer certain.
 */
export function chanceAmong(choices: number, answers = 1): number {
  if (choices < answers) return 0;
  let ways = 1;
  for (let taken = 0; taken < answers; taken++) ways *= (choices - taken) / (taken + 1);
  return 1 / ways;
}

/** Chance that each of `times` separate choices among as many `choices` is right. */
export function chanceEachTime(choices: number, times: number): number {
  return choices ** -times;
}

/**
 * Chance of laying the right one of `things`, each of which is laid once at most, into each of `places`; 0 where there
 * are fewer things than places.
 */
export function chanceOfLaying(things: number, places = things): number {
  if (things < places) return 0;
  let ways = 1;
  for (let laid = 0; laid < places; laid++) ways *= things - laid;
  return 1 / ways;
}
