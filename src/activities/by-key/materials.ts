// What to lay out for a by-key sheet.
import type { Material } from '../activity.ts';
import { countedColours } from '../colour-counts.ts';
import { type Answer, type Printed, STICKER_MM } from './task.ts';

/** Stickers counted by colour, or the crayons of the key, in the order of the colour names; else a pencil. */
export function materials(printed: Printed, answer: Answer): readonly Material[] {
  const { key, stickerMm = STICKER_MM } = printed;
  const colours = answer.flatMap((place) => {
    const response = key[place]?.response;
    return response && 'colour' in response ? [response.colour] : [];
  });
  const needsPencil = key.some(({ response }) => !('colour' in response));
  const isPlaced = key.some(({ response }) => response.kind === 'sticker');
  const coloured = countedColours(colours).map(
    ([colour, count]): Material =>
      isPlaced
        ? { kind: 'sticker', colour, diameterMm: stickerMm, count }
        : { kind: 'crayon', colour },
  );
  return needsPencil ? [...coloured, { kind: 'pencil' }] : coloured;
}
