// How a sheet is to be printed, as far as the making of its tasks must know.
import type { FigureStock, PictureChoice } from '../figures/index.ts';
import type { Language } from '../languages/index.ts';

/** In `grey` print colours are greys that carry their initial, so that nothing rests on hue. */
export interface PrintStyle extends FigureStock {
  /** The hand that writes, where it is not the right one: no model stands under it. */
  readonly hand?: 'left';
  /** `saving`: figures as outlines wherever what is asked does not hang on how they are filled. */
  readonly ink?: 'saving';
  /** Pictures of a family's own that the content of pictures has, too, or has alone. */
  readonly pictures?: PictureChoice;
  /** What is printed or told of the drawing is in; absent: English. No task hangs on it. */
  readonly language?: Language;
}

export const PRINT_CHOICES = ['colour', 'grey'] as const;
/** The hand of a style; absent: the right one. */
export type Hand = PrintStyle['hand'];

export const HANDS = ['right', 'left'] as const;
export const INKS = ['full', 'saving'] as const;
export type Ink = (typeof INKS)[number];
