// The order of the items by itself: it exists for all counts, and the search for it is short.
import { describe, expect, test } from 'vitest';
import { type Random, randomFrom } from '../../base/index.ts';
import { columnsOf } from './contents.ts';
import { dealVariants, drawCounts, drawOrder } from './generate-order.ts';
import { seeds } from './tasks-to-test.ts';

const RANGE = [2, 3, 4, 5, 6].flatMap((entries) =>
  Array.from({ length: 19 }, (_, index) => ({ entries, items: 6 + index })),
);

/** A stream that counts how often an order was shuffled: once for each place that is tried. */
function counted(random: Random): { random: Random; shuffles: () => number } {
  let count = 0;
  return {
    random: {
      ...random,
      shuffle: (items) => {
        count++;
        return random.shuffle(items);
      },
    },
    shuffles: () => count,
  };
}

describe('orders', () => {
  test.each([true, false])('exist for every key and number of items, balanced %s', (balanced) => {
    for (const { entries, items } of RANGE) {
      if (!balanced && items < (entries === 2 ? 8 : entries + 2)) continue;
      for (const stand of ['inside', 'below'] as const) {
        for (const seed of seeds(3)) {
          const { random, shuffles } = counted(randomFrom(seed));
          const counts = drawCounts(random, { entries, items, balanced });
          const order = drawOrder(random, counts, columnsOf(items, stand));
          expect(order.length).toBe(items);
          expect(counts.map((_, place) => order.filter((p) => p === place).length)).toEqual(counts);
          // Far below what a search by mere trying would need: 2^24 orders of 24 items of two kinds.
          expect(shuffles(), `${entries} entries, ${items} items, seed ${seed}`).toBeLessThan(
            20_000,
          );
        }
      }
    }
  });

  test('differ from seed to seed even for the shortest key', () => {
    const orders = seeds(60).map((seed) => drawOrder(randomFrom(seed), [3, 3], 3).join(''));
    // Of the 20 orders of three and three, those left by R5 and R6 along rows and columns of a 2 by 3 grid.
    expect(new Set(orders).size).toBeGreaterThanOrEqual(4);
  });
});

describe('R7 variants', () => {
  test('R7 are dealt to each entry as evenly as its count allows, and as evenly over all', () => {
    for (const seed of seeds(200)) {
      const random = randomFrom(seed);
      const variants = random.int(2, 3);
      const order = Array.from({ length: random.int(6, 24) }, () => random.int(0, 3));
      const dealt = dealVariants(random, order, variants);
      for (const entry of [0, 1, 2, 3, undefined]) {
        const places = order.flatMap((other, place) =>
          entry === undefined || other === entry ? [place] : [],
        );
        const counts = Array.from(
          { length: variants },
          (_, variant) => places.filter((place) => dealt[place] === variant).length,
        );
        expect(Math.max(...counts) - Math.min(...counts), `seed ${seed}`).toBeLessThanOrEqual(1);
      }
    }
  });
});
