// Making a pack of what the house has alone: every sheet proven as ever, all sheets together taking no more than there is.
import { accept, MAX_SEED, type Random, type Result, randomFrom, refuse } from '../base/index.ts';
import { HOME_PAPERS, type PaperName } from '../page/index.ts';
import {
  makePack,
  makePartSheet,
  type OnProgress,
  type Pack,
  type PackMaterials,
  type RecipePart,
  type SeededRecipe,
  type Sheet,
  type Stock,
  shownOn,
  toCutField,
} from '../sheets/index.ts';
import { houseFor, together, usedBy } from './hand-made.ts';
import { notInTheHouse, stickersIn } from './not-in-the-house.ts';
import { isEnough, lackingFor, stockAfter } from './stock.ts';
import { waysOf } from './ways.ts';

/** Sheets of the pack that show whether it lacks something, before all of it is made. */
const FIRST_SHEETS = 3;
/** Seeds tried for one way before it counts as taking more than there is. */
const MOST_DRAWS = 4;

/**
 * The pack of a recipe, always the same one; where the recipe says so, only with what a house has. A pack that lacks
 * nothing is the very one that it is without. `first`: of a group, so many of its first children need be in it; what a
 * house has is shared out over all. Refuses what `makePack` refuses, and what the house has too little for.
 */
export function makePackAtHand(
  { onlyWith, ...recipe }: SeededRecipe,
  onProgress: OnProgress = () => {},
  first?: number,
): Result<Pack> {
  if (onlyWith === undefined) return makePack(recipe, onProgress, first);
  const printed: SeededRecipe = { ...recipe, print: printOn(onlyWith, recipe.print) };
  const house = houseFor(onlyWith, recipe);
  const free = freePack(printed, house, onProgress);
  if (!free.ok || free.value !== undefined) return free as Result<Pack>;
  const { sheets, isWhole } = sheetsAtHand(printed, house, onProgress);
  const { seed, goals, toCut } = printed;
  const named = { ...(goals === undefined ? {} : { goals }), ...toCutField(toCut) };
  if (isWhole) return accept({ seed, sheets, ...named });
  return refuseFor(printed, house, sheets.length, onProgress);
}

/** A grey printer prints grey whatever is asked for. */
export function printOn({ printer }: Stock, print: SeededRecipe['print']): SeededRecipe['print'] {
  return printer === 'grey' ? 'grey' : print;
}

/** The paper that a house has in place of one that it has not, of those that every sheet fits. */
export function paperIn({ papers }: Stock, paper: PaperName): PaperName {
  if (papers === undefined || papers.includes(paper)) return paper;
  return HOME_PAPERS.find((other) => papers.includes(other)) ?? paper;
}

/** The pack as it is without a stock; nothing where the house has too little for it. */
function freePack(
  recipe: SeededRecipe,
  stock: Stock,
  onProgress: OnProgress,
): Result<Pack | undefined> {
  const isThere = ({ sheets }: Pack) => isEnough(lackingFor(usedBy(sheets, stock), stock));
  const first = makePack(withMost(recipe, FIRST_SHEETS));
  if (first.ok && !isThere(first.value)) return accept(undefined);
  const pack = makePack(recipe, onProgress);
  return pack.ok && !isThere(pack.value) ? accept(undefined) : pack;
}

function withMost(recipe: SeededRecipe, most: number): SeededRecipe {
  const parts = recipe.parts.map((part) => ({ ...part, sheets: Math.min(part.sheets, most) }));
  return { ...recipe, parts };
}

/** Of larger packs so many sheets of each part are told of, where they already take too much: that is found sooner. */
const MOST_TOLD = 100;

/** Says what the pack needs and what is missing; of one kind of sheet for nobody in particular, how many can be had. */
function refuseFor(
  asked: SeededRecipe,
  stock: Stock,
  made: number,
  onProgress: OnProgress,
): Result<Pack> {
  const few = withMost(asked, MOST_TOLD);
  const isTold = countOf(few) < countOf(asked) && !sheetsAtHand(few, stock).isWhole;
  const recipe = isTold ? few : asked;
  const of = isTold ? { of: countOf(asked) } : {};
  const isPlain = recipe.parts.length === 1 && recipe.children === undefined;
  const possible = isPlain ? mostAtHand(recipe, stock, made) : 0;
  const refusal = withMoreOfTheSame(recipe, stock, possible);
  if (refusal) return refuse({ ...refusal, ...of });
  const pack = makePack(recipe, onProgress);
  return pack.ok ? refuse({ ...notInTheHouse(pack.value.sheets, stock, possible), ...of }) : pack;
}

function countOf({ parts, children }: SeededRecipe): number {
  return parts.reduce((sum, { sheets }) => sum + sheets, 0) * (children?.length ?? 1);
}

/** More than any pack takes. */
const ENOUGH = 1_000_000;

/** The refusal where more stickers of the kinds that there are would do; they are tried before they are named. */
function withMoreOfTheSame(recipe: SeededRecipe, stock: Stock, possible: number) {
  const kinds = stock.stickers.filter(({ count }) => count > 0);
  if (kinds.length === 0) return undefined;
  const rich = { ...stock, stickers: kinds.map((kind) => ({ ...kind, count: ENOUGH })) };
  const { sheets, isWhole } = sheetsAtHand(recipe, rich);
  if (!isWhole) return undefined;
  const refusal = notInTheHouse(sheets, stock, possible);
  const more = { ...stock, stickers: [...stock.stickers, ...stickersIn(refusal.add)] };
  return sheetsAtHand(recipe, more).isWhole ? refusal : undefined;
}

/** With fewer sheets others may be made; so those that can be had are made to see. */
function mostAtHand(recipe: SeededRecipe, stock: Stock, most: number): number {
  for (let sheets = most; sheets > 0; sheets--) {
    if (sheetsAtHand(withMost(recipe, sheets), stock).isWhole) return sheets;
  }
  return 0;
}

interface Making {
  readonly recipe: SeededRecipe;
  readonly stock: Stock;
  /** What each sheet so far shows. */
  readonly seen: Set<string>;
  readonly sheets: Sheet[];
  /** What they take. */
  used: PackMaterials;
}

interface AtHand {
  readonly sheets: readonly Sheet[];
  /** Whether there are all that were asked for. */
  readonly isWhole: boolean;
}

/** Sheet by sheet, or for a group kind by kind, until there is none for what is left. */
function sheetsAtHand(
  recipe: SeededRecipe,
  stock: Stock,
  onProgress: OnProgress = () => {},
): AtHand {
  const random = randomFrom(recipe.seed);
  const making: Making = { recipe, stock, seen: new Set(), sheets: [], used: usedBy([], stock) };
  const lots = recipe.parts.flatMap((part) => lotsOf(recipe, part, random.fork()));
  const all = lots.reduce((sum, { sheets }) => sum + sheets, 0);
  onProgress(0, all);
  for (const lot of lots) {
    if (!addLot(making, lot, all - making.sheets.length))
      return { sheets: making.sheets, isWhole: false };
    onProgress(making.sheets.length, all);
  }
  return { sheets: inOrder(making), isWhole: true };
}

/** Sheets that are made in one way. */
interface Lot {
  readonly part: RecipePart;
  readonly sheets: number;
  readonly random: Random;
}

/** A group's sheets of one part are made together, so that they are equally hard. */
function lotsOf({ children }: SeededRecipe, part: RecipePart, random: Random): readonly Lot[] {
  if (children !== undefined) return [{ part, sheets: part.sheets * children.length, random }];
  return Array.from({ length: part.sheets }, () => ({
    part: { ...part, sheets: 1 },
    sheets: 1,
    random,
  }));
}

/** Adds the sheets of a lot in the first way that takes no more than there is; false where none does. */
function addLot(making: Making, { part, random }: Lot, sheets: number): boolean {
  const { recipe, stock } = making;
  const left = stockAfter(stock, making.used);
  for (const way of waysOf({ recipe, part, left, sheets })) {
    const { colours: _all, ...others } = recipe;
    const limited = way.colours === undefined ? others : { ...others, colours: way.colours };
    for (let draw = 0; draw < MOST_DRAWS; draw++) {
      const made = lotSheets(limited, way.part, random.int(0, MAX_SEED));
      if (made.length === 0) break;
      const shown = made.map(shownOn);
      if (shown.some((text) => making.seen.has(text))) continue;
      const used = together(making.used, usedBy(made, stock));
      if (!isEnough(lackingFor(used, stock))) continue;
      making.used = used;
      making.sheets.push(...made);
      for (const text of shown) making.seen.add(text);
      return true;
    }
  }
  return false;
}

/** None where they cannot be had. */
function lotSheets(recipe: SeededRecipe, part: RecipePart, seed: number): readonly Sheet[] {
  if (recipe.children === undefined) {
    const sheet = makePartSheet(recipe, part, seed);
    return sheet.ok ? [sheet.value] : [];
  }
  const pack = makePack({ ...recipe, parts: [part], seed });
  return pack.ok ? pack.value.sheets : [];
}

/** By child, as a group's pack lies unless it is to lie by activity. */
function inOrder({ recipe, sheets }: Making): readonly Sheet[] {
  const { children, sortedBy = 'child' } = recipe;
  if (children === undefined || sortedBy !== 'child') return sheets;
  const place = ({ child }: Sheet) => child?.number ?? 0;
  return [...sheets].sort((one, other) => place(one) - place(other));
}
