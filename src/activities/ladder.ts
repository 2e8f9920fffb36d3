// Builds a ladder from its first values and what each rung changes.
import type { AgeHint, Step } from './activity.ts';

/** What a rung changes against the one before it; the first changes nothing. */
export interface Rung<V> {
  readonly change: Partial<V>;
  readonly age: AgeHint;
  /** How many tasks make a good sheet of this step. */
  readonly tasks: number;
}

/** Every rung with all of its values. */
export function ladderOf<V>(first: V, rungs: readonly Rung<V>[]): readonly Step<V>[] {
  let values = first;
  return rungs.map(({ change, age, tasks }) => {
    values = { ...values, ...change };
    return { values, age, tasks };
  });
}
