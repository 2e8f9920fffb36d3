// The looked-up differences against the same measured afresh, and what they say of merging.
import { describe, expect, it } from 'vitest';
import {
  COLOUR_NAMES,
  type ColourName,
  differenceDe00,
  FIGURE_COLOURS,
  greyDifferenceDe00,
  greyOf,
  hexOf,
  MERGING_DE00,
  mergingPairs,
  modelsOf,
  SIGHTS,
  type Sight,
  worstDifferenceDe00,
} from './index.ts';
import { asSeen } from './seen-to-test.ts';

const pairs = COLOUR_NAMES.flatMap((one) => COLOUR_NAMES.map((other) => [one, other] as const));

/** Measured on what is seen in 8 bits, which moves a difference by up to 1. */
function measured(one: ColourName, other: ColourName, sights: readonly Sight[]): number {
  const differences = sights.flatMap((sight) =>
    modelsOf(sight).map((model) =>
      differenceDe00(asSeen(hexOf(one), sight, model), asSeen(hexOf(other), sight, model)),
    ),
  );
  return Math.min(...differences);
}

describe('pair differences', () => {
  it('are the least over normal, protan and deutan sight by every model', () => {
    for (const [one, other] of pairs) {
      const expected = measured(one, other, ['normal', 'protan', 'deutan']);
      expect(Math.abs(worstDifferenceDe00(one, other) - expected)).toBeLessThan(1);
    }
  });

  it('are the same both ways, none for a colour and itself, and never more than to normal sight', () => {
    for (const [one, other] of pairs) {
      const difference = worstDifferenceDe00(one, other);
      expect(worstDifferenceDe00(other, one)).toBe(difference);
      expect(difference === 0).toBe(one === other);
      expect(difference).toBeLessThan(differenceDe00(hexOf(one), hexOf(other)) + 0.01);
    }
  });

  it('in grey are those of the greys', () => {
    for (const [one, other] of pairs) {
      const expected = differenceDe00(greyOf(one), greyOf(other));
      expect(greyDifferenceDe00(one, other)).toBeCloseTo(expected, 1);
    }
  });
});

describe('mergingPairs', () => {
  const found = mergingPairs(FIGURE_COLOURS);

  it('lists a pair for a sight exactly if it differs by less than the threshold', () => {
    for (const sight of SIGHTS) {
      for (const [one, other] of pairs) {
        const listed = found.some(
          ({ a, b, sight: by }) => a === one && b === other && by === sight,
        );
        const difference = measured(one, other, [sight]);
        if (listed) expect(difference).toBeLessThan(MERGING_DE00 + 1);
        const inOrder = FIGURE_COLOURS.indexOf(one) < FIGURE_COLOURS.indexOf(other);
        if (inOrder && other !== 'white' && difference < MERGING_DE00 - 1)
          expect(listed).toBe(true);
      }
    }
  });

  it('warns of red with green and with brown, the pairs that deutan and protan sight is known to confuse', () => {
    expect(mergingPairs(['red', 'green', 'brown'])).toMatchObject([
      { a: 'red', b: 'brown', sight: 'protan' },
      { a: 'red', b: 'green', sight: 'deutan' },
      { a: 'red', b: 'brown', sight: 'deutan' },
    ]);
  });

  it('finds nothing to warn of for normal sight, for blue with yellow, or in one colour', () => {
    expect(found.filter(({ sight }) => sight === 'normal')).toEqual([]);
    expect(mergingPairs(['blue', 'yellow'])).toEqual([]);
    expect(mergingPairs(['red'])).toEqual([]);
  });
});
