// What cards to cut out have in common.
import { type Area, fitEm, fitText, type Group, group, QUIET_INK, text } from '../page/index.ts';

/** Between the edge of a card and what stands on it, in mm. */
export const PAD_MM = 4;
/** Height of the foot of a card, in mm. */
export const LABEL_MM = 7;
const EM_MM = 2.8;
const LEAST_EM_MM = 1.8;
const SIDE_MM = 2;
const UP_MM = 2;

/** Which sheet the card belongs to: small, in its lower right corner. */
export function cardLabel(words: string, { left, top, width, height }: Area): Group {
  const room = width - 2 * SIDE_MM;
  const emMm = fitEm(words, room, EM_MM, LEAST_EM_MM);
  return group('card-label', [
    text(fitText(words, room, emMm), left + width - SIDE_MM, top + height - UP_MM, emMm, {
      anchor: 'end',
      colour: QUIET_INK,
    }),
  ]);
}
