// The open database: made or brought to today's version when first needed, given up when a newer tab asks for it.
import { type DBSchema, type IDBPDatabase, type IDBPTransaction, openDB } from 'idb';
import { accept, type Result, refuse } from '../../base/index.ts';
import {
  type Entry,
  laterVersion,
  migrated,
  readEntry,
  type Step,
  versionAfter,
} from '../../records/index.ts';
import { isOfLaterVersion, openingRefusal, storageRefusal } from './faults.ts';

export interface Schema extends DBSchema {
  readonly entries: { readonly key: string; readonly value: Entry };
}

export type Database = IDBPDatabase<Schema>;
type Upgrade = IDBPTransaction<Schema, ArrayLike<'entries'>, 'versionchange'>;

export interface Connection {
  /** The database, opened if it is not. Refuses storage denied, a later version, an older tab in the way. */
  readonly open: () => Promise<Result<Database>>;
  readonly close: () => void;
}

/** A connection to the database of that name, whose version is the one that `steps` lead to. */
export function connectionTo(name: string, steps: readonly Step[]): Connection {
  let opening: Promise<Result<Database>> | undefined;
  let isBlocked = false;
  const forget = () => {
    opening = undefined;
  };
  const callbacks: Callbacks = {
    onGone: forget,
    onBlocked: (whether) => {
      isBlocked = whether;
    },
  };
  const open = async () => {
    const opened = await openOrRefuse(name, steps, callbacks);
    // A refusal is not kept: the next call tries again.
    if (!opened.ok) forget();
    return opened;
  };
  return {
    open: async () => {
      // A second request would wait silently behind the blocked one.
      if (isBlocked) return refuse(storageRefusal('blocked'));
      opening ??= open();
      return opening;
    },
    close: () => {
      void opening?.then((opened) => opened.ok && opened.value.close());
      forget();
    },
  };
}

interface Callbacks {
  readonly onGone: () => void;
  readonly onBlocked: (whether: boolean) => void;
}

async function openOrRefuse(
  name: string,
  steps: readonly Step[],
  callbacks: Callbacks,
): Promise<Result<Database>> {
  try {
    return await openOrBlocked(name, steps, callbacks);
  } catch (error) {
    if (!isOfLaterVersion(error)) return refuse(openingRefusal(error));
    const version = await versionOf(name).catch(() => versionAfter(steps) + 1);
    return refuse(laterVersion(version, 'records', steps));
  }
}

/** Answers as soon as an older tab is in the way; what opens once the way is free is closed again. */
async function openOrBlocked(
  name: string,
  steps: readonly Step[],
  { onGone, onBlocked }: Callbacks,
): Promise<Result<Database>> {
  let answerBlocked: (refused: Result<Database>) => void = () => {};
  const blocked = new Promise<Result<Database>>((resolve) => {
    answerBlocked = resolve;
  });
  const opening = openDB<Schema>(name, versionAfter(steps), {
    upgrade: (database, from, _to, transaction) => {
      if (from === 0) database.createObjectStore('entries', { keyPath: 'id' });
      else migrateAll(transaction, from, steps);
    },
    blocked: () => {
      onBlocked(true);
      answerBlocked(refuse(storageRefusal('blocked')));
      opening
        .then((database) => database.close())
        .catch(() => {})
        .finally(() => onBlocked(false));
    },
    // A newer Samewise wants to bring the entries to its version: this tab lets go, and asks anew.
    blocking: (_from, _to, event) => {
      if (event.target instanceof IDBDatabase) event.target.close();
      onGone();
    },
    terminated: onGone,
  });
  return Promise.race([opening.then(accept), blocked]);
}

/** All entries in one transaction: if one does not become what it should, all stay as they are. */
function migrateAll(transaction: Upgrade, from: number, steps: readonly Step[]): void {
  // The fault itself reaches whoever opens the database.
  transaction.done.catch(() => {});
  const store = transaction.objectStore('entries');
  const all = async () => {
    for (const entry of await store.getAll()) {
      const read = readEntry(migrated(entry, from, steps), 'records');
      if (!read.ok) throw new Error('records: an entry cannot be brought to this version');
      await store.put(read.value);
    }
  };
  all().catch(() => transaction.abort());
}

/** The version that is there, without opening it; rejects where the browser does not say. */
async function versionOf(name: string): Promise<number> {
  const databases = await indexedDB.databases();
  const { version } = databases.find((database) => database.name === name) ?? {};
  if (version === undefined) throw new Error(`records: no database ${name}`);
  return version;
}
