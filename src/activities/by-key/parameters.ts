// What a by-key sheet can be asked for.
import { CONTENT_IDS } from '../../figures/index.ts';
import { choice, type ValuesOf, whole, yesNo } from '../parameters.ts';
import { LEAST_STICKER_MM, MOST_ENTRIES, MOST_ITEMS, MOST_STICKER_MM } from './task.ts';

/** What only a key has: how a number of dots lies, and shapes that point. */
export const OWN_CONTENTS = ['dot-layouts', 'shapes-and-directions'] as const;
export type OwnContent = (typeof OWN_CONTENTS)[number];

export function isOwn(content: Content): content is OwnContent {
  return OWN_CONTENTS.some((own) => own === content);
}

/** What is looked at; each `…-and-…` needs all of it at once. */
export const CONTENTS = [...CONTENT_IDS, ...OWN_CONTENTS] as const;
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
