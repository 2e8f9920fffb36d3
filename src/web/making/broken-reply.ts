// The reply where the program itself went wrong, such as a worker that did not start.
import { words } from '../words.ts';
import type { Reply } from './reply-form.ts';

/** `defect`: what was thrown, or what is told of it. */
export function brokenReply(defect: unknown): Reply<never> {
  const detail = defect instanceof Error ? defect.message : String(defect);
  return { ok: false, objections: [{ control: '', sentence: words.defect(detail) }] };
}
