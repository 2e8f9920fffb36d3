// In which order the units of a year are done.
import { ACTIVITY_IDS } from '../../activities/index.ts';
import type { BookPages } from '../../plan/index.ts';
import type { Ask, PlannedWeek, YearChild } from './job.ts';

export interface Queue {
  /** The next unit for a worker, by its number; `undefined`: none for now, or none at all. */
  readonly next: (worker: number) => Ask | undefined;
  readonly addWeeks: (onSheet: YearChild['onSheet'], weeks: readonly PlannedWeek[]) => void;
  readonly addToPlan: (child: YearChild) => void;
  /** A unit of measuring is done; absent: it came to nothing, and each worker measures that for itself. */
  readonly addPages: (pages?: BookPages) => void;
}

/** What several children ask for in common is measured for so many of them; the rest as it comes. */
const MOST_MEASURED_FOR = 12;

/**
 * Weeks come before all else, so that few plans wait; then each child is looked up; then, where any is to be planned, what
 * their plans will ask of each activity is measured, once and by all workers together, and told to each with its first plan.
 */
export function queueOf(children: readonly YearChild[]): Queue {
  const weeks: Ask[] = [];
  const [toLookUp, toPlan] = [[...children], [] as YearChild[]];
  let toMeasure: Ask[] | undefined;
  let measuring = 0;
  const pages: BookPages[] = [];
  const told = new Set<number>();
  const nextPlan = (worker: number): Ask | undefined => {
    const child = toPlan.shift();
    if (child === undefined) return undefined;
    const isTold = told.has(worker);
    told.add(worker);
    return { kind: 'plan', child, ...(isTold ? {} : { pages }) };
  };
  return {
    next: (worker) => {
      const week = weeks.shift();
      if (week) return week;
      const child = toLookUp.shift();
      if (child) return { kind: 'look', child };
      if (toPlan.length > 0) toMeasure ??= measuringFor(toPlan);
      const measure = toMeasure?.shift();
      if (measure) measuring += 1;
      return measure ?? (measuring > 0 ? undefined : nextPlan(worker));
    },
    addWeeks: (onSheet, planned) => {
      weeks.push(...planned.map((each) => ({ kind: 'week' as const, onSheet, planned: each })));
    },
    addToPlan: (child) => {
      toPlan.push(child);
    },
    addPages: (measured) => {
      measuring -= 1;
      if (measured) pages.push(measured);
    },
  };
}

/** A unit for each activity, for children that differ in what is known of them, taken from the whole group. */
function measuringFor(toPlan: readonly YearChild[]): Ask[] {
  // Without their results: to read these takes each worker long.
  const kinds = new Map(toPlan.map((each) => [kindOf(each), { ...each, results: [] }]));
  const all = [...kinds.values()];
  const count = Math.min(all.length, MOST_MEASURED_FOR);
  const children = Array.from({ length: count }, (_, place) => {
    return all[Math.floor((place * all.length) / count)];
  }).filter((child) => child !== undefined);
  return ACTIVITY_IDS.map((activity) => ({ kind: 'measure', activity, children }));
}

function kindOf({ child: { id: _id, nickname: _nickname, ...facts }, step }: YearChild): string {
  return JSON.stringify([facts, step]);
}
