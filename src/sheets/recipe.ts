// A recipe: what a pack is made of.
import type { ActivityId, Value } from '../activities/index.ts';
import { type Refusal, told } from '../base/index.ts';
import type { Framework } from './goals.ts';
import type { Made } from './made.ts';
import { MOST_SHEETS, type PrintChoices } from './sheet-spec.ts';
import type { Stock } from './stock-facts.ts';
import type { ToCut } from './to-cut.ts';

/** Some sheets of one activity at one step. */
export interface RecipePart {
  readonly activity: ActivityId;
  readonly step: number;
  /** Parameters that differ from the step's. */
  readonly values: Readonly<Record<string, Value>>;
  /** Tasks a sheet; absent: the step's own number, or as many of them as fit the page. */
  readonly tasks?: number;
  readonly sheets: number;
}

/** A child of a group. */
export interface GroupChild {
  readonly name: string;
  /** How many steps above (or, negative, below) the recipe's its sheets are; absent: none. */
  readonly shift?: number;
}

export const SORTINGS = ['child', 'activity'] as const;
export type Sorting = (typeof SORTINGS)[number];

export interface Recipe extends PrintChoices {
  /** Absent: whoever makes the pack chooses one. */
  readonly seed?: number;
  readonly parts: readonly RecipePart[];
  /** Whether the letters that each child's sheets are about are those of its own name; absent: not. */
  readonly ownLetters?: boolean;
  /** Curricula whose goals the adult's page names; absent: none. */
  readonly goals?: readonly Framework[];
  /** What is printed after each sheet to be cut out; absent: nothing. */
  readonly toCut?: readonly ToCut[];
  /** Each child gets all parts, on sheets of its own; absent: the pack is for nobody in particular. */
  readonly children?: readonly GroupChild[];
  /** How the sheets of a group lie; absent: by child. */
  readonly sortedBy?: Sorting;
  /** The house whose things alone the pack is made with; absent: any. */
  readonly onlyWith?: Stock;
  /** How the sheets come about; absent: printed. */
  readonly made?: Made;
  /** By hand, in the layout that is quickest by hand: one task on a page. */
  readonly quick?: boolean;
}

/** A school has more; make a pack for each room. */
export const MOST_CHILDREN = 500;
/** Longer than any name; a limit against slips. */
export const LONGEST_NAME = 200;
/** No ladder is longer. */
export const MOST_SHIFT = 31;

/** More sheets than a pack may hold, over all children. */
export function countRefusals({ parts, children }: Recipe): readonly Refusal[] {
  const each = parts.reduce((sum, part) => sum + part.sheets, 0);
  const sheets = each * (children?.length ?? 1);
  return sheets > MOST_SHEETS
    ? [
        {
          code: 'too-big',
          at: 'recipe › parts',
          got: sheets,
          max: MOST_SHEETS,
          unit: told('reasons', 'amount.sheets'),
        },
      ]
    : [];
}
