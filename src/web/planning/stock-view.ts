// What is in the house now, what sheets take of it, and what a plan lacks.
import { accept, type Result } from '../../base/index.ts';
import { type Stock, viewOf } from '../../records/index.ts';
import { MADE, packOfCodes } from '../../sheets/index.ts';
import {
  houseFor,
  isEnough,
  lackingFor,
  materialsReader,
  stockAfter,
  stockNow,
  type Use,
  usedBy,
  usesOf,
} from '../../supplies/index.ts';
import { packOf } from '../making/pack-of.ts';
import type { RecordsAsked, StockReply, UsesAsked, Wanting } from './cards.ts';

/** Kept as long as the worker lives: each sheet is made once to see what it uses. */
const materialsOf = materialsReader();

export function stockView(records: RecordsAsked): Result<StockReply> {
  const { stock } = viewOf(records.entries, records.shelf);
  if (stock === undefined) return accept({});
  const { counted, givenSince } = stock;
  const left = stockNow(stock, materialsOf);
  return accept({ stock: { countedAt: counted.at, given: givenSince.length, left } });
}

/** What sheets of these codes take against what is left; nothing where nothing was counted yet. */
export function wantingOf(codes: readonly string[], left: Stock | undefined): Wanting {
  if (left === undefined) return {};
  const pack = packOfCodes(codes);
  if (!pack.ok) return {};
  const materials = usedBy(pack.value.sheets, left);
  const lacking = lackingFor(materials, left);
  const uses = usesOf(materials, left);
  return isEnough(lacking) ? { uses } : { uses, lacking };
}

export function stockLeft(records: RecordsAsked): Stock | undefined {
  const found = stockView(records);
  return found.ok ? found.value.stock?.left : undefined;
}

/** What is left once the sheets of these codes were made, too. */
export function stockWithout(
  stock: Stock | undefined,
  codes: readonly string[],
): Stock | undefined {
  return codes.reduce<Stock | undefined>((left, code) => {
    const materials = left && materialsOf(code, left);
    return left && materials ? stockAfter(left, materials) : left;
  }, stock);
}

/** What the sheets of a recipe or of codes take, thing by thing. Refuses what cannot be made. */
export function usesView({ stock, ...asked }: UsesAsked): Result<readonly Use[]> {
  const pack =
    'codes' in asked
      ? packOfCodes(asked.codes)
      : packOf({ entries: asked.recipe, group: asked.group });
  if (!pack.ok) return pack;
  const made = 'recipe' in asked ? MADE.find((name) => name === asked.recipe.made) : undefined;
  const house = houseFor(stock, { made, toCut: pack.value.toCut });
  return accept(usesOf(usedBy(pack.value.sheets, house), stock));
}
