// Growth of a child with the names of activities.
import { type ActivityId, activityOf } from '../../activities/index.ts';
import { accept, type Result } from '../../base/index.ts';
import { growthOf, type Planner, type SkillGrowth } from '../../plan/index.ts';
import { languageNow } from '../speaking/language-now.ts';
import type { GrowthView, SkillView, TodayAsked } from './cards.ts';
import { knownIn, wishesOf } from './plan-cards.ts';

export function growthView(
  planner: Planner,
  { child, day, wishes, ...records }: TodayAsked,
): Result<GrowthView> {
  const known = knownIn(records, child);
  if (!known.ok) return known;
  const growth = growthOf(planner, known.value, day, wishesOf(wishes), languageNow());
  return accept({ ...growth, skills: growth.skills.map(skillView) });
}

function skillView({ fitting, chart, ...skill }: SkillGrowth): SkillView {
  return {
    ...skill,
    fitting: fitting.map(({ activity, ...step }) => ({ ...step, name: nameOf(activity) })),
    ...(chart === undefined ? {} : { chart: { ...chart, name: nameOf(chart.activity) } }),
  };
}

function nameOf(activity: ActivityId): string {
  return activityOf(activity).words[languageNow()].name;
}
