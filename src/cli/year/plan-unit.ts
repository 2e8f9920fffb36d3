// The first unit of a child: its plan is found, or made and written; the weeks whose files are missing are told.
import {
  abilityForStep,
  factsReader,
  newPlanner,
  type Planner,
  planYear,
} from '../../plan/index.ts';
import { openStaging } from '../staging.ts';
import type { Answer, PlannedWeek, YearChild, YearJob } from './job.ts';
import { folderOf, hasWeeks, isWeekThere, planFileIn, removeWeeks } from './places.ts';
import { type PlanFile, planFileText, readPlanFile, stampOf } from './plan-file.ts';

/** Plans one child after another; rungs that were measured are kept, sheets are not. */
export type PlanUnit = (child: YearChild) => Promise<Answer>;

export function planUnit(job: YearJob): PlanUnit {
  const planner = newPlanner();
  return async (child) => {
    const folder = folderOf(job.folder, child.onSheet);
    const stamp = stampOf(job, child);
    const old = readPlanFile(planFileIn(folder));
    if (isOtherwise(folder, old, stamp)) {
      if (!job.anew) return { kind: 'planned', toMake: [], otherwise: true };
      // Packs first: a run that is ended here has no pack under a plan that is not its own.
      removeWeeks(folder);
    }
    const weeks = await standingPlan(planner, job, child, folder, stamp, old);
    const toMake = weeks
      .slice(0, job.weeks)
      .filter(({ week }) => !isWeekThere(folder, week, job.files));
    return { kind: 'planned', toMake, otherwise: false };
  };
}

function isOtherwise(folder: string, old: ReturnType<typeof readPlanFile>, stamp: string): boolean {
  if (old === undefined) return hasWeeks(folder);
  return old === 'unreadable' || old.stamp !== stamp;
}

/** The plan that stands, where it is this one and long enough; else a new one, written before it is used. */
async function standingPlan(
  planner: Planner,
  job: YearJob,
  child: YearChild,
  folder: string,
  stamp: string,
  old: ReturnType<typeof readPlanFile>,
): Promise<readonly PlannedWeek[]> {
  const stands = old !== undefined && old !== 'unreadable' && old.stamp === stamp;
  if (stands && old.weeks.length >= job.weeks) return old.weeks;
  const weeks = weeksOf(planner, job, child);
  await write(folder, { stamp, weeks });
  return weeks;
}

function weeksOf(planner: Planner, job: YearJob, { child, results, step }: YearChild) {
  const { page, print, from, weeks, sheets } = job;
  const ability = step === undefined ? {} : { ability: abilityForStep(planner, print, step) };
  // Sheets of other children are of no use for this one.
  const own = { ...planner, read: factsReader() };
  const known = { child, results, plans: new Map() };
  const year = planYear(own, known, { page, print, from, weeks, sheets, ...ability });
  return [...year].map(
    ({ week, sheets }): PlannedWeek => ({
      week,
      sheets: sheets.map(({ day, planned: { facts, why } }) => ({ day, code: facts.code, why })),
    }),
  );
}

async function write(folder: string, plan: PlanFile): Promise<void> {
  const staging = openStaging();
  try {
    staging.folder(folder);
    const text = Buffer.from(planFileText(plan));
    await staging.write(planFileIn(folder), async (write) => write(text));
    staging.commit();
  } finally {
    staging.abandon();
  }
}
