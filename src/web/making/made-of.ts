// How the sheets of a recipe come about: half-made and by hand with the stickers of the house, where the pack keeps to it.
import type { Refusal } from '../../base/index.ts';
import { type MadeWishes, madeFaults } from '../../by-hand/index.ts';
import { MADE, type Pack } from '../../sheets/index.ts';
import { usualStickerMm } from '../../supplies/index.ts';
import type { Entries } from '../recipe/entries.ts';

export function madeOf({ made, stock }: Entries): MadeWishes {
  const stickerMm = stock === undefined ? undefined : usualStickerMm(stock);
  return { made: MADE.find((name) => name === made), stickerMm };
}

/** Why the sheets cannot be made so; the stickers are those of the house, so it is said beside that. */
export function faultsAtHand(pack: Pack, entries: Entries): readonly Refusal[] {
  const faults = madeFaults(pack, madeOf(entries));
  return faults.map((fault) =>
    entries.stock === undefined ? fault : { ...fault, at: 'onlyWith' },
  );
}
