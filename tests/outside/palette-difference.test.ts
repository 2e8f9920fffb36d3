// The colour difference and contrast against published values.
import { describe, expect, it } from 'vitest';
import { contrastOf, type Hex, labDifferenceDe00 } from '../../src/palette/index.ts';
import { type FactRow, factNumber, readFacts } from './facts/read-facts.ts';

const pairs = readFacts('ciede2000');

function lab(row: FactRow, index: 1 | 2) {
  const [l, a, b] = ['L', 'a', 'b'].map((channel) => factNumber(row, `${channel}${index}`));
  return { l: l ?? Number.NaN, a: a ?? Number.NaN, b: b ?? Number.NaN };
}

describe('CIEDE2000 gives the differences of Sharma, Wu & Dalal 2005, Table 1', () => {
  it('has all 34 pairs to compare with', () => {
    expect(pairs).toHaveLength(34);
  });

  // The table has four decimals, so half a unit of the fourth is all that may be off.
  it.each(pairs)('pair $pair is $dE00 within 0.00005', (row) => {
    const difference = labDifferenceDe00(lab(row, 1), lab(row, 2));
    expect(Math.abs(difference - factNumber(row, 'dE00'))).toBeLessThanOrEqual(0.00005);
  });

  it.each(pairs)('pair $pair is the same the other way round', (row) => {
    const there = labDifferenceDe00(lab(row, 1), lab(row, 2));
    expect(labDifferenceDe00(lab(row, 2), lab(row, 1))).toBeCloseTo(there, 10);
  });
});

describe('contrast gives the ratios of the WCAG 2.2 definition', () => {
  // The list has four decimals.
  it.each(readFacts('contrast'))('$one on $other is $ratio', (row) => {
    const ratio = factNumber(row, 'ratio');
    expect(contrastOf(row.one as Hex, row.other as Hex)).toBeCloseTo(ratio, 4);
    expect(contrastOf(row.other as Hex, row.one as Hex)).toBeCloseTo(ratio, 4);
  });
});
