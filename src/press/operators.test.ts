// Numbers of a content stream: written as they are read, however many there are.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { testSeed } from '../../tests/seed.ts';
import { Operators } from './operators.ts';

const seed = testSeed('operators');
const textOf = (operators: Operators) => new TextDecoder().decode(operators.written);

test('whole numbers come out as they are, with a space behind each', () => {
  const numbers = fc.array(fc.integer({ min: -1e10, max: 1e10 }), { maxLength: 50 });
  fc.assert(
    fc.property(numbers, (values) => {
      const operators = new Operators();
      for (const value of values) operators.whole(value);
      expect(textOf(operators)).toBe(values.map((value) => `${value} `).join(''));
    }),
    { seed, numRuns: 200 },
  );
  const operators = new Operators();
  for (const value of [0, -0, 9, 10, -99, 100]) operators.whole(value);
  expect(textOf(operators)).toBe('0 0 9 10 -99 100 ');
});

test('a page of any length finds room, and the next one begins empty', () => {
  const operators = new Operators();
  for (let count = 0; count < 50_000; count++) operators.text('l ');
  expect(textOf(operators)).toBe('l '.repeat(50_000));
  operators.clear();
  operators.text('x'.repeat(300_000));
  expect(textOf(operators)).toBe('x'.repeat(300_000));
});

test.each([Number.NaN, Number.POSITIVE_INFINITY, 1e12])('%s is a defect', (value) => {
  expect(() => new Operators().whole(value)).toThrow('expected a finite one');
});
