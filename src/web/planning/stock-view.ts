// What is in the house now, and what a plan lacks of it.
import { accept, type Result } from '../../base/index.ts';
import { type Stock, viewOf } from '../../records/index.ts';
import type { PackMaterials } from '../../sheets/index.ts';
import { isEnough, lackingFor, materialsReader, stockNow } from '../../supplies/index.ts';
import type { RecordsAsked, StockReply, Wanting } from './cards.ts';

/** Kept as long as the worker lives: each sheet is made once to see what it uses. */
const materialsOf = materialsReader();

export function stockView(records: RecordsAsked): Result<StockReply> {
  const { stock } = viewOf(records.entries, records.shelf);
  if (stock === undefined) return accept({});
  const { counted, givenSince } = stock;
  const left = stockNow(stock, materialsOf);
  return accept({ stock: { countedAt: counted.at, given: givenSince.length, left } });
}

/** Absent where there is enough of all, or nothing was counted yet. */
export function wantingOf(materials: PackMaterials, left: Stock | undefined): Wanting {
  if (left === undefined) return {};
  const lacking = lackingFor(materials, left);
  return isEnough(lacking) ? {} : { lacking };
}

export function stockLeft(records: RecordsAsked): Stock | undefined {
  const found = stockView(records);
  return found.ok ? found.value.stock?.left : undefined;
}
