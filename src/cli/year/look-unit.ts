// The first unit of a child: what stands in its folder, and whether it must be planned.
import type { Answer, PlannedWeek, YearChild, YearJob } from './job.ts';
import { folderOf, hasWeeks, planFileIn, removeWeeks, standOfWeek } from './places.ts';
import { type PlanFile, readPlanFile, stampOf } from './plan-file.ts';
import { readSums } from './sums.ts';

/** Changes nothing but with `anew`, where packs of another making go. */
export function lookUp(job: YearJob, child: YearChild): Answer {
  const folder = folderOf(job.folder, child.onSheet);
  const stamp = stampOf(job, child);
  const old = readPlanFile(planFileIn(folder));
  if (isOtherwise(folder, old, stamp)) {
    if (!job.anew) return { kind: 'otherwise' };
    // Packs first: a run that is ended here has no pack under a plan that is not its own.
    removeWeeks(folder);
    return { kind: 'to-plan' };
  }
  const isLongEnough = typeof old === 'object' && old.weeks.length >= job.weeks;
  return isLongEnough ? foundIn(folder, job, old.weeks) : { kind: 'to-plan' };
}

function isOtherwise(
  folder: string,
  old: PlanFile | 'unreadable' | undefined,
  stamp: string,
): boolean {
  if (old === undefined) return hasWeeks(folder);
  return old === 'unreadable' || old.stamp !== stamp;
}

/** Which weeks of the plan are to be made; packs that somebody changed are only with `anew`. */
export function foundIn(folder: string, job: YearJob, plan: readonly PlannedWeek[]): Answer {
  const isAsMade = readSums(folder);
  const weeks = plan.slice(0, job.weeks).map((planned) => {
    return { planned, stand: standOfWeek(folder, planned.week, job.files, isAsMade) };
  });
  const isToMake = (stand: string) => stand === 'missing' || (stand === 'changed' && job.anew);
  return {
    kind: 'found',
    toMake: weeks.filter(({ stand }) => isToMake(stand)).map(({ planned }) => planned),
    changed: weeks
      .filter(({ stand }) => stand === 'changed' && !job.anew)
      .map(({ planned }) => planned.week),
  };
}
