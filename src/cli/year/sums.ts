// What was written into a child's folder: the SHA-256 of each pack, a line for each, in the form that `sha256sum` writes
// and checks. A line is there before its pack is, so that of a run that was killed no pack is without one.
import { createHash, type Hash } from 'node:crypto';
import {
  closeSync,
  existsSync,
  fstatSync,
  fsyncSync,
  openSync,
  readFileSync,
  readSync,
} from 'node:fs';
import { join } from 'node:path';
import { Refused } from '../failure.ts';
import { openStaging, writeAll } from '../staging.ts';
import { attempt } from '../targets.ts';

const FILE = 'year.sha256';
const LINE = /^[0-9a-f]{64} {2}.+$/;
/** Where the name begins in a line. */
const NAME_AT = 64 + 2;

/** One pack, by its name in the folder. */
export interface Sum {
  readonly name: string;
  /** In small hexadecimal digits. */
  readonly sha256: string;
}

export function sumsFileIn(folder: string): string {
  return join(folder, FILE);
}

export function newHash(): Hash {
  return createHash('sha256');
}

/** Whether a pack of the folder is as it was made: such sums say it, by the folder's file as it stands now. */
export type IsAsMade = (name: string) => boolean;

export function readSums(folder: string): IsAsMade {
  const lines = new Set(wholeLines(textIn(folder)));
  return (name) => {
    const sha256 = sumOf(join(folder, name));
    return sha256 !== undefined && lines.has(lineOf({ name, sha256 }));
  };
}

/**
 * Puts the lines in the order of the packs, each once, so that the file is the same bytes whoever wrote what first. Where
 * that cannot be written they stay as they are, and say the same.
 */
export async function sortSums(folder: string): Promise<void> {
  const text = textIn(folder);
  const placeOf = (line: string) => line.slice(NAME_AT) + line;
  const lines = [...new Set(wholeLines(text))].sort((one, other) => {
    return placeOf(one) < placeOf(other) ? -1 : 1;
  });
  const sorted = lines.map((line) => `${line}\n`).join('');
  if (sorted === text) return;
  const staging = openStaging();
  try {
    await staging.write(sumsFileIn(folder), async (write) => write(Buffer.from(sorted)));
    staging.commit();
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
  } finally {
    staging.abandon();
  }
}

function textIn(folder: string): string {
  const path = sumsFileIn(folder);
  return existsSync(path) ? attempt(path, () => readFileSync(path, 'utf8')) : '';
}

/** A line that is not whole, as a disk that was full leaves it, says nothing. */
function wholeLines(text: string): readonly string[] {
  return text.split('\n').filter((line) => LINE.test(line));
}

/** `undefined` where the file cannot be read. */
function sumOf(path: string): string | undefined {
  try {
    return newHash().update(readFileSync(path)).digest('hex');
  } catch {
    return undefined;
  }
}

/** Adds lines at the end, where several workers may do so at once; they are on the disk when this comes back. */
export function addSums(folder: string, sums: readonly Sum[]): void {
  const path = sumsFileIn(folder);
  const lines = sums.map((sum) => `${lineOf(sum)}\n`).join('');
  attempt(path, () => {
    const file = openSync(path, 'a+');
    try {
      writeAll(file, Buffer.from(endsInALine(file) ? `\n${lines}` : lines));
      fsyncSync(file);
    } finally {
      closeSync(file);
    }
  });
}

function lineOf({ name, sha256 }: Sum): string {
  return `${sha256}  ${name}`;
}

/** Whether the last line was not written to its end. */
function endsInALine(file: number): boolean {
  const { size } = fstatSync(file);
  const last = Buffer.alloc(1);
  return size > 0 && readSync(file, last, 0, 1, size - 1) === 1 && last.toString() !== '\n';
}
