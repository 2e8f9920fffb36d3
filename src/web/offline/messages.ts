// What the app and its service worker say to each other.

/** A waiting version shall take over. */
export const CHANGE_OVER = 'change-over';
/** A tab has opened, and holds the lock of its version. */
export const HERE = 'here';

/** What the names of stores and locks begin with, apart for apps under different addresses; the version follows. */
export function prefixOf(scope: string): string {
  return `samewise ${scope} `;
}
