// Promises of choosing and drawing colours, against an exhaustive search of its own.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { randomFrom } from '../base/index.ts';
import {
  COLOUR_NAMES,
  type ColourName,
  type ColourPrint,
  drawColours,
  FIGURE_COLOURS,
  greyDifferenceDe00,
  leastDifferenceDe00,
  mostFairColours,
  promisedDe00,
  worstDifferenceDe00,
} from './index.ts';

const PRINTS: readonly ColourPrint[] = ['colour', 'grey'];
const COUNTS = FIGURE_COLOURS.map((_, index) => index + 1);
const cases = PRINTS.flatMap((print) => COUNTS.map((count) => ({ print, count })));

function least(names: readonly ColourName[], print: ColourPrint): number {
  let smallest = Number.POSITIVE_INFINITY;
  for (const one of names) {
    for (const other of names) {
      if (one === other) continue;
      smallest = Math.min(smallest, worstDifferenceDe00(one, other));
      if (print === 'grey') smallest = Math.min(smallest, greyDifferenceDe00(one, other));
    }
  }
  return smallest;
}

/** Every subset as the bits of a number. */
function bestByBits(count: number, print: ColourPrint, from: readonly ColourName[]): number {
  let best = Number.NEGATIVE_INFINITY;
  for (let bits = 0; bits < 2 ** from.length; bits++) {
    const names = from.filter((_, index) => bits & (1 << index));
    if (names.length === count) best = Math.max(best, least(names, print));
  }
  return best;
}

const someColours = fc
  .subarray([...COLOUR_NAMES], { minLength: 1 })
  .chain((from) =>
    fc.record({ from: fc.constant(from), count: fc.integer({ min: 1, max: from.length }) }),
  );

describe('drawColours', () => {
  const seeds = Array.from({ length: 40 }, (_, seed) => seed);

  it.each(cases)('$count in $print: keeps a fair and near-best difference', ({ count, print }) => {
    const best = bestByBits(count, print, FIGURE_COLOURS);
    const promise = Math.min(best, Math.max(10, 0.4 * best));
    for (const seed of seeds) {
      const drawn = drawColours(randomFrom(seed), count, print);
      expect(new Set(drawn).size, `seed ${seed}`).toBe(count);
      expect(least(drawn, print), `seed ${seed}`).toBeGreaterThanOrEqual(promise);
    }
  });

  it.each([2, 3, 4, 5, 6])('%d colours vary from seed to seed', (count) => {
    const sets = seeds.map((seed) =>
      [...drawColours(randomFrom(seed), count, 'colour')].sort().join(),
    );
    expect(new Set(sets).size).toBeGreaterThan(10);
  });

  it('draws each of the ten colours at times, and in any order', () => {
    const drawn = seeds.map((seed) => drawColours(randomFrom(seed), 3, 'colour'));
    expect(new Set(drawn.flat())).toEqual(new Set(FIGURE_COLOURS));
    const places = drawn.map((names) => names.map((name) => COLOUR_NAMES.indexOf(name)));
    expect(places.some(([a = 0, b = 0]) => a > b)).toBe(true);
    expect(places.some(([a = 0, b = 0]) => a < b)).toBe(true);
  });

  it('draws the same for the same seed, and only from the colours given', () => {
    fc.assert(
      fc.property(fc.nat(), someColours, (seed, { from, count }) => {
        const drawn = drawColours(randomFrom(seed), count, 'colour', from);
        expect(drawColours(randomFrom(seed), count, 'colour', from)).toEqual(drawn);
        expect(drawn.every((name) => from.includes(name))).toBe(true);
      }),
      { numRuns: 60 },
    );
  });

  it('throws for more than there are, for less than none and for parts', () => {
    const draw = (count: number, from?: readonly ColourName[]) =>
      drawColours(randomFrom(1), count, 'colour', from);
    expect(() => draw(11)).toThrow('expected 0 to 10, got 11');
    expect(() => draw(3, ['red', 'blue'])).toThrow('expected 0 to 2, got 3');
    for (const count of [-1, 1.5, Number.NaN]) {
      expect(() => draw(count)).toThrow('palette › colours');
    }
  });
});

describe('what can be promised', () => {
  it.each(cases)('$count in $print: a share of what the best set has', ({ count, print }) => {
    const best = bestByBits(count, print, FIGURE_COLOURS);
    expect(promisedDe00(count, print)).toBe(Math.min(best, Math.max(10, 0.4 * best)));
  });

  it('is so of any colours, whatever their order', () => {
    fc.assert(
      fc.property(someColours, fc.constantFrom(...PRINTS), ({ from, count }, print) => {
        const best = bestByBits(count, print, from);
        const promise = Math.min(best, Math.max(10, 0.4 * best));
        expect(promisedDe00(count, print, from)).toBe(promise);
        expect(promisedDe00(count, print, [...from].reverse())).toBe(promise);
      }),
      { numRuns: 60 },
    );
  });

  it('counts the colours that stand together fairly', () => {
    for (const print of PRINTS) {
      const most = mostFairColours(print);
      expect(bestByBits(most, print, FIGURE_COLOURS)).toBeGreaterThanOrEqual(10);
      const more =
        most === 10 ? Number.NEGATIVE_INFINITY : bestByBits(most + 1, print, FIGURE_COLOURS);
      expect(more).toBeLessThan(10);
    }
  });

  it('measures a set by its two most alike', () => {
    expect(leastDifferenceDe00(['red', 'blue', 'brown'], 'colour')).toBe(
      least(['red', 'blue', 'brown'], 'colour'),
    );
    expect(leastDifferenceDe00(['green', 'grey', 'black'], 'grey')).toBe(
      greyDifferenceDe00('green', 'grey'),
    );
    expect(leastDifferenceDe00(['red'], 'colour')).toBe(Number.POSITIVE_INFINITY);
  });
});
