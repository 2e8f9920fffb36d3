// How probable it is to get a task right without looking: the ways to answer in the form that is asked for, one right.

/** A task that chance alone gets right more often than this tells nothing: of no task is more said. */
export const MOST_CHANCE = 0.9;

/**
 * Chance of pointing at exactly the right `answers` of `choices` figures when that many are asked for. A defect if
 * there are fewer choices than answers.
 */
export function chanceAmong(choices: number, answers = 1): number {
  refuseFewer(choices, answers);
  let ways = 1;
  for (let taken = 0; taken < answers; taken++) ways *= (choices - taken) / (taken + 1);
  return 1 / ways;
}

/** Chance that each of `times` separate choices among as many `choices` is right. */
export function chanceEachTime(choices: number, times: number): number {
  return choices ** -times;
}

/**
 * Chance of laying the right one of `things`, each of which is laid once at most, into each of `places`. A defect if
 * there are fewer things than places.
 */
export function chanceOfLaying(things: number, places = things): number {
  refuseFewer(things, places);
  let ways = 1;
  for (let laid = 0; laid < places; laid++) ways *= things - laid;
  return 1 / ways;
}

function refuseFewer(choices: number, answers: number): void {
  if (answers >= 0 && choices >= answers) return;
  throw new Error(
    `activities › chance: expected at least as many choices as answers, got ${choices} for ${answers}`,
  );
}
