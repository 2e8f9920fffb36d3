// A refusal says, as data, why something that a person asked for cannot be done; `words` makes the sentence.

import type { Told } from './told.ts';

/** A value as it came in, cut to what a message can carry. */
export type Got = string | number | boolean | null;

/**
 * What keeps a browser from storing: it allows no storage here, it has no room, another tab holds the
 * older form open, or it gave up for a reason of its own.
 */
export type StorageFault = 'denied' | 'full' | 'blocked' | 'failed';

/** A thing to make sheets with: stickers of a colour and size, a crayon of a colour, a paper, or a tool by its name. */
export interface Thing {
  readonly what:
    | 'sticker'
    | 'crayon'
    | 'paper'
    | 'pencil'
    | 'scissors'
    | 'glue'
    | 'counters'
    | 'pockets';
  readonly colour?: string;
  readonly diameterMm?: number;
  readonly count?: number;
  /** Name of a paper, such as `A4`. */
  readonly paper?: string;
}

/**
 * What a refusal says of its own: a message in the reader's language, or English text of the command line, which speaks
 * nothing else.
 */
export type Reason = Told | string;

/** Why a request is refused: a code, where (`in-every-box › boxes`), and what the sentence needs. */
export type Refusal = { readonly at: string } & (
  | {
      readonly code: 'out-of-range';
      readonly got: Got;
      readonly min: number;
      readonly max: number;
      readonly because?: Reason;
    }
  | {
      readonly code: 'not-a-choice';
      readonly got: Got;
      readonly choices: readonly string[];
      readonly nearest?: string;
      readonly because?: Reason;
    }
  | { readonly code: 'wrong-type'; readonly got: Got; readonly expected: Reason }
  | { readonly code: 'missing'; readonly expected: Reason }
  | {
      readonly code: 'unknown-field';
      readonly got: Got;
      readonly choices: readonly string[];
      readonly nearest?: string;
    }
  | { readonly code: 'too-big'; readonly got: number; readonly max: number; readonly unit: Reason }
  | { readonly code: 'unreadable'; readonly got: Got; readonly expected: Reason }
  | { readonly code: 'wrong-check'; readonly got: string }
  | { readonly code: 'unknown-version'; readonly got: Got; readonly known: readonly number[] }
  | {
      readonly code: 'does-not-fit';
      readonly got: number;
      readonly max: number;
      readonly unit: Reason;
      readonly advice: Reason;
    }
  | {
      readonly code: 'not-in-the-house';
      /** Sheets that are told of: all that were asked for, or the first of very many. */
      readonly sheets: number;
      /** How many were asked for, where that is more; then more must be added, too. */
      readonly of?: number;
      /** Fewer sheets that can be had; 0: not known, or none. */
      readonly possible: number;
      readonly needs: readonly Thing[];
      /** What there is of the kinds that are needed. */
      readonly has: readonly Thing[];
      /** With these as well, all sheets could be had. */
      readonly add: readonly Thing[];
    }
  | { readonly code: 'not-proven'; readonly reason: Reason }
  | {
      /** What the 50 mm line measured, and what can be corrected, in mm; with a paper, on that paper. */
      readonly code: 'not-correctable';
      readonly got: number;
      readonly least: number;
      readonly most: number;
      readonly paper?: string;
    }
  | { readonly code: 'unwritable'; readonly reason: Reason }
  /** Why a change of a sheet by its user cannot be made; it stays as it was. */
  | { readonly code: 'unchangeable'; readonly reason: Reason }
  /** Pictures of a family's own that are named and not known here, by their numbers. */
  | { readonly code: 'pictures-not-here'; readonly got: string }
  | { readonly code: 'storage'; readonly fault: StorageFault }
);

/** A value, or why there is none. */
export type Result<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

export function accept<T>(value: T): Result<T> {
  return { ok: true, value };
}

export function refuse(...refusals: readonly Refusal[]): Result<never> {
  return { ok: false, refusals };
}

/** Any value cut down to what a message can carry: long text is shortened, objects are named by kind. */
export function asGot(value: unknown): Got {
  if (typeof value === 'string') return value.length > 60 ? `${value.slice(0, 57)}…` : value;
  if (typeof value === 'number') return Number.isFinite(value) ? value : String(value);
  if (typeof value === 'boolean' || value === null) return value;
  if (Array.isArray(value)) return `a list of ${value.length}`;
  return value === undefined ? 'nothing' : `a ${typeof value}`;
}
