// Making a pack: all sheets of a recipe, no two alike, nothing handed over before all are proven.
import {
  accept,
  MAX_SEED,
  type Random,
  type Refusal,
  type Result,
  randomFrom,
  refuse,
  told,
} from '../base/index.ts';
import type { Framework } from './goals.ts';
import { pathText, refusalsUnder } from './path-text.ts';
import type { Recipe, RecipePart } from './recipe.ts';
import { makeSheet, type Sheet } from './sheet.ts';
import { printChoicesOf } from './sheet-spec.ts';
import { shownOn } from './shown-on.ts';
import type { ToCut } from './to-cut.ts';

export interface Pack {
  /** Absent for sheets that come from their codes. */
  readonly seed?: number;
  readonly sheets: readonly Sheet[];
  /** Curricula whose goals the adult's page names; absent: none. */
  readonly goals?: readonly Framework[];
  /** What is printed after each sheet to be cut out; absent: nothing. */
  readonly toCut?: readonly ToCut[];
}

export type SeededRecipe = Recipe & { readonly seed: number };

/** Called after each sheet, and once before the first. */
export type OnProgress = (made: number, all: number) => void;

/** Seeds tried for one sheet before the values are taken to hold no further different sheet. */
const MOST_DRAWS = 60;

/**
 * The pack of a recipe that is for nobody in particular: always the same one. Each part has a stream of its own, so that the first
 * sheets of a part stay as they are when more are asked for. Refuses what `makeSheet` refuses, and
 * more different sheets than the values allow.
 */
export function makePlainPack(
  recipe: SeededRecipe,
  onProgress: OnProgress = () => {},
): Result<Pack> {
  const random = randomFrom(recipe.seed);
  const all = recipe.parts.reduce((sum, part) => sum + part.sheets, 0);
  const making: Making = { recipe, seen: new Set(), sheets: [] };
  onProgress(0, all);
  for (const [index, part] of recipe.parts.entries()) {
    const stream = random.fork();
    for (let count = 0; count < part.sheets; count++) {
      const refusals = addSheet(making, part, stream, count);
      if (refusals) return refuse(...placed(refusals, index, recipe.parts.length));
      onProgress(making.sheets.length, all);
    }
  }
  return accept({ seed: recipe.seed, sheets: making.sheets });
}

interface Making {
  readonly recipe: Recipe;
  /** What each sheet so far shows. */
  readonly seen: Set<string>;
  readonly sheets: Sheet[];
}

/** Adds one sheet that is unlike all before it, or says why there is none. */
function addSheet(
  making: Making,
  part: RecipePart,
  random: Random,
  before: number,
): readonly Refusal[] | undefined {
  for (let draw = 0; draw < MOST_DRAWS; draw++) {
    const made = makePartSheet(making.recipe, part, random.int(0, MAX_SEED));
    if (!made.ok) return made.refusals;
    const shown = shownOn(made.value);
    if (making.seen.has(shown)) continue;
    making.seen.add(shown);
    making.sheets.push(made.value);
    return undefined;
  }
  return [
    {
      code: 'does-not-fit',
      at: `${part.activity} › sheets`,
      got: part.sheets,
      max: before,
      unit: told('reasons', 'amount.sheets.different'),
      advice: told('reasons', 'do.fewer', { count: before }),
    },
  ];
}

/** A sheet of a part, as the recipe prints it. Refuses what `makeSheet` refuses. */
export function makePartSheet(recipe: Recipe, part: RecipePart, seed: number): Result<Sheet> {
  const { activity, step, values, tasks } = part;
  return makeSheet({
    activity,
    step,
    values,
    seed,
    ...printChoicesOf(recipe),
    ...(tasks === undefined ? {} : { tasks }),
  });
}

/** The refusals with the part that they are about, where there are several. */
export function placed(
  refusals: readonly Refusal[],
  part: number,
  parts: number,
): readonly Refusal[] {
  return parts === 1 ? refusals : refusalsUnder(pathText('recipe', ['parts', part]), refusals);
}
