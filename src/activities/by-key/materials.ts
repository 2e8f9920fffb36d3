// What to lay out for a by-key sheet.
import { COLOUR_NAMES, type ColourName } from '../../palette/index.ts';
import type { Material } from '../activity.ts';
import { type Answer, type Printed, STICKER_MM } from './task.ts';

/** Stickers counted by colour, or the crayons of the key, in the order of the colour names; else a pencil. */
export function materials(printed: Printed, answer: Answer): readonly Material[] {
  const { key, stickerMm = STICKER_MM } = printed;
  const counts = new Map<ColourName, number>();
  for (const place of answer) {
    const response = key[place]?.response;
    if (response && 'colour' in response) {
      counts.set(response.colour, (counts.get(response.colour) ?? 0) + 1);
    }
  }
  const needsPencil = key.some(({ response }) => !('colour' in response));
  const isPlaced = key.some(({ response }) => response.kind === 'sticker');
  const coloured = COLOUR_NAMES.flatMap((colour): readonly Material[] => {
    const count = counts.get(colour);
    if (count === undefined) return [];
    return isPlaced
      ? [{ kind: 'sticker', colour, diameterMm: stickerMm, count }]
      : [{ kind: 'crayon', colour }];
  });
  return needsPencil ? [...coloured, { kind: 'pencil' }] : coloured;
}
