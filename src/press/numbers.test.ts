// Rounding: once, to a hundredth of a millimetre, in the shortest text.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { testSeed } from '../../tests/seed.ts';
import { factorText, hundredthsOf, mmText } from './numbers.ts';

const seed = testSeed('numbers');

test.each([
  [0, '0'],
  [-0, '0'],
  [-0.001, '0'],
  [0.004, '0'],
  [0.006, '.01'],
  [-0.5, '-.5'],
  [12, '12'],
  [12.3456, '12.35'],
  [279.4, '279.4'],
  [1 / 3, '.33'],
])('%d mm is written %s', (lengthMm, text) => {
  expect(mmText(lengthMm)).toBe(text);
});

test('a factor keeps five places', () => {
  expect(factorText(Math.SQRT1_2)).toBe('.70711');
  expect(factorText(-1)).toBe('-1');
  expect(factorText(2)).toBe('2');
});

test('what is written is within half a hundredth of what came, and never in exponent form', () => {
  fc.assert(
    fc.property(fc.double({ min: -2000, max: 2000, noNaN: true }), (lengthMm) => {
      const text = mmText(lengthMm);
      expect(text).toMatch(/^-?(\d+(\.\d{1,2})?|\.\d{1,2})$/);
      expect(Math.abs(Number(text) - lengthMm)).toBeLessThanOrEqual(0.005 + 1e-9);
      expect(hundredthsOf(lengthMm)).toBe(Math.round(Number(text) * 100));
    }),
    { seed },
  );
});

test('a number that is none is a defect, not a broken file', () => {
  for (const lengthMm of [Number.NaN, Number.POSITIVE_INFINITY]) {
    expect(() => mmText(lengthMm)).toThrow('expected a finite one');
    expect(() => factorText(lengthMm)).toThrow('expected a finite one');
  }
});
