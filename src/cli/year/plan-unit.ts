// The unit of work that makes a child's plan and writes it, and the one that measures for the plans of all.
import type { ActivityId } from '../../activities/index.ts';
import {
  abilityForStep,
  type BookPages,
  factsReader,
  measureForYear,
  newPlanner,
  type Planner,
  planYear,
  type YearWishes,
} from '../../plan/index.ts';
import { openStaging } from '../staging.ts';
import type { Answer, PlannedWeek, YearChild, YearJob } from './job.ts';
import { foundIn } from './look-unit.ts';
import { folderOf, planFileIn } from './places.ts';
import { type PlanFile, planFileText, stampOf } from './plan-file.ts';

/** Plans children one after another: what was measured is kept, sheets are not. */
export interface Plans {
  /** The plan, written; and what of its weeks is there already. */
  readonly plan: (child: YearChild) => Promise<Answer>;
  /** What plans for such children will ask of an activity. */
  readonly measure: (activity: ActivityId, children: readonly YearChild[]) => Answer;
  /** Takes over what others measured. */
  readonly know: (pages: readonly BookPages[]) => void;
}

export function plansOf(job: YearJob): Plans {
  const planner = newPlanner();
  const book = planner.book(job.print);
  return {
    plan: async (child) => {
      const folder = folderOf(job.folder, child.onSheet);
      const weeks = weeksOf(planner, job, child);
      await write(folder, { stamp: stampOf(job, child), weeks });
      return foundIn(folder, job, weeks);
    },
    measure: (activity, children) => {
      for (const child of children) {
        measureForYear(planner, knownOf(child), wishesFor(planner, job, child), activity);
      }
      return { kind: 'measured', pages: book.pagesOf(activity) };
    },
    know: (pages) => {
      for (const each of pages) book.add(each);
    },
  };
}

function weeksOf(planner: Planner, job: YearJob, child: YearChild): readonly PlannedWeek[] {
  // Sheets of other children are of no use for this one.
  const own = { ...planner, read: factsReader() };
  const year = planYear(own, knownOf(child), wishesFor(planner, job, child));
  return [...year].map(({ week, sheets }) => ({
    week,
    sheets: sheets.map(({ day, planned: { facts, why } }) => ({ day, code: facts.code, why })),
  }));
}

function knownOf({ child, results }: YearChild) {
  return { child, results, plans: new Map() };
}

function wishesFor(planner: Planner, job: YearJob, { step }: YearChild): YearWishes {
  const { page, print, from, weeks, sheets } = job;
  const ability = step === undefined ? {} : { ability: abilityForStep(planner, print, step) };
  return { page, print, from, weeks, sheets, ...ability };
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
