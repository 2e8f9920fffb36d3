// Names of files on their way, and what a run that was killed left of them: the next run in that folder takes it away.
import { randomBytes } from 'node:crypto';
import { readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { isRunning, THIS_MACHINE } from './processes.ts';

/** The machine and the process that write it are in the name, so that only what nobody writes any more is removed. */
const NAME = /^\.samewise-([0-9a-f]{8})-(\d+)-[0-9a-f]{8}\.part$/;

/** A path in `folder` that no other file has, for a file that is not ready yet. */
export function pathOnTheWay(folder: string): string {
  const name = `.samewise-${THIS_MACHINE}-${process.pid}-${randomBytes(4).toString('hex')}.part`;
  return join(folder, name);
}

/** Removes from `folder` the files on their way whose process on this machine has ended; none of that can fail a run. */
export function removeLeftBehind(folder: string): void {
  try {
    for (const name of readdirSync(folder)) {
      if (isLeftBehind(name)) rmSync(join(folder, name), { force: true });
    }
  } catch {
    // What cannot be listed or removed is in nobody's way.
  }
}

function isLeftBehind(name: string): boolean {
  const [, host, pid] = NAME.exec(name) ?? [];
  return host === THIS_MACHINE && !isRunning(Number(pid));
}
