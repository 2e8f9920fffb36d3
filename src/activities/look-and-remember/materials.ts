// What to lay out for a task.
import type { Material } from '../activity.ts';
import { type Answer, type Printed, STICKER_MM } from './task.ts';

/** Of the stickers, where they are to be had in it; any other will do as well. */
export const STICKER_COLOUR = 'red';

/** A pencil to draw with, a sticker for each figure to be found, or nothing to point with. */
export function materialsOf(
  { response = 'point', stickerColour = STICKER_COLOUR }: Printed,
  answer: Answer,
): readonly Material[] {
  if (response === 'point') return [];
  if (response !== 'sticker') return [{ kind: 'pencil' }];
  return [{ kind: 'sticker', colour: stickerColour, diameterMm: STICKER_MM, count: answer.length }];
}
