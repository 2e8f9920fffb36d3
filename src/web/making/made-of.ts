// How the sheets of a recipe come about: half-made and by hand with the stickers of the house, where the pack keeps to it.
import type { MadeWishes } from '../../by-hand/index.ts';
import { MADE } from '../../sheets/index.ts';
import { usualStickerMm } from '../../supplies/index.ts';
import type { Entries } from '../recipe/entries.ts';

export function madeOf({ made, stock }: Entries): MadeWishes {
  const stickerMm = stock === undefined ? undefined : usualStickerMm(stock);
  return { made: MADE.find((name) => name === made), stickerMm };
}
