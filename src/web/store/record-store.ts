// The record store of this browser: entries are added, merged and read; each change is one transaction or nothing.

import { accept, type Result } from '../../base/index.ts';
import {
  changedSince,
  clockTime,
  type Draft,
  type Entry,
  ID_RANDOM_BYTES,
  type Id,
  idsOfChild,
  idsOfDemo,
  idsOfPicture,
  merged,
  newId,
  readEntry,
  STEPS,
  type Step,
  stamped,
} from '../../records/index.ts';
import { changesOf } from './changes.ts';
import { connectionTo } from './connection.ts';
import { RECORDS_DATABASE } from './database-name.ts';
import { type Entries, read, type Work, write } from './transactions.ts';

export interface RecordStore {
  /** All entries, by id. */
  readonly read: () => Promise<Result<readonly Entry[]>>;
  readonly count: () => Promise<Result<number>>;
  /** Adds the drafts as entries, with ids later than all that are there; all of them or none. */
  readonly append: (drafts: readonly Draft[]) => Promise<Result<readonly Entry[]>>;
  /** Adds what is not there yet, of a backup or the invented group; answers how many that were. */
  readonly merge: (entries: readonly Entry[]) => Promise<Result<number>>;
  /** Deletes for good all entries of a child; answers how many. A backup file that holds them still does. */
  readonly deleteChild: (child: Id) => Promise<Result<number>>;
  /** Deletes for good a picture of the family's own, and answers its entries, with which `merge` brings it back. */
  readonly deletePicture: (picture: string) => Promise<Result<readonly Entry[]>>;
  /** Deletes for good the invented group; answers how many entries that were. */
  readonly deleteDemo: () => Promise<Result<number>>;
  /** Calls back after each change, in this tab or another; the answer ends that. */
  readonly onChange: (listener: () => void) => () => void;
  readonly close: () => void;
}

export interface StoreOptions {
  readonly name?: string;
  /** Milliseconds since 1970. */
  readonly now?: () => number;
  readonly steps?: readonly Step[];
}

/** The store; nothing is opened before it is first used. */
export function openRecordStore(options: StoreOptions = {}): RecordStore {
  const { name = RECORDS_DATABASE, now = Date.now, steps = STEPS } = options;
  const connection = connectionTo(name, steps);
  const changes = changesOf(name);
  const change = async <T>(work: Work<T>): Promise<Result<T>> => {
    const changed = await write(connection, work);
    if (changed.ok) changes.tell();
    return changed;
  };
  return {
    read: () => read(connection, (database) => database.getAll('entries')),
    count: () => read(connection, (database) => database.count('entries')),
    append: (drafts) => change((entries) => appendAll(entries, drafts, clockTime(now()))),
    merge: (coming) => change((entries) => mergeAll(entries, coming)),
    deleteChild: (child) =>
      change((entries) => deleteThose(entries, (all) => idsOfChild(all, child))),
    deletePicture: (picture) => change((entries) => takePicture(entries, picture)),
    deleteDemo: () => change((entries) => deleteThose(entries, idsOfDemo)),
    onChange: changes.listen,
    close: () => {
      connection.close();
      changes.close();
    },
  };
}

/** All are checked before the first is written: what is stored can be read back from a backup. */
async function appendAll(
  entries: Entries,
  drafts: readonly Draft[],
  now: number,
): Promise<Result<readonly Entry[]>> {
  let last = (await entries.openKeyCursor(null, 'prev'))?.key;
  const added: Entry[] = [];
  for (const draft of drafts) {
    const random = crypto.getRandomValues(new Uint8Array(ID_RANDOM_BYTES));
    last = newId({ now, random, ...(last === undefined ? {} : { last }) });
    const checked = readEntry(stamped(draft, last, now), draft.kind);
    if (!checked.ok) return checked;
    added.push(checked.value);
  }
  await Promise.all(added.map((entry) => entries.add(entry)));
  return accept(added);
}

async function mergeAll(entries: Entries, coming: readonly Entry[]): Promise<Result<number>> {
  const before = await entries.getAll();
  const after = merged(before, coming);
  await Promise.all(changedSince(before, after).map((entry) => entries.put(entry)));
  return accept(after.length - before.length);
}

async function deleteThose(
  entries: Entries,
  idsOf: (all: readonly Entry[]) => readonly Id[],
): Promise<Result<number>> {
  const ids = idsOf(await entries.getAll());
  await Promise.all(ids.map((id) => entries.delete(id)));
  return accept(ids.length);
}

async function takePicture(entries: Entries, picture: string): Promise<Result<readonly Entry[]>> {
  const all = await entries.getAll();
  const ids = idsOfPicture(all, picture);
  await Promise.all(ids.map((id) => entries.delete(id)));
  return accept(all.filter(({ id }) => ids.includes(id)));
}
