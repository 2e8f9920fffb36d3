// What solvers find wrong, and what refusals say of their own, in English.
import { type Findings, faultIn } from '../src/activities/index.ts';
import type { Refusal, Told } from '../src/base/index.ts';
import { amountIn, reasonIn } from '../src/words/index.ts';

/** The findings with their faults in English. */
export function said<A>({ answers, faults }: Findings<A>): {
  readonly answers: readonly A[];
  readonly faults: readonly string[];
} {
  return { answers, faults: faults.map((fault) => faultIn('en', fault)) };
}

/** The refusal's fields with what it says of its own in English; how much, with the most. */
export function saidIn(refusal: Refusal): Readonly<Record<string, unknown>> {
  const own = ['because', 'expected', 'advice', 'reason'].flatMap((name) => {
    const value: unknown = refusal[name as keyof Refusal];
    return value === undefined ? [] : [[name, reasonIn('en', value as Told | string)]];
  });
  const unit = 'unit' in refusal ? { unit: amountIn('en', refusal.max, refusal.unit) } : {};
  return { ...refusal, ...Object.fromEntries(own), ...unit };
}
