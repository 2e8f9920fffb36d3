// What a by-key sheet can be asked for.
import { choice, type ValuesOf, whole, yesNo } from '../parameters.ts';
import { LEAST_STICKER_MM, MOST_ENTRIES, MOST_ITEMS, MOST_STICKER_MM } from './task.ts';

/** What is looked at; each `…-and-…` needs both at once. */
export const CONTENTS = [
  'form',
  'direction',
  'size',
  'sign',
  'colour',
  'dot-quantity',
  'dot-layout',
  'numeral',
  'capital',
  'small-letter',
  'form-and-colour',
  'form-and-size',
  'form-and-direction',
  'colour-and-size',
] as const;
export type Content = (typeof CONTENTS)[number];

export const RESPONSE_KINDS = ['sticker', 'colour-in', 'ring', 'sign', 'fill'] as const;
export type ResponseKind = (typeof RESPONSE_KINDS)[number];

/** What changes from item to item and says nothing. */
export const VARIES = ['none', 'size', 'colour', 'form', 'layout'] as const;
export type Vary = (typeof VARIES)[number];

export const PARAMETERS = {
  content: choice(...CONTENTS),
  response: choice(...RESPONSE_KINDS),
  entries: whole(2, MOST_ENTRIES),
  items: whole(6, MOST_ITEMS),
  vary: choice(...VARIES),
  /** Yes: each entry is used as often as any other, give or take one. No: one entry is used more. */
  balanced: yesNo(),
  /** Yes: left and right, or letters that mirror each other, may stand in the same key. */
  leftRight: yesNo(),
  stickerMm: whole(LEAST_STICKER_MM, MOST_STICKER_MM),
} as const;

export type Parameters = ValuesOf<typeof PARAMETERS>;
