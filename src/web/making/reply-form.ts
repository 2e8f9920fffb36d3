// The form of every reply of a worker: what was asked for, or why there is none.

/** Why something cannot be made: the control it is about, where there is one, and the sentence. */
export interface Objection {
  readonly control: string;
  readonly sentence: string;
}

export type Reply<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly objections: readonly Objection[] };

/** All that is said against it, one sentence after the other. */
export function sentencesOf(objections: readonly Pick<Objection, 'sentence'>[]): string {
  return objections.map(({ sentence }) => sentence).join(' ');
}
