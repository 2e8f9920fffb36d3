// What an activity's own solver finds in printed facts, whatever these are.
import type { Activity } from '../activities/index.ts';
import { type Told, told } from '../base/index.ts';

export interface Findings {
  readonly answers: readonly unknown[];
  readonly faults: readonly Told[];
}

/** What the solver finds; facts that break it make no task. */
export function findingsOf(activity: Activity, printed: unknown): Findings {
  try {
    return activity.solve(printed);
  } catch {
    return { answers: [], faults: [told('faults', 'unreadable')] };
  }
}
