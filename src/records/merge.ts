// Bringing entries of two devices together: a union that loses nothing, and what is taken away for good.
import { bodyText, type Entry } from './entry.ts';
import { byId, type Id, secondId } from './ids.ts';

/**
 * The union of both, by id. What stands in both is there once, so merging again changes nothing, and
 * the order of merging does not matter.
 *
 * Two entries with one id and different contents do not come about by chance; the likely cause is a
 * file that a person has edited. Neither can be known to be the true one, so both stay: the one whose
 * text is less keeps the id, the other gets a second id that follows from the first and its text.
 */
export function merged(one: readonly Entry[], other: readonly Entry[]): readonly Entry[] {
  const kept = new Map<Id, Entry>();
  for (const entry of [...one, ...other]) keep(kept, entry);
  return [...kept.values()].sort(byId);
}

function keep(kept: Map<Id, Entry>, arriving: Entry): void {
  let entry = arriving;
  // Each round moves one entry to another id; it ends where that id is free or holds the same.
  for (let holder = kept.get(entry.id); holder; holder = kept.get(entry.id)) {
    const [held, coming] = [bodyText(holder), bodyText(entry)];
    if (held === coming) return;
    const [less, more] = held < coming ? [holder, entry] : [entry, holder];
    kept.set(less.id, less);
    entry = { ...more, id: secondId(more.id, bodyText(more)) };
  }
  kept.set(entry.id, entry);
}

/** What of `after` is not in `before`, entry by entry: what a store must write. */
export function changedSince(before: readonly Entry[], after: readonly Entry[]): readonly Entry[] {
  const bodies = new Map(before.map((entry) => [entry.id, bodyText(entry)]));
  return after.filter((entry) => bodies.get(entry.id) !== bodyText(entry));
}

/** The ids to delete so that nothing is left of a child: its entries, and what takes them back. */
export function idsOfChild(entries: readonly Entry[], child: Id): readonly Id[] {
  return withTakenBack(entries, (entry) => 'child' in entry && entry.child === child);
}

/** The ids to delete so that nothing is left of the invented group. */
export function idsOfDemo(entries: readonly Entry[]): readonly Id[] {
  return entries.filter((entry) => entry.demo).map(({ id }) => id);
}

function withTakenBack(
  entries: readonly Entry[],
  isMeant: (entry: Entry) => boolean,
): readonly Id[] {
  const ids = new Set(entries.filter(isMeant).map(({ id }) => id));
  for (const entry of entries.filter(({ kind }) => kind === 'undone').sort(byId)) {
    if (entry.kind === 'undone' && ids.has(entry.entry)) ids.add(entry.id);
  }
  return [...ids];
}
