// Fits what the step asks for to what the person set: of two that cannot go together, the person's own stays.
import { activityOf, isActivityId, type Value } from '../../activities/index.ts';
import type { Refusal } from '../../base/index.ts';
import { PRINT_CHOICES } from '../../page/index.ts';
import type { Entries } from '../recipe/entries.ts';
import { lastName } from './last-name.ts';

/** A value that gives way can push out another; no activity has more parameters than this. */
const MOST_ROUNDS = 16;

export interface Fitted {
  /** What the person set, and what gave way to it. */
  readonly changes: Readonly<Record<string, Value>>;
  /** Names of the parameters that gave way. */
  readonly gaveWay: readonly string[];
}

/** Leaves as it is what cannot be mended without touching what the person set. */
export function fitValues({ activity, step, changes, print }: Entries): Fitted {
  const style = PRINT_CHOICES.find((choice) => choice === print);
  const gaveWay: Record<string, Value> = {};
  const fitted = () => ({ changes: { ...gaveWay, ...changes }, gaveWay: Object.keys(gaveWay) });
  if (!isActivityId(activity) || style === undefined) return fitted();
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const read = activityOf(activity).read(step, fitted().changes, { print: style });
    if (read.ok) return fitted();
    const mends = read.refusals.map(mendOf).filter(([name]) => !Object.hasOwn(changes, name));
    const [mend] = mends;
    if (mend?.[1] === undefined || gaveWay[mend[0]] === mend[1]) break;
    gaveWay[mend[0]] = mend[1];
  }
  return { changes, gaveWay: [] };
}

/** The parameter that is refused and the nearest value that is allowed, if the refusal tells one. */
function mendOf(refusal: Refusal): readonly [string, Value | undefined] {
  const name = lastName(refusal.at);
  if (refusal.code === 'not-a-choice') {
    const allowed = refusal.nearest ?? refusal.choices[0];
    // A refusal lists its choices as text; those of a yes or no are booleans.
    return [name, typeof refusal.got === 'boolean' ? allowed === 'true' : allowed];
  }
  if (refusal.code === 'out-of-range' && typeof refusal.got === 'number') {
    return [name, Math.min(refusal.max, Math.max(refusal.min, refusal.got))];
  }
  return [name, undefined];
}
