// Finds the pack that is a notch easier or harder than the one on the table.
import { activityOf, isActivityId } from '../../activities/index.ts';
import { accept, type Result, refuse } from '../../base/index.ts';
import { notch } from '../../learner/index.ts';
import { changesOf } from '../../sheets/index.ts';
import { type Entries, withValues } from '../recipe/entries.ts';
import { fitValues } from './fit-values.ts';
import type { Direction } from './protocol.ts';
import { styleOfEntries } from './style-of.ts';

/** Refuses entries from which nothing can be made, and what gets no harder or no easier. */
export function notched(entries: Entries, direction: Direction): Result<Entries> {
  const { activity: id, step, print } = entries;
  const style = styleOfEntries(entries);
  if (!isActivityId(id) || style === undefined) {
    const expected = 'an activity and a print that are known';
    return refuse({ code: 'unreadable', at: 'activity', got: `${id}, ${print}`, expected });
  }
  const { changes } = fitValues(entries);
  const found = notch(activityOf(id), step, changes, direction, style);
  if (!found.ok) return found;
  const { step: next, values } = found.value;
  return accept(withValues(entries, next, changesOf({ activity: id, step: next }, values)));
}
