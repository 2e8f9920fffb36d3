// What to lay out for a task.
import type { Material } from '../activity.ts';
import type { Answer, Printed } from './task.ts';

/** A pencil for rings; for stickers one of each colour that is the answer; nothing to point with. */
export function materialsOf(
  { response = 'point', stickerMm }: Printed,
  { figures }: Answer,
): readonly Material[] {
  if (response === 'ring') return [{ kind: 'pencil' }];
  if (response !== 'sticker' || stickerMm === undefined) return [];
  return figures.flatMap(({ colour }) =>
    colour === undefined ? [] : [{ kind: 'sticker', colour, diameterMm: stickerMm, count: 1 }],
  );
}
