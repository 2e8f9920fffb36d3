// The options that say how the sheets come about: printed, half-made, or by hand.
import { type MadeWishes, madeFaults, STICKER_RANGE_MM } from '../by-hand/index.ts';
import type { Made, Pack, Recipe } from '../sheets/index.ts';
import { Refused } from './failure.ts';
import { wholeOf } from './option-values.ts';

/** As they are typed. */
export interface MadeOptions {
  readonly byHand?: boolean;
  readonly halfMade?: boolean;
  readonly sticker?: string;
  readonly quick?: boolean;
}

/** What is asked for, by the options or else by the recipe. */
export function madeOf(options: MadeOptions, recipe: Pick<Recipe, 'made'> = {}): MadeWishes {
  const { byHand, halfMade, sticker } = options;
  if (byHand && halfMade) {
    const expected = 'either --by-hand or --half-made';
    throw new Refused({ code: 'unreadable', at: '--half-made', got: '--by-hand too', expected });
  }
  const asked: Made | undefined = byHand ? 'by-hand' : halfMade ? 'half-made' : recipe.made;
  const made = asked ?? 'printed';
  if (sticker === undefined) return { made };
  if (made === 'printed') throw needed('--sticker', '--by-hand or --half-made');
  const { min, max } = STICKER_RANGE_MM;
  return { made, stickerMm: wholeOf(sticker, '--sticker', min, max) };
}

/** Whether the quickest layout is asked for; only sheets that are made by hand have one. */
export function isQuick({ quick }: MadeOptions, recipe: Recipe, { made }: MadeWishes): boolean {
  if (quick && made !== 'by-hand') throw needed('--quick', '--by-hand');
  return made === 'by-hand' && (quick ?? recipe.quick ?? false);
}

/** Refuses what cannot be made in that way, before anything is written. */
export function refuseUnmade(pack: Pack, wishes: MadeWishes): void {
  const [first, ...others] = madeFaults(pack, wishes);
  if (first) throw new Refused(first, ...others);
}

function needed(at: string, expected: string): Refused {
  return new Refused({ code: 'missing', at, expected });
}
