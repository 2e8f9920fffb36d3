// What the browser runs for the tests of the record store: the store and its backup, within reach of a test.
import { backupText, type Entry, readBackup, STEPS, type Step } from '../../src/records/index.ts';
import { askToKeep, keepingNow } from '../../src/web/store/keeping.ts';
import { openRecordStore, type RecordStore } from '../../src/web/store/record-store.ts';

export interface Kept {
  readonly open: typeof openRecordStore;
  readonly store: RecordStore;
  readonly keepingNow: typeof keepingNow;
  readonly askToKeep: typeof askToKeep;
  readonly backup: () => Promise<string>;
  /** Merges the file into the store as the app would; answers how many entries that added. */
  readonly restore: (text: string) => Promise<number>;
  /** The steps to an invented next form of the entries. */
  readonly nextSteps: readonly Step[];
  /** Steps to a next form that no entry comes to. */
  readonly brokenSteps: readonly Step[];
}

declare global {
  interface Window {
    kept: Kept;
  }
}

async function allEntries(): Promise<readonly Entry[]> {
  const read = await window.kept.store.read();
  if (!read.ok) throw new Error(JSON.stringify(read.refusals));
  return read.value;
}

window.kept = {
  open: openRecordStore,
  store: openRecordStore(),
  keepingNow,
  askToKeep,
  backup: async () => {
    const text = backupText(await allEntries());
    if (!text.ok) throw new Error(JSON.stringify(text.refusals));
    return text.value;
  },
  restore: async (text) => {
    const entries = readBackup(text);
    if (!entries.ok) throw new Error(JSON.stringify(entries.refusals));
    const merged = await window.kept.store.merge(entries.value);
    if (!merged.ok) throw new Error(JSON.stringify(merged.refusals));
    return merged.value;
  },
  brokenSteps: [...STEPS, () => null],
  nextSteps: [
    ...STEPS,
    (entry) =>
      typeof entry === 'object' && entry !== null && 'nickname' in entry
        ? { ...entry, nickname: `${entry.nickname} of old` }
        : entry,
  ],
};
