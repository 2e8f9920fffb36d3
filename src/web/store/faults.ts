// What the browser's database says when something goes wrong, as a refusal.
import type { Refusal, StorageFault } from '../../base/index.ts';

const WHERE = 'records';

/** Names of errors with which browsers refuse a database to a page at all. */
const DENIED = [
  'SecurityError',
  'InvalidStateError',
  'NotAllowedError',
  'TypeError',
  'ReferenceError',
];

export function storageRefusal(fault: StorageFault): Refusal {
  return { code: 'storage', at: WHERE, fault };
}

/** Why the database could not be opened. */
export function openingRefusal(error: unknown): Refusal {
  return DENIED.includes(nameOf(error)) ? storageRefusal('denied') : writingRefusal(error);
}

/** Why an open database could not be read or written. */
export function writingRefusal(error: unknown): Refusal {
  return storageRefusal(nameOf(error) === 'QuotaExceededError' ? 'full' : 'failed');
}

export function isOfLaterVersion(error: unknown): boolean {
  return nameOf(error) === 'VersionError';
}

function nameOf(error: unknown): string {
  return error instanceof Error || error instanceof DOMException ? error.name : '';
}
