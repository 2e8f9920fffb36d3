// Which process of which machine a file belongs to, as names of files say it.
import { createHash } from 'node:crypto';
import { hostname } from 'node:os';

/** This machine, in 8 characters: a folder may be shared between several. */
export const THIS_MACHINE = createHash('sha256').update(hostname()).digest('hex').slice(0, 8);

/** Whether a process of this machine is there, whoever's it is. */
export function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    // A process of somebody else, which may not be asked, runs.
    return error instanceof Error && 'code' in error && error.code === 'EPERM';
  }
}
