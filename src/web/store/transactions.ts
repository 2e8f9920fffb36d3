// Reading and writing entries; a write is one transaction, all of it or nothing, on the disk before it is called done.
import type { IDBPObjectStore } from 'idb';
import { accept, type Result, refuse } from '../../base/index.ts';
import type { Connection, Database, Schema } from './connection.ts';
import { writingRefusal } from './faults.ts';

/** The entries inside a transaction that may write. */
export type Entries = IDBPObjectStore<Schema, ['entries'], 'entries', 'readwrite'>;

/** What is to be done in one transaction; a refusal must come before anything is written. */
export type Work<T> = (entries: Entries) => Promise<Result<T>>;

export async function read<T>(
  connection: Connection,
  ask: (database: Database) => Promise<T>,
): Promise<Result<T>> {
  const opened = await connection.open();
  if (!opened.ok) return opened;
  try {
    return accept(await ask(opened.value));
  } catch (error) {
    return refuse(writingRefusal(error));
  }
}

export async function write<T>(connection: Connection, work: Work<T>): Promise<Result<T>> {
  const opened = await connection.open();
  if (!opened.ok) return opened;
  try {
    const transaction = opened.value.transaction('entries', 'readwrite', { durability: 'strict' });
    const working = work(transaction.store).catch((error: unknown) => {
      abort(transaction);
      throw error;
    });
    const [worked, ended] = await Promise.allSettled([working, transaction.done]);
    if (worked.status === 'rejected') throw transaction.error ?? worked.reason;
    if (ended.status === 'rejected') throw ended.reason;
    return worked.value;
  } catch (error) {
    return refuse(writingRefusal(error));
  }
}

/** Gives up the transaction, unless the fault has ended it already. */
function abort(transaction: { readonly abort: () => void }): void {
  try {
    transaction.abort();
  } catch {}
}
