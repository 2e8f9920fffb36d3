// Fits what the step asks for to what the person set: of two that cannot go together, the person's own stays.
import { type ActivityId, activityOf, isActivityId, type Value } from '../../activities/index.ts';
import { settle } from '../../learner/index.ts';
import { changesOf } from '../../sheets/index.ts';
import type { Entries } from '../recipe/entries.ts';
import { styleOfEntries } from './style-of.ts';

export interface Fitted {
  /** What the person set, and what gave way to it. */
  readonly changes: Readonly<Record<string, Value>>;
  /** Names of the parameters that gave way. */
  readonly gaveWay: readonly string[];
}

/** Leaves as it is what cannot be mended without touching what the person set. */
export function fitValues(entries: Entries): Fitted {
  const { activity: id, step } = entries;
  const changes = isActivityId(id) ? withChoicesInWords(id, entries.changes) : entries.changes;
  const asEntered = { changes, gaveWay: [] };
  const style = styleOfEntries(entries);
  const own = isActivityId(id) ? activityOf(id).ladder[step - 1]?.values : undefined;
  if (!isActivityId(id) || style === undefined || own === undefined) return asEntered;
  const settled = settle(activityOf(id), own, changes, own, style);
  if (!settled.ok) return asEntered;
  const changed = changesOf({ activity: id, step }, settled.value);
  const gaveWay = Object.keys(changed).filter((name) => !Object.hasOwn(changes, name));
  return { changes: { ...changed, ...changes }, gaveWay };
}

/** An address does not tell a choice that is written in digits from a number: only the parameter does. */
function withChoicesInWords(id: ActivityId, changes: Entries['changes']): Entries['changes'] {
  const { parameters } = activityOf(id);
  return Object.fromEntries(
    Object.entries(changes).map(([name, value]) => [
      name,
      parameters[name]?.kind === 'choice' ? String(value) : value,
    ]),
  );
}
