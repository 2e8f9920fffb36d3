// The backup file: all real entries as readable JSON, written the same for the same entries, read with suspicion.
import { z } from 'zod';
import { accept, asGot, type Refusal, type Result, refuse, told } from '../base/index.ts';
import { closedObject, readJson, refusalsOf, wholeNumber } from '../sheets/index.ts';
import { type Entry, entryText } from './entry.ts';
import { entrySchema } from './entry-schema.ts';
import { byId } from './ids.ts';
import { merged } from './merge.ts';
import { migrated, STEPS, type Step, versionAfter } from './migrate.ts';

const FORMAT = 'samewise.records';
const WHAT = 'backup';

/** Most characters of a backup, about 300 000 results: thirty children for ten years and more. */
export const BACKUP_CHARACTERS = 100_000_000;

/** The file's text: an entry a line, by id. Entries of the invented group are left out. */
export function backupText(entries: readonly Entry[]): Result<string> {
  const lines = entries
    .filter((entry) => !entry.demo)
    .sort(byId)
    .map(entryText);
  const start = JSON.stringify({ format: FORMAT, version: versionAfter(STEPS) }).slice(0, -1);
  const text = `${start},"entries":[\n${lines.join(',\n')}\n]}\n`;
  return text.length > BACKUP_CHARACTERS ? refuse(tooBig(text.length)) : accept(text);
}

/**
 * The entries of a backup file of this version or an earlier one. Refuses, as a whole, text that is
 * too long, no JSON, another kind of file, of a later version, or damaged; names each fault's place.
 */
export function readBackup(text: string, steps: readonly Step[] = STEPS): Result<readonly Entry[]> {
  const json = readJson(text, WHAT, { characters: BACKUP_CHARACTERS });
  if (!json.ok) return json;
  const found = headSchema.safeParse(json.value);
  if (!found.success) return refuse(...refusalsOf(found.error, json.value, WHAT));
  const { version, entries } = found.data;
  if (version > versionAfter(steps)) return refuse(laterVersion(version, WHAT, steps));
  const today = { ...found.data, entries: allMigrated(entries, version, steps) };
  const read = fileSchema.safeParse(today);
  return read.success
    ? accept(merged([], read.data.entries))
    : refuse(...refusalsOf(read.error, today, WHAT));
}

/** The refusal of what a later version has written. */
export function laterVersion(got: number, at: string, steps: readonly Step[] = STEPS): Refusal {
  const known = Array.from({ length: versionAfter(steps) }, (_, index) => index + 1);
  return { code: 'unknown-version', at, got: asGot(got), known };
}

function allMigrated(entries: unknown, version: number, steps: readonly Step[]): unknown {
  return Array.isArray(entries) ? entries.map((entry) => migrated(entry, version, steps)) : entries;
}

const MOST_VERSIONS = 1_000_000;
const head = { format: z.literal(FORMAT), version: wholeNumber(1, MOST_VERSIONS) };

/** What a file of any version has; a later version may have whatever else it likes. */
const headSchema = z.looseObject(head);
const fileSchema = closedObject({ ...head, entries: z.array(entrySchema) });

function tooBig(got: number): Refusal {
  return {
    code: 'too-big',
    at: WHAT,
    got,
    max: BACKUP_CHARACTERS,
    unit: told('reasons', 'amount.characters'),
  };
}
