// Files of another kind, or cut off: what their reader found inside helps nobody who chose the wrong one.
import type { Refusal } from '../../base/index.ts';

/** Whether these are the refusals of a file that is not at all what was to be read; `what` is what that is. */
export function isOtherFile(refusals: readonly Refusal[], what: string): boolean {
  return refusals.some(
    ({ code, at }) =>
      at === `${what} › format` ||
      (at === what && (code === 'wrong-type' || code === 'unreadable')) ||
      (at.startsWith(`${what} › line `) && code === 'unreadable'),
  );
}
