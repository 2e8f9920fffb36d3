// Seeded randomness: the only source of chance in the core, so that a seed always gives the same sheet.
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { skipN } from 'pure-rand/utils/skipN';

/** A stream of choices fixed by its seed. Every method moves the stream on. */
export interface Random {
  /** A whole number from `min` to `max`, both included, all equally likely. */
  int(min: number, max: number): number;
  /** One of `items`; a defect if there are none. */
  pick<T>(items: readonly T[]): T;
  /** A new array with the same items in a random order, all orders equally likely. */
  shuffle<T>(items: readonly T[]): T[];
  /** `count` different items in a random order; a defect if there are fewer. */
  sample<T>(items: readonly T[], count: number): T[];
  /** An independent stream fixed by this stream's next number. */
  fork(): Random;
}

/** The largest seed: seeds are whole numbers from 0 to 2^32 − 1. */
export const MAX_SEED = 0xffffffff;

/** The generator's first numbers follow its seed too closely; so many are passed over. */
const WARM_UP = 16;

/** The stream of a seed (whole number, 0 to `MAX_SEED`). */
export function randomFrom(seed: number): Random {
  const stream = xoroshiro128plus(mixed(seed));
  skipN(stream, WARM_UP);
  const random: Random = {
    int: (min, max) => uniformInt(stream, min, max),
    pick: (items) => {
      const item = items[random.int(0, items.length - 1)];
      if (item === undefined)
        throw new Error('random › pick: expected at least one item, got none');
      return item;
    },
    shuffle: (items) => {
      const shuffled = [...items];
      for (let last = shuffled.length - 1; last > 0; last--) {
        const other = random.int(0, last);
        [shuffled[last], shuffled[other]] = [shuffled[other] as never, shuffled[last] as never];
      }
      return shuffled;
    },
    sample: (items, count) => {
      if (count > items.length) {
        throw new Error(`random › sample: expected at least ${count} items, got ${items.length}`);
      }
      return random.shuffle(items).slice(0, count);
    },
    fork: () => randomFrom(random.int(0, MAX_SEED)),
  };
  return random;
}

/**
 * Spreads neighbouring seeds over all 32 bits, so that seeds 1, 2, 3 share nothing: the finaliser of
 * MurmurHash3 (Austin Appleby, public domain; constants from memory). One to one: no two seeds meet.
 */
function mixed(seed: number): number {
  let bits = seed | 0;
  bits = Math.imul(bits ^ (bits >>> 16), 0x85ebca6b);
  bits = Math.imul(bits ^ (bits >>> 13), 0xc2b2ae35);
  return (bits ^ (bits >>> 16)) | 0;
}
