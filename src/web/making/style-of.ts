// How the sheets of a recipe are printed and in which colours, as far as the entries make sense.

import { picturesField } from '../../figures/index.ts';
import { PRINT_CHOICES, type PrintStyle } from '../../page/index.ts';
import { COLOUR_NAMES } from '../../palette/index.ts';
import { coloursField, styleOf } from '../../sheets/index.ts';
import { printOn } from '../../supplies/index.ts';
import type { Entries } from '../recipe/entries.ts';

/** Undefined where the print is not known; colours that are not known are left to the recipe to refuse. */
export function styleOfEntries(
  entries: Pick<Entries, 'print' | 'colours' | 'pictures' | 'onlyOwn' | 'hand' | 'ink' | 'stock'>,
): PrintStyle | undefined {
  const asked = PRINT_CHOICES.find((choice) => choice === entries.print);
  if (asked === undefined) return undefined;
  const print = entries.stock === undefined ? asked : printOn(entries.stock, asked);
  const colours = COLOUR_NAMES.filter((name) => entries.colours?.includes(name));
  return styleOf({
    print,
    ...coloursField(colours.length > 0 ? colours : undefined),
    ...picturesField({
      ids: entries.pictures ?? [],
      ...(entries.onlyOwn ? { alone: true } : {}),
    }),
    ...(entries.hand === 'left' ? { hand: entries.hand } : {}),
    ...(entries.ink === 'saving' ? { ink: entries.ink } : {}),
  });
}
