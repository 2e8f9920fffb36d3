// Forms that are pictures of a family's own, and which of them the sheet that is being made may show.
import type { FormId, Picture } from './form-names.ts';

export type OwnForm = `picture-own-${string}`;

/** The pictures of a family's own that a sheet may show. */
export interface PictureChoice {
  /** Their numbers, in order, each once. */
  readonly ids: readonly string[];
  /** Without the pictures that are always there. */
  readonly alone?: true;
}

/** More own pictures than this one sheet has not: its code names each. */
export const MOST_OWN_ON_SHEET = 8;

const START = 'picture-own-';

export function isOwnPicture(form: FormId): form is OwnForm {
  return form.startsWith(START);
}

export function ownFormOf(id: string): OwnForm {
  return `${START}${id}`;
}

export function idOfOwn(form: OwnForm): string {
  return form.slice(START.length);
}

/** The choice in the one form that a sheet has: sorted, each once; no field for none. */
export function picturesField(choice: PictureChoice | undefined): {
  readonly pictures?: PictureChoice;
} {
  if (choice === undefined || choice.ids.length === 0) return {};
  const ids = [...new Set(choice.ids)].sort();
  return { pictures: { ids, ...(choice.alone ? { alone: true } : {}) } };
}

let inForce: PictureChoice | undefined;

/**
 * Calls `make`, in which the content of pictures has these, too, or these alone. The choice holds for that call and
 * no longer, so that what is made hangs on what was asked alone.
 */
export function withPictures<T>(choice: PictureChoice | undefined, make: () => T): T {
  const before = inForce;
  inForce = choice;
  try {
    return make();
  } finally {
    inForce = before;
  }
}

/** The pictures that may be drawn now: the own ones first. */
export function picturesInForce(always: readonly Picture[]): readonly Picture[] {
  if (inForce === undefined) return always;
  const own = inForce.ids.map(ownFormOf);
  return inForce.alone ? own : [...own, ...always];
}

/** What tells this choice from every other, for who remembers what was measured; empty for none. */
export function picturesKey(): string {
  return inForce === undefined ? '' : ` ${inForce.ids.join(' ')}${inForce.alone ? ' alone' : ''}`;
}
