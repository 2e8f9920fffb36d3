// How a command stops: with refusals that become sentences on standard error and exit code 2.
import type { Refusal, Result } from '../base/index.ts';

/** Carries refusals up to the one place that prints them. */
export class Refused extends Error {
  readonly refusals: readonly Refusal[];

  constructor(...refusals: readonly Refusal[]) {
    super(refusals.map(({ code, at }) => `${code} at ${at}`).join('; '));
    this.refusals = refusals;
  }
}

/** The value of a result; throws `Refused` where there is none. */
export function accepted<T>(result: Result<T>): T {
  if (!result.ok) throw new Refused(...result.refusals);
  return result.value;
}

/** What the system says of a failed call, in plain words. */
export function systemReason(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  return REASONS[code] ?? (error instanceof Error ? error.message : String(error));
}

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file or folder',
  ENOTDIR: 'a part of its path is a file, not a folder',
  EISDIR: 'it is a folder',
  EACCES: 'permission is denied',
  EPERM: 'permission is denied',
  EROFS: 'the disk can only be read',
  ENOSPC: 'the disk is full',
  EDQUOT: 'the disk quota is used up',
  EFBIG: 'the file would be too big',
  ENAMETOOLONG: 'its name is too long',
  ELOOP: 'its links lead in a circle',
};
