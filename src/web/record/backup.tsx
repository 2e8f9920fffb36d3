// Backing up to a file and restoring from one, and how long this browser keeps what it has.
import { type ReactNode, useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { FileTrigger } from 'react-aria-components/FileTrigger';
import { type Refusal, type Result, refuse, told } from '../../base/index.ts';
import { BACKUP_CHARACTERS, backupText, type Entry, readBackup } from '../../records/index.ts';
import { FileSaid } from '../actions/file-said.tsx';
import { saveFile } from '../actions/save-file.ts';
import { today } from '../children/today.ts';
import { useGround } from '../children/use-ground.ts';
import { objectionOf, store } from '../children/use-records.ts';
import { isOtherFile } from '../making/other-file.ts';
import { holdWhile } from '../offline/holds.ts';
import type { Keeping } from '../store/keeping.ts';
import { words as shell } from '../words.ts';
import { words } from './words.ts';

/** No character takes more in UTF-8 for each unit that it counts as. */
const MOST_BYTES_PER_CHARACTER = 3;
/** What its reader calls it. */
const WHAT = 'backup';
const MOST_BYTES = BACKUP_CHARACTERS * MOST_BYTES_PER_CHARACTER;

export interface BackupProps {
  /** The real ones; no backup holds the invented. */
  readonly entries: readonly Entry[];
  readonly keeping: Keeping | undefined;
}

export function Backup({ entries, keeping }: BackupProps) {
  const { keepForGood } = useGround();
  const [outcome, setOutcome] = useState<ReactNode>('');
  const [isBackedUp, setIsBackedUp] = useState(false);
  const backUp = async () => {
    const text = backupText(entries);
    if (!text.ok) return setOutcome(await objectionOf(text));
    const name = words.backupName(today());
    saveFile(name, 'application/json', new TextEncoder().encode(text.value));
    setIsBackedUp(true);
    setOutcome(<FileSaid pieces={words.backedUp(entries.length)} name={name} />);
  };
  const restore = async (file: File | undefined) => {
    if (file !== undefined) setOutcome(await holdWhile(restored(file, keepForGood)));
  };
  const mayGo = keeping === 'may-go' || keeping === 'unknown';
  return (
    <section className="backup" aria-label={words.backup}>
      <h2 className="record-title">{words.backup}</h2>
      {entries.length > 0 && keeping !== undefined ? (
        <p className={mayGo && !isBackedUp ? 'reminder' : 'help'}>
          {words.keeping[keeping]} {mayGo && !isBackedUp ? words.noBackupYet : ''}
        </p>
      ) : null}
      <div className="row">
        <Button className="plain" isDisabled={entries.length === 0} onPress={() => void backUp()}>
          {words.backUp}
        </Button>
        <FileTrigger
          acceptedFileTypes={['application/json', '.json']}
          onSelect={(files) => void restore(files?.[0])}
        >
          <Button className="plain">{words.restore}</Button>
        </FileTrigger>
      </div>
      <p className="help">{words.restoreHelp}</p>
      <p className="outcome" aria-live="polite">
        {outcome}
      </p>
    </section>
  );
}

/** What came of merging the file into the store, in words; tells of it where something was added. */
async function restored(file: File, onAdded: () => void): Promise<string> {
  const read = await entriesIn(file).catch(() => undefined);
  if (read === undefined) return shell.fileUnreadable;
  const merged = read.ok ? await store.merge(read.value) : read;
  if (merged.ok && merged.value > 0) onAdded();
  return merged.ok
    ? words.restored(merged.value)
    : words.notRestored(await reasonOf(merged.refusals));
}

async function reasonOf(refusals: readonly Refusal[]): Promise<string> {
  if (isOtherFile(refusals, WHAT)) return words.noBackup;
  const placed = refusals.map((refusal) => ({
    ...refusal,
    at: refusal.at.replace(WHAT, words.backupPlace),
  }));
  return objectionOf({ ok: false, refusals: placed });
}

/** Its length is looked at first: a file of another kind may be far too long to be read. */
async function entriesIn(file: File): Promise<Result<readonly Entry[]>> {
  if (file.size > MOST_BYTES) {
    return refuse({
      code: 'too-big',
      at: WHAT,
      got: file.size,
      max: MOST_BYTES,
      unit: told('reasons', 'amount.bytes'),
    });
  }
  return readBackup(await file.text());
}
