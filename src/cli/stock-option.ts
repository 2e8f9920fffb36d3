// The option that names a count of what is in the house: the pack is then made with that alone.
import { type Recipe, readStockText, STOCK_CHARACTERS } from '../sheets/index.ts';
import { accepted } from './failure.ts';
import { readText } from './read-text.ts';

/** What the file at `path` counts, over what a recipe says. */
export function stockOf(
  path: string | undefined,
  base: Pick<Recipe, 'onlyWith'> = {},
): Pick<Recipe, 'onlyWith'> {
  if (path !== undefined) {
    return { onlyWith: accepted(readStockText(readText(path, 'stock', STOCK_CHARACTERS))) };
  }
  return base.onlyWith === undefined ? {} : { onlyWith: base.onlyWith };
}
