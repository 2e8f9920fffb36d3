// Finds what was refused about one control.
import type { Objection } from '../making/protocol.ts';

/** The sentence that refuses what a control holds, if there is one. */
export function objectionTo(objections: readonly Objection[], control: string): string | undefined {
  return objections.find((objection) => objection.control === control)?.sentence;
}
