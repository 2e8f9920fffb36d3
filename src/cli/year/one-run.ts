// One run at a time in a folder: each puts a file of its own there, and then looks for those of others.
import { closeSync, openSync, readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { YEAR_WORDS } from '../../words/index.ts';
import { isRunning, THIS_MACHINE } from '../processes.ts';
import { attempt, unwritable } from '../targets.ts';

/** The machine and the process that run are in the name, so that what a killed run leaves is in nobody's way. */
const NAME = /^\.samewise-([0-9a-f]{8})-(\d+)\.run$/;

/**
 * Takes the folder for this process; what comes back gives it free again. Refuses where another process has it, and says
 * which file to delete where that cannot be known for sure. Since each puts its file there before it looks, of two that
 * begin at the same moment at least one sees the other; it may be both.
 */
export function takeFolder(folder: string): () => void {
  const own = `.samewise-${THIS_MACHINE}-${process.pid}.run`;
  const path = join(folder, own);
  // One of this very name was left by an earlier process of the same number.
  attempt(path, () => closeSync(openSync(path, 'w')));
  const giveFree = (): void => rmSync(path, { force: true });
  try {
    for (const name of attempt(folder, () => readdirSync(folder))) {
      if (name !== own) passBy(folder, name);
    }
    return giveFree;
  } catch (error) {
    giveFree();
    throw error;
  }
}

/** Refuses where a file says that another run is there; removes one whose process on this machine has ended. */
function passBy(folder: string, name: string): void {
  const [, machine, pid] = NAME.exec(name) ?? [];
  if (machine === undefined || pid === undefined) return;
  const path = join(folder, name);
  const isHere = machine === THIS_MACHINE;
  if (isHere && !isRunning(Number(pid))) rmSync(path, { force: true });
  else throw unwritable(folder, YEAR_WORDS.taken(Number(pid), isHere, path));
}
