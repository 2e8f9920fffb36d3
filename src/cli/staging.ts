// Writing aside: every file is written in full beside its target and takes its place only when all are ready.
import {
  chmodSync,
  closeSync,
  fsyncSync,
  mkdirSync,
  openSync,
  renameSync,
  rmdirSync,
  rmSync,
  writeSync,
} from 'node:fs';
import { dirname } from 'node:path';
import { pathOnTheWay, removeLeftBehind } from './left-behind.ts';
import { attempt, targetOf, unwritable, whatStandsAt } from './targets.ts';

/** Fills a file piece by piece. */
export type Fill = (write: (piece: Uint8Array) => void) => Promise<void>;

/** Files on their way; what was there before stays whole until `commit`. */
export interface Staging {
  /** Writes one file aside. */
  readonly write: (path: string, fill: Fill) => Promise<void>;
  /** Makes a folder if there is none; it goes again with `abandon`. */
  readonly folder: (path: string) => void;
  /** Puts every file in its place, in the order in which they were written; each is the old one whole or the new one whole. */
  readonly commit: () => void;
  /** Removes all that was written aside; nothing after `commit`. */
  readonly abandon: () => void;
}

interface StagedFile {
  readonly temporary: string;
  readonly target: string;
  /** Permissions of the file that is replaced. */
  readonly mode: number | undefined;
}

export function openStaging(): Staging {
  const files: StagedFile[] = [];
  const folders: string[] = [];
  const cleared = new Set<string>();
  /** In the folder of the target, so that a rename suffices. */
  const pathBeside = (target: string) => {
    const folder = dirname(target);
    if (!cleared.has(folder)) removeLeftBehind(folder);
    cleared.add(folder);
    return pathOnTheWay(folder);
  };
  return {
    write: async (path, fill) => {
      const { target, mode } = targetOf(path);
      const temporary = pathBeside(target);
      const file = attempt(path, () => openSync(temporary, 'wx'));
      files.push({ temporary, target, mode });
      await fillFile(file, path, fill);
    },
    folder: (path) => {
      if (makeFolder(path)) folders.push(path);
    },
    commit: () => {
      for (let file = files[0]; file; file = files[0]) {
        place(file);
        files.shift();
      }
      folders.length = 0;
    },
    abandon: () => {
      for (const { temporary } of files.splice(0)) rmSync(temporary, { force: true });
      for (const folder of folders.splice(0)) removeEmptyFolder(folder);
    },
  };
}

async function fillFile(file: number, path: string, fill: Fill): Promise<void> {
  try {
    await fill((piece) => attempt(path, () => writeAll(file, piece)));
    attempt(path, () => fsyncSync(file));
  } finally {
    closeSync(file);
  }
}

/** Writes to the end, however little the system takes at a time. */
export function writeAll(file: number, piece: Uint8Array): void {
  for (let done = 0; done < piece.length; ) done += writeSync(file, piece, done);
}

function place({ temporary, target, mode }: StagedFile): void {
  attempt(target, () => {
    if (mode !== undefined) chmodSync(temporary, mode);
    renameSync(temporary, target);
  });
}

/** Whether a folder was made; refuses where something else stands there. */
function makeFolder(path: string): boolean {
  const old = whatStandsAt(path);
  if (old?.isDirectory()) return false;
  if (old) throw unwritable(path, 'it is a file, not a folder');
  attempt(path, () => mkdirSync(path));
  return true;
}

function removeEmptyFolder(path: string): void {
  try {
    rmdirSync(path);
  } catch {
    // Something else was put there meanwhile: it is not ours to remove.
  }
}
