// The stickers of one size on the adult's page: a dot in the colour, how many, and the colour's name.
import type { Language } from '../activities/index.ts';
import { circlePath, moveBy } from '../base/index.ts';
import { colourName } from '../figures/index.ts';
import {
  type Block,
  FINE_MM,
  filled,
  type Group,
  group,
  INK,
  type PrintStyle,
  text,
} from '../page/index.ts';
import { type ColourName, greyOf, hexOf } from '../palette/index.ts';
import { pageWords } from './page-catalogue.ts';
import type { StickerStock } from './stock-facts.ts';

const DOT_MM = 5;
const ROW_MM = 7;
const ENTRY_MM = 31;
const EM_MM = 3.3;
const WORDS_GAP_MM = 2;
/** From the middle of a row down to its baseline, in ems (half of the height of small letters). */
const BASELINE_EMS = 0.3;

/** The entries side by side, in as many rows as they need. */
export function stickerRows(
  stickers: readonly StickerStock[],
  print: PrintStyle['print'],
  language: Language,
  widthMm: number,
): Block {
  const columns = Math.max(1, Math.floor(widthMm / ENTRY_MM));
  const entries = stickers.map((sticker) => entryOf(sticker, print, language));
  return {
    heightMm: Math.ceil(stickers.length / columns) * ROW_MM,
    beforeMm: 1,
    draw: (left, top) => {
      const placeOf = (index: number) =>
        moveBy(left + (index % columns) * ENTRY_MM, top + Math.floor(index / columns) * ROW_MM);
      const placed = entries.map((entry, index) => ({ ...entry, transform: placeOf(index) }));
      return group('list', placed);
    },
  };
}

/** One dot and its words from (0, 0); all dots are drawn alike, the size stands above them. */
function entryOf(
  { colour, count }: StickerStock,
  print: PrintStyle['print'],
  language: Language,
): Group {
  const middle = ROW_MM / 2;
  const dot = circlePath(DOT_MM / 2, middle, (DOT_MM - FINE_MM) / 2);
  const words = pageWords(language).adult.stickerEntry(count, colourName(colour, language));
  return group('list-item', [
    group('list-lead', [filled(dot, fillOf(colour, print), { colour: INK, widthMm: FINE_MM })]),
    group('list-words', [text(words, DOT_MM + WORDS_GAP_MM, middle + BASELINE_EMS * EM_MM, EM_MM)]),
  ]);
}

function fillOf(colour: ColourName, print: PrintStyle['print']) {
  return print === 'grey' ? greyOf(colour) : hexOf(colour);
}
