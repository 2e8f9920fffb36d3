// Days of the calendar against what the standard and well-known dates say.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { testSeed } from '../../tests/seed.ts';
import { addDays, ageOn, dayNumber, dayOf, mondayOf, weekdayOf } from './days.ts';

const seed = testSeed('days');

test('a week begins on Monday, and week 1 of 2026 on Monday 29 December 2025 (ISO 8601)', () => {
  expect(weekdayOf('2025-12-29')).toBe(0);
  expect(mondayOf('2026-01-01')).toBe('2025-12-29');
  expect(mondayOf('2025-12-29')).toBe('2025-12-29');
  // 20 July 1969 was a Sunday: before day 0, too.
  expect(weekdayOf('1969-07-20')).toBe(6);
});

test('leap years are those of the Gregorian calendar', () => {
  expect(addDays('2024-02-28', 1)).toBe('2024-02-29');
  expect(addDays('2100-02-28', 1)).toBe('2100-03-01');
  expect(addDays('2000-03-01', -1)).toBe('2000-02-29');
});

test('every day has one number, and one day later is one more', () => {
  fc.assert(
    fc.property(fc.integer({ min: -25_000, max: 60_000 }), (number) => {
      const day = dayOf(number);
      expect(dayNumber(day)).toBe(number);
      expect(addDays(day, 1) > day).toBe(true);
      expect(weekdayOf(addDays(day, 7))).toBe(weekdayOf(day));
    }),
    { seed },
  );
});

test('a child is a year older from the first day of its birth month', () => {
  expect(['2026-04-30', '2026-05-01', '2027-04-30'].map((day) => ageOn(day, '2022-05'))).toEqual([
    3, 4, 4,
  ]);
});
