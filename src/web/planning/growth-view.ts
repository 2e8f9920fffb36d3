// Growth of a child with the names of activities.
import { activityOf } from '../../activities/index.ts';
import { accept, type Result } from '../../base/index.ts';
import { growthOf, type Planner } from '../../plan/index.ts';
import type { GrowthView, TodayAsked } from './cards.ts';
import { knownIn, wishesOf } from './plan-cards.ts';

export function growthView(
  planner: Planner,
  { child, day, wishes, ...records }: TodayAsked,
): Result<GrowthView> {
  const known = knownIn(records, child);
  if (!known.ok) return known;
  const growth = growthOf(planner, known.value, day, wishesOf(wishes));
  const skills = growth.skills.map(({ fitting, ...skill }) => ({
    ...skill,
    fitting: fitting.map(({ activity, step, steps }) => ({
      name: activityOf(activity).words.en.name,
      step,
      steps,
    })),
  }));
  return accept({ ...growth, skills });
}
