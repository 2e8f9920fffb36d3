// The option that names a count of what is in the house: the pack is then made with that alone.
import { type Recipe, readStockText, STOCK_CHARACTERS } from '../sheets/index.ts';
import { accepted } from './failure.ts';
import { readText } from './read-text.ts';

/** UTF-8 takes at most three bytes for a character of JavaScript. */
const BYTES_A_CHARACTER = 3;

/** What the file at `path` counts, over what a recipe says. */
export function stockOf(
  path: string | undefined,
  base: Pick<Recipe, 'onlyWith'> = {},
): Pick<Recipe, 'onlyWith'> {
  if (path !== undefined) {
    const text = readText(path, 'stock', STOCK_CHARACTERS * BYTES_A_CHARACTER);
    return { onlyWith: accepted(readStockText(text)) };
  }
  return base.onlyWith === undefined ? {} : { onlyWith: base.onlyWith };
}
