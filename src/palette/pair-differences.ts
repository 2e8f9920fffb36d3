// How different each two colours of the print palette look, measured once and looked up from then on.
import { COLOUR_NAMES, type ColourName } from './colour-names.ts';
import { differenceDe00, rgbDifferenceDe00 } from './difference.ts';
import { greyOf, hexOf } from './print-colours.ts';
import { modelsOf, rgbAsSeen, type Sight } from './sights.ts';

/** The sights that a palette must serve. The tritan model is weak and the deficiency rare: advice only. */
export const SERVED_SIGHTS: readonly Sight[] = ['normal', 'protan', 'deutan'];

type PairTable = ReadonlyMap<ColourName, ReadonlyMap<ColourName, number>>;
type Measure = (one: ColourName, other: ColourName) => number;

const tables = new Map<string, PairTable>();

/** The least CIEDE2000 difference of two printed colours by any model of `sight`, to 0.01. */
export function sightDifferenceDe00(one: ColourName, other: ColourName, sight: Sight): number {
  return lookUp(sight, one, other, (a, b) =>
    Math.min(
      ...modelsOf(sight).map((model) =>
        rgbDifferenceDe00(rgbAsSeen(hexOf(a), sight, model), rgbAsSeen(hexOf(b), sight, model)),
      ),
    ),
  );
}

/** The least CIEDE2000 difference of two printed colours to normal, protan and deutan sight, to 0.01. */
export function worstDifferenceDe00(one: ColourName, other: ColourName): number {
  return lookUp('served', one, other, (a, b) =>
    Math.min(...SERVED_SIGHTS.map((sight) => sightDifferenceDe00(a, b, sight))),
  );
}

/** The CIEDE2000 difference of the greys that two colours print as without coloured ink, to 0.01. */
export function greyDifferenceDe00(one: ColourName, other: ColourName): number {
  return lookUp('grey', one, other, (a, b) => differenceDe00(greyOf(a), greyOf(b)));
}

function lookUp(key: string, one: ColourName, other: ColourName, measure: Measure): number {
  const table = tables.get(key) ?? tableOf(measure);
  tables.set(key, table);
  const difference = table.get(one)?.get(other);
  if (difference === undefined) throw new Error(`palette › pair: no ${one} or no ${other}`);
  return difference;
}

/** Rounded, since colour sets are chosen by these and powers differ in the last digit between engines. */
function tableOf(measure: Measure): PairTable {
  const rounded: Measure = (one, other) => Math.round(measure(one, other) * 100) / 100;
  return new Map(
    COLOUR_NAMES.map((one) => [
      one,
      new Map(COLOUR_NAMES.map((other) => [other, rounded(one, other)])),
    ]),
  );
}
