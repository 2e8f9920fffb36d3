// The entries that the plan of one child is made from, so that no more than these are sent to the planner.
import type { Entry, Id } from '../../records/index.ts';

/** All entries about the child, with those that take any of them back. */
export function ownEntries(entries: readonly Entry[], child: Id): readonly Entry[] {
  const own = new Set<Id>();
  // Ids rise with time, and only what is there can be taken back.
  for (const entry of entries) {
    const isOwn =
      entry.kind === 'undone' ? own.has(entry.entry) : 'child' in entry && entry.child === child;
    if (isOwn) own.add(entry.id);
  }
  return entries.filter(({ id }) => own.has(id));
}
