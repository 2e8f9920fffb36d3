// From a step to an ability: for a child of whom an adult knows which step it is at.
import { ACTIVITY_IDS, activityOf } from '../activities/index.ts';
import { logitsFor, PRIOR_SD } from '../learner/index.ts';
import type { PrintStyle } from '../page/index.ts';
import type { Planner } from './planner.ts';

/**
 * The mean of the ability, in logits, for which the sheets of `step` (1 upward; beyond the end of a ladder, its last) are
 * right about as often as is wanted: the mean over the activities, since one step is not equally hard in all. As little
 * is known of the child as of a new one.
 */
export function abilityForStep(planner: Planner, print: PrintStyle['print'], step: number): number {
  const book = planner.book(print);
  const sd = Math.hypot(PRIOR_SD.general, PRIOR_SD.skill);
  const means = ACTIVITY_IDS.map((id) => {
    const { length } = activityOf(id).ladder;
    const content = activityOf(id).ladder[Math.min(step, length) - 1]?.values.content;
    const asked = content === undefined ? {} : { content };
    const { logits, chance } = book.rung(id, asked, Math.min(step, book.count(id, asked)));
    return logits - logitsFor({ mean: 0, sd }, chance);
  });
  return means.reduce((sum, mean) => sum + mean, 0) / means.length;
}
