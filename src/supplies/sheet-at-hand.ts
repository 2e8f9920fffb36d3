// One sheet of what a house has alone, as a plan needs it: the values stay, colours and the size of dots are what is there.
import { accept, MAX_SEED, type Result, randomFrom, refuse } from '../base/index.ts';
import {
  makePartSheet,
  makeSheet,
  type RecipePart,
  type Sheet,
  type SheetRequest,
  type Stock,
  valuesOf,
} from '../sheets/index.ts';
import { usedBy } from './hand-made.ts';
import { notInTheHouse } from './not-in-the-house.ts';
import { isEnough, lackingFor } from './stock.ts';
import { waysOf } from './ways.ts';

/** Seeds tried for one way before it counts as taking more than there is. */
const MOST_DRAWS = 3;

/**
 * The sheet of a request, always the same one: as it is where nothing is lacking for it, else in colours and with dots
 * of a size that are there. Refuses what `makeSheet` refuses, and what the house has too little for.
 */
export function makeSheetAtHand(request: SheetRequest, stock: Stock): Result<Sheet> {
  const free = makeSheet(request);
  if (!free.ok || isThere(free.value, stock)) return free;
  const random = randomFrom(request.seed);
  const sought = {
    recipe: { ...request, parts: [] },
    part: partOf(request),
    left: stock,
    sheets: 1,
  };
  for (const { part, colours } of waysOf(sought)) {
    const limited = colours === undefined ? request : { ...request, colours };
    for (let draw = 0; draw < MOST_DRAWS; draw++) {
      const made = makePartSheet({ ...limited, parts: [] }, part, random.int(0, MAX_SEED));
      if (!made.ok) break;
      if (isThere(made.value, stock)) return accept(made.value);
    }
  }
  return refuse(notInTheHouse([free.value], stock, 0));
}

function isThere(sheet: Sheet, stock: Stock): boolean {
  return isEnough(lackingFor(usedBy([sheet], stock), stock));
}

/** All values set, the size of dots alone left free. */
function partOf(request: SheetRequest): RecipePart {
  const { activity, step, tasks } = request;
  const values = valuesOf(request);
  const { stickerMm: _free, ...set } = values.ok ? values.value : request.values;
  return { activity, step, values: set, sheets: 1, ...(tasks === undefined ? {} : { tasks }) };
}
