// Colour-vision deficiency against the published matrices and colours worked out from them.
import { describe, expect, it } from 'vitest';
import { differenceDe00, type Hex, type Model, type Sight } from '../../src/palette/index.ts';
import { asSeen } from '../../src/palette/seen-to-test.ts';
import { MACHADO, type Matrix, VIENOT } from '../../src/palette/sights.ts';
import { type FactRow, factNumber, readFacts } from './facts/read-facts.ts';

const DEFICIENCIES = ['protan', 'deutan', 'tritan'] as const;

function matrixOf(row: FactRow): readonly (readonly number[])[] {
  return [1, 2, 3].map((line) => [1, 2, 3].map((column) => factNumber(row, `m${line}${column}`)));
}

function sums(matrix: Matrix): readonly number[] {
  return matrix.map((row) => row.reduce((sum, share) => sum + share, 0));
}

describe('matrices', () => {
  it.each(readFacts('machado-2009'))('Machado, Oliveira & Fernandes 2009: $kind', (row) => {
    expect(MACHADO[row.kind as keyof typeof MACHADO]).toEqual(matrixOf(row));
  });

  it.each(readFacts('vienot-1999'))('Viénot, Brettel & Mollon 1999: $kind', (row) => {
    expect(VIENOT[row.kind as keyof typeof VIENOT]).toEqual(matrixOf(row));
  });

  // Six decimals are published, so a sum of three may be off by 0.0000015.
  it.each(DEFICIENCIES)('rows of the Machado %s matrix sum to one', (kind) => {
    for (const sum of sums(MACHADO[kind])) expect(Math.abs(sum - 1)).toBeLessThan(0.0000015);
  });

  it.each(['protan', 'deutan'] as const)('Viénot %s sees red and green alike', (kind) => {
    expect(VIENOT[kind]?.[0]).toEqual(VIENOT[kind]?.[1]);
    for (const hex of ['#ff0000', '#12a4e0', '#7f00ff', '#3d9950'] as const) {
      expect(asSeen(hex, kind, 'vienot-light')).toMatch(/^#(..)\1..$/);
    }
  });
});

describe('Machado severity 1.0 in linear light', () => {
  const examples = readFacts('seen-colours').flatMap((row) =>
    DEFICIENCIES.map((sight) => ({ hex: row.hex as Hex, sight, seen: row[sight] })),
  );

  it.each(examples)('$sight sees $hex as $seen', ({ hex, sight, seen }) => {
    expect(asSeen(hex, sight, 'machado-light')).toBe(seen);
  });
});

// Differences of the xkcd survey centres, worked out apart from this program from the Machado matrices on
// linear and on gamma-coded sRGB: the same pair is safe by one reading and merged by the other.
describe('how the matrices are read turns verdicts round, so both readings are kept', () => {
  const red: Hex = '#e50000';
  const green: Hex = '#15b01a';
  const brown: Hex = '#653700';
  const readings: [Hex, Hex, Sight, Model, number][] = [
    [red, brown, 'deutan', 'machado-light', 22.6],
    [red, brown, 'deutan', 'machado-coded', 0.5],
    [red, green, 'deutan', 'machado-light', 6.8],
    [red, green, 'deutan', 'machado-coded', 23.1],
    [red, green, 'protan', 'machado-light', 30.1],
    [red, green, 'protan', 'machado-coded', 46.4],
  ];

  // Rounding what is seen to 8 bits moves these by up to 0.3.
  it.each(readings)('%s and %s, %s, %s: about %d', (one, other, sight, model, expected) => {
    const difference = differenceDe00(asSeen(one, sight, model), asSeen(other, sight, model));
    expect(Math.abs(difference - expected)).toBeLessThan(0.35);
  });
});
