// How a sheet is to be printed, as far as the making of its tasks must know.

export interface PrintStyle {
  /** `grey`: colours are printed as greys and carry their initial, so that nothing rests on hue. */
  readonly print: 'colour' | 'grey';
}

export const PRINT_CHOICES = ['colour', 'grey'] as const;
