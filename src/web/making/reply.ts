// What came of a question as a reply: the value, or the objections, or that the program itself went wrong.
import type { Result } from '../../base/index.ts';
import { brokenReply } from './broken-reply.ts';
import { objectionsOf } from './objections-of.ts';
import type { Reply } from './protocol.ts';

/** `activity` names the controls that the refusals are about; empty where there are none. */
export function replyOf<T>(result: Result<T>, activity: string): Reply<T> {
  return result.ok
    ? { ok: true, value: result.value }
    : { ok: false, objections: objectionsOf(result.refusals, activity) };
}

/** The reply of `make`, or that it broke; never throws. */
export function replyOrBroken<R>(make: () => R): R | Reply<never> {
  try {
    return make();
  } catch (defect) {
    return brokenReply(defect);
  }
}
