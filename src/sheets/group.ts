// A pack for a group: each child's own sheets, different ones and equally hard for all at the same step.
import { activityOf } from '../activities/index.ts';
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
import { difficultyOf, sheetDifficulty } from '../learner/index.ts';
import { makePartSheet, type OnProgress, type Pack, placed, type SeededRecipe } from './pack.ts';
import type { GroupChild, Recipe, RecipePart, Sorting } from './recipe.ts';
import type { Sheet, SheetChild } from './sheet.ts';
import { shownOn } from './shown-on.ts';

/** All sheets of one part at one step are within so many logits of each other. */
export const EQUAL_LOGITS = 0.25;
/** Sheets that the middle is taken from. */
const LEAST_DRAWN = 9;
/** So many seeds in a row that give nothing new: the values hold no more that are equally hard. */
const MOST_IN_VAIN = 300;

/** Sheets of one part that are wanted at one step. */
interface Lot {
  readonly part: RecipePart;
  readonly step: number;
  /** Places of the children who are at the step. */
  readonly children: readonly number[];
  readonly wanted: number;
  readonly random: Random;
  /** The name whose letters they are about; empty: what the recipe says. */
  readonly named: Pick<Recipe, 'letters'>;
}

interface PlacedLot extends Lot {
  /** Of its part in the recipe, 0 upward. */
  readonly place: number;
}

/**
 * The pack of a group, sheets by child or by activity as the recipe asks, each with its child's name. No two sheets
 * are alike. Those of one part and step differ by at most `EQUAL_LOGITS`. The sheets of a step stay as they are when
 * a child of another step is added. Of the first children alone, where so many are said, the very sheets that they have
 * in the whole pack. Refuses what `makeSheet` refuses, and more equally hard sheets than there are.
 */
export function makeGroupPack(
  recipe: SeededRecipe,
  onProgress: OnProgress = () => {},
  first = Infinity,
): Result<Pack> {
  const { children = [], parts, sortedBy = 'child' } = recipe;
  const wanted = Math.min(first, children.length);
  const lots = lotsFor(recipe, wanted);
  const all = lots.reduce((sum, { wanted: sheets }) => sum + sheets, 0);
  const seen = new Set<string>();
  const table: Table = children.map(() => parts.map(() => []));
  let made = 0;
  onProgress(0, all);
  for (const { place, ...lot } of lots) {
    const sheets = equalSheets({ ...recipe, ...lot.named }, lot, seen);
    if (!sheets.ok) return refuse(...placed(sheets.refusals, place, parts.length));
    deal(table, sheets.value, lot, place);
    made += lot.wanted;
    onProgress(made, all);
  }
  const onSheets = numberedChildren(children.map(({ name }) => name));
  const named = onSheets
    .slice(0, wanted)
    .map((child, place) =>
      (table[place] ?? []).map((sheets) => sheets.map((sheet) => ({ ...sheet, child }))),
    );
  return accept({ seed: recipe.seed, sheets: sorted(named, sortedBy) });
}

/** In the order in which they are made, up to the last one that the first children need; of that one no more than theirs. */
function lotsFor(recipe: SeededRecipe, wanted: number): readonly PlacedLot[] {
  const random = randomFrom(recipe.seed);
  const lots = recipe.parts.flatMap((part, place) =>
    lotsOf(recipe, part, random.fork()).map((lot) => ({ ...lot, place })),
  );
  const own = lots.map(({ children }) => children.filter((child) => child < wanted).length);
  const last = own.reduce((latest, count, index) => (count > 0 ? index : latest), 0);
  return lots.slice(0, last + 1).map((lot, index) => ({
    ...lot,
    // Sheets of the lots before are made all the same: nothing may look like one of them.
    wanted: index < last ? lot.wanted : (own[index] ?? 0) * lot.part.sheets,
  }));
}

/** How children stand on their sheets: numbered in the order of the group, with whether others have the name too. */
export function numberedChildren(names: readonly string[]): readonly SheetChild[] {
  const times = new Map<string, number>();
  for (const name of names) times.set(name, (times.get(name) ?? 0) + 1);
  return names.map((name, place) => {
    const isShared = (times.get(name) ?? 0) > 1;
    return { number: place + 1, name, ...(isShared ? { isShared } : {}) };
  });
}

/** By child, by part, its sheets. */
type Table = readonly (readonly Sheet[][])[];

/** Each child of the lot gets as many as the part has. */
function deal(
  table: Table,
  sheets: readonly Sheet[],
  { part, children }: Lot,
  place: number,
): void {
  for (const [turn, child] of children.entries()) {
    const own = sheets.slice(turn * part.sheets, (turn + 1) * part.sheets);
    table[child]?.[place]?.push(...own);
  }
}

/**
 * A lot for each step that some child is at, in the order of the steps; each step has a stream of its own. Where each child
 * has the letters of its own name, a lot for each child.
 */
function lotsOf(
  { children = [], ownLetters = false }: Recipe,
  part: RecipePart,
  random: Random,
): readonly Lot[] {
  const { ladder } = activityOf(part.activity);
  const stepOf = ({ shift = 0 }: GroupChild) =>
    Math.min(ladder.length, Math.max(1, part.step + shift));
  return ladder
    .map((_, index) => ({ step: index + 1, random: random.fork() }))
    .map(({ step, random }) => {
      const places = children.flatMap((child, place) => (stepOf(child) === step ? [place] : []));
      return {
        part,
        step,
        random,
        children: places,
        wanted: places.length * part.sheets,
        named: {},
      };
    })
    .flatMap((lot) => (ownLetters ? lotsOfNames(lot, children) : [lot]))
    .filter(({ wanted }) => wanted > 0);
}

function lotsOfNames(lot: Lot, children: readonly GroupChild[]): readonly Lot[] {
  return lot.children.map((place) => ({
    ...lot,
    random: lot.random.fork(),
    children: [place],
    wanted: lot.part.sheets,
    named: { letters: children[place]?.name ?? '' },
  }));
}

interface Drawn {
  readonly sheet: Sheet;
  readonly logits: number;
}

/** Different sheets, all near the middle of what the values give. */
function equalSheets(recipe: SeededRecipe, lot: Lot, seen: Set<string>): Result<readonly Sheet[]> {
  const drawn: Drawn[] = [];
  let equal: readonly Sheet[] = [];
  for (let inVain = 0; inVain < MOST_IN_VAIN; inVain++) {
    const made = makePartSheet(
      recipe,
      { ...lot.part, step: lot.step },
      lot.random.int(0, MAX_SEED),
    );
    if (!made.ok) return made;
    const shown = shownOn(made.value);
    if (seen.has(shown)) continue;
    seen.add(shown);
    drawn.push({ sheet: made.value, logits: logitsOf(made.value) });
    const before = equal.length;
    equal = nearMiddle(drawn);
    if (drawn.length >= LEAST_DRAWN && equal.length >= lot.wanted) {
      return accept(equal.slice(0, lot.wanted));
    }
    if (equal.length > before) inVain = 0;
  }
  return equal.length >= lot.wanted
    ? accept(equal.slice(0, lot.wanted))
    : refuse(tooFew(lot, equal.length));
}

/** In the order drawn, those within half of what is equal of the median of the first ones. */
function nearMiddle(drawn: readonly Drawn[]): readonly Sheet[] {
  const first = drawn
    .slice(0, LEAST_DRAWN)
    .map(({ logits }) => logits)
    .sort((one, other) => one - other);
  const middle = first[Math.floor(first.length / 2)] ?? 0;
  const isNear = ({ logits }: Drawn) => Math.abs(logits - middle) <= EQUAL_LOGITS / 2;
  return drawn.filter(isNear).map(({ sheet }) => sheet);
}

function logitsOf({ spec, tasks }: Sheet): number {
  const activity = activityOf(spec.activity);
  return sheetDifficulty(tasks.map(({ printed }) => difficultyOf(activity, printed))).logits;
}

function tooFew({ part, wanted }: Lot, max: number): Refusal {
  return {
    code: 'does-not-fit',
    at: `${part.activity} › children`,
    got: wanted,
    max,
    unit: told('reasons', 'amount.sheets.equal'),
    advice: told('reasons', 'do.other-sheets'),
  };
}

function sorted(rows: readonly (readonly (readonly Sheet[])[])[], by: Sorting): readonly Sheet[] {
  if (by === 'child') return rows.flat(2);
  const parts = rows[0] ?? [];
  return parts.flatMap((_, part) => rows.flatMap((row) => row[part] ?? []));
}
