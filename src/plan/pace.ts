// How fast a child works, from minutes taken against minutes reckoned.

/** Sheets of usual pace that the first guess of a child's own pace counts as. */
const PACE_PRIOR_MINUTES = 15;
/** No child is taken to be slower or faster than so many times the usual. */
const PACE_REACH = 2;

/** A child's pace from minutes taken and minutes reckoned: 1 is usual, 2 takes twice as long. */
export function paceFrom(taken: number, reckoned: number): number {
  const pace = (taken + PACE_PRIOR_MINUTES) / (reckoned + PACE_PRIOR_MINUTES);
  return Math.min(PACE_REACH, Math.max(1 / PACE_REACH, pace));
}
