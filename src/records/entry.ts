// What is kept: entries that never change, each a child, a result, a plan, a stock, or the taking back of one of them.
import type { Deed } from '../activities/index.ts';
import type { OwnPicture } from '../figures/index.ts';
import type { Sight } from '../palette/index.ts';
import type { Stock } from '../sheets/index.ts';
import type { Id } from './ids.ts';

export {
  PRINTERS,
  type Printer,
  type StickerStock,
  type Stock,
  TOOLS,
  type Tool,
} from '../sheets/index.ts';

export const WRITING_HANDS = ['left', 'right', 'either'] as const;
export type WritingHand = (typeof WRITING_HANDS)[number];

/** As a professional found it; `red-green`: protan or deutan, not known which. */
export type ColourVision = Sight | 'red-green';

export const OUTCOMES = ['right', 'with-help', 'not-yet', 'not-tried'] as const;
export type Outcome = (typeof OUTCOMES)[number];

/** The most help that was given, in the order of least to most prompting (common practice, no source). */
export const HELP_LEVELS = ['none', 'said-again', 'pointed', 'shown-one', 'done-together'] as const;
export type HelpLevel = (typeof HELP_LEVELS)[number];

export const MOODS = ['glad', 'calm', 'restless', 'tired', 'upset'] as const;
export type Mood = (typeof MOODS)[number];

/** Why a sheet was planned; `asked`: a person wanted it so. */
export const WHYS = [
  'first-of-skill',
  'nearest',
  'tells-more',
  'rested',
  'fits',
  'favourite',
  'favoured',
  'moved-on',
  'asked',
] as const;
export type Why = (typeof WHYS)[number];

/** A month `YYYY-MM` or a day `YYYY-MM-DD` as it stands in the calendar of the place. */
export type Month = string;
export type Day = string;

interface EntryBase {
  readonly id: Id;
  /** When it was recorded, in milliseconds since 1970, as the device's clock had it. */
  readonly at: number;
  /** Part of an invented group for trying out; never seen together with real entries. */
  readonly demo?: true;
}

/** Everything about a child that may be left out; `null` takes back what an earlier entry said. */
export interface ChildFacts {
  readonly birthMonth?: Month | null;
  readonly writingHand?: WritingHand | null;
  readonly colourVision?: ColourVision | null;
  /** Language tags such as `en` or `pt-BR`, the strongest first. */
  readonly languages?: readonly string[] | null;
  /** Deeds that this child's hand does well. */
  readonly deeds?: readonly Deed[] | null;
}

/** A child made or changed: what stands here replaces what earlier entries of the same child said. */
export interface ChildEntry extends EntryBase, ChildFacts {
  readonly kind: 'child';
  /** The id of the child's first entry. */
  readonly child: Id;
  readonly nickname?: string;
}

/** What was chosen instead of the right one: its place among the figures of the task from 0, or its name. */
export interface Instead {
  readonly place?: number;
  readonly label?: string;
}

export interface TaskResult {
  readonly outcome: Outcome;
  readonly instead?: readonly Instead[];
}

/** What a child did with a sheet. */
export interface ResultEntry extends EntryBase {
  readonly kind: 'result';
  readonly child: Id;
  /** The sheet code as it is printed. */
  readonly code: string;
  /** The day on which the sheet was given. */
  readonly day: Day;
  /** In the order of the sheet. */
  readonly tasks: readonly TaskResult[];
  /** One tap told all tasks, which is rounder than one for each. */
  readonly atOnce?: true;
  readonly help?: HelpLevel;
  readonly mood?: Mood;
  readonly minutes?: number;
  readonly note?: string;
}

export interface PlannedSheet {
  /** The sheet code as it is printed. */
  readonly code: string;
  readonly why: Why;
}

/**
 * What is meant to be given to a child on a day, in order. Replaces what earlier entries planned for
 * the same child and day; with no sheets, nothing.
 */
export interface PlanEntry extends EntryBase {
  readonly kind: 'plan';
  readonly child: Id;
  readonly day: Day;
  readonly sheets: readonly PlannedSheet[];
}

/** A count of all that is in the house; replaces every earlier one. */
export interface StockEntry extends EntryBase, Stock {
  readonly kind: 'stock';
}

/** A picture of the family's own, or a new name for it: what stands here replaces what earlier ones of its number said. */
export interface PictureEntry extends EntryBase, OwnPicture {
  readonly kind: 'picture';
}

/** Takes back another entry, which may itself be of this kind. */
export interface UndoneEntry extends EntryBase {
  readonly kind: 'undone';
  readonly entry: Id;
}

/** Takes a child and all that is recorded of it out of view. */
export interface ChildGoneEntry extends EntryBase {
  readonly kind: 'child-gone';
  readonly child: Id;
}

export type Entry =
  | ChildEntry
  | ResultEntry
  | PlanEntry
  | StockEntry
  | PictureEntry
  | UndoneEntry
  | ChildGoneEntry;

type Unstamped<E> = E extends Entry ? Omit<E, 'id' | 'at'> : never;
/** An entry before it has its id and time; a new child has no id yet either. */
export type Draft =
  | Exclude<Unstamped<Entry>, { readonly kind: 'child' }>
  | (Omit<Unstamped<ChildEntry>, 'child'> & { readonly child?: Id });

/** The draft as an entry. */
export function stamped(draft: Draft, id: Id, at: number): Entry {
  return draft.kind === 'child'
    ? { id, at, ...draft, child: draft.child ?? id }
    : { id, at, ...draft };
}

/** The entry's text, its keys always in the same order: equal texts are equal entries. */
export function entryText(entry: Entry): string {
  const { id, at, kind, ...rest } = entry;
  return JSON.stringify({ id, at, kind, ...inOrder(rest) });
}

/** The text of everything but the id. */
export function bodyText({ id, ...body }: Entry): string {
  return JSON.stringify(inOrder(body));
}

function inOrder(value: object): object {
  return Object.fromEntries(
    Object.entries(value)
      .sort(([one], [other]) => (one < other ? -1 : 1))
      .map(([key, inner]) => [key, inOrderInside(inner)]),
  );
}

function inOrderInside(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(inOrderInside);
  return typeof value === 'object' && value !== null ? inOrder(value) : value;
}
