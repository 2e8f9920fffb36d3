// How a sheet is to be printed, as far as the making of its tasks must know.

import type { ColourStock } from '../palette/index.ts';

/** In `grey` print colours are greys that carry their initial, so that nothing rests on hue. */
export type PrintStyle = ColourStock;

export const PRINT_CHOICES = ['colour', 'grey'] as const;
