// What cards to cut out have in common.
import { type Area, fitText, type Group, group, QUIET_INK, text } from '../page/index.ts';

/** Between the edge of a card and what stands on it, in mm. */
export const PAD_MM = 4;
/** Height of the foot of a card, in mm. */
export const LABEL_MM = 7;
const EM_MM = 2.8;
const UP_MM = 2;

/** Which sheet the card belongs to: small, in its lower right corner. */
export function cardLabel(words: string, { left, top, width, height }: Area): Group {
  const fitted = fitText(words, width - 2 * PAD_MM, EM_MM);
  return group('card-label', [
    text(fitted, left + width - PAD_MM, top + height - UP_MM, EM_MM, {
      anchor: 'end',
      colour: QUIET_INK,
    }),
  ]);
}
