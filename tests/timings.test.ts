// Times kept in classes tell the same shares as the times themselves, to one percent.
import { expect, test } from 'vitest';
import { addTo, count, noTimings, quantileMs } from '../scripts/timings.ts';
import { randomFrom } from '../src/base/index.ts';
import { testSeed } from './seed.ts';

test('shares of many times are told to one percent, also of two lots put together', () => {
  const random = randomFrom(testSeed('timings'));
  const times = Array.from({ length: 2001 }, () => 2 ** (random.int(-900, 900) / 100));
  const [some, others] = [noTimings(), noTimings()];
  for (const [at, ms] of times.entries()) count(at % 2 === 0 ? some : others, ms);
  addTo(some, others);
  const sorted = [...times].sort((one, other) => one - other);
  for (const share of [0.1, 0.5, 0.99]) {
    const exact = sorted[Math.ceil(share * times.length) - 1] ?? Number.NaN;
    expect(Math.abs(quantileMs(some, share) / exact - 1)).toBeLessThan(0.0101);
  }
});

test('of no times there is none', () => {
  expect(quantileMs(noTimings(), 0.5)).toBeNaN();
});
