// What to lay out for an odd-one-out task.
import { FIGURE_COLOURS } from '../../palette/index.ts';
import type { Material } from '../activity.ts';
import type { Printed } from './task.ts';

/** Smaller than every figure, so that it does not hide which one it is on; common practice, no source. */
const STICKER_MM = 10;

/** A pencil to ring or cross out; a sticker in a colour that no figure has; nothing to point with. */
export function materialsOf({
  figures,
  response = 'point',
  stickerColour,
}: Printed): readonly Material[] {
  if (response === 'point') return [];
  if (response !== 'sticker') return [{ kind: 'pencil' }];
  const free = FIGURE_COLOURS.find((name) => figures.every(({ colour }) => colour !== name));
  const colour = stickerColour ?? free ?? 'red';
  return [{ kind: 'sticker', colour, diameterMm: STICKER_MM, count: 1 }];
}
