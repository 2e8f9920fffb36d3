// Places to write to: what stands there now, and why nothing can be written there.
import { accessSync, constants, lstatSync, realpathSync, type Stats, statSync } from 'node:fs';
import { dirname } from 'node:path';
import { Refused, systemReason } from './failure.ts';

export interface Target {
  /** A link stays a link: the file that it points at is what is replaced. */
  readonly target: string;
  /** Permissions of the file that stands there; absent: none does. */
  readonly mode: number | undefined;
}

/** Where a file at `path` really stands; refuses folders, devices and files that may not be written. */
export function targetOf(path: string): Target {
  const old = whatStandsAt(path);
  if (!old) return { target: path, mode: undefined };
  if (old.isDirectory()) throw unwritable(path, 'it is a folder');
  if (!old.isFile()) throw unwritable(path, 'it is not an ordinary file');
  const target = realpathSync(path);
  // A rename would replace even a file that its owner has locked.
  attempt(path, () => accessSync(target, constants.W_OK));
  return { target, mode: old.mode & 0o777 };
}

/** Refuses a file that cannot be put at `path`, as far as that can be known before. */
export function refuseUnwritableFile(path: string): void {
  const { target } = targetOf(path);
  attempt(path, () => accessSync(dirname(target), constants.W_OK));
}

/** Refuses a folder that cannot be filled, or made, at `path`. */
export function refuseUnwritableFolder(path: string): void {
  const old = whatStandsAt(path);
  if (old && !old.isDirectory()) throw unwritable(path, 'it is a file, not a folder');
  attempt(path, () => accessSync(old ? path : dirname(path), constants.W_OK));
}

export function whatStandsAt(path: string): Stats | undefined {
  try {
    return statSync(path);
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? error.code : '';
    if (code !== 'ENOENT') throw unwritable(path, systemReason(error));
    const isLink = lstatSync(path, { throwIfNoEntry: false })?.isSymbolicLink() ?? false;
    if (isLink) throw unwritable(path, 'it is a link to nothing');
    return undefined;
  }
}

export function unwritable(path: string, reason: string): Refused {
  return new Refused({ code: 'unwritable', at: path, reason });
}

/** The call's value; what the system refuses becomes a refusal that names the path. */
export function attempt<T>(path: string, call: () => T): T {
  try {
    return call();
  } catch (error) {
    throw unwritable(path, systemReason(error));
  }
}
