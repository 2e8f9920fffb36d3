// Days of the calendar as numbers, so that they can be counted between; no clock is read.
import type { Day, Month } from '../records/index.ts';

export const MS_A_DAY = 86_400_000;
const DAYS_A_WEEK = 7;
/** 1 January 1970 was a Thursday, the fourth day from Monday. */
const FIRST_WEEKDAY = 3;
const MONTHS_A_YEAR = 12;

/** Whole days since 1 January 1970 (proleptic Gregorian calendar). */
export function dayNumber(day: Day): number {
  const [year = 1970, month = 1, date = 1] = day.split('-').map(Number);
  return Date.UTC(year, month - 1, date) / MS_A_DAY;
}

/** The day of a number, as `YYYY-MM-DD`. */
export function dayOf(number: number): Day {
  return new Date(number * MS_A_DAY).toISOString().slice(0, 10);
}

export function addDays(day: Day, count: number): Day {
  return dayOf(dayNumber(day) + count);
}

/** 0 Monday to 6 Sunday. */
export function weekdayOf(day: Day): number {
  return (((dayNumber(day) + FIRST_WEEKDAY) % DAYS_A_WEEK) + DAYS_A_WEEK) % DAYS_A_WEEK;
}

/** The Monday on or before the day: weeks begin on Monday (ISO 8601). */
export function mondayOf(day: Day): Day {
  return addDays(day, -weekdayOf(day));
}

/** The youngest and the oldest age that sheets are made for, in whole years. */
const AGES = { youngest: 3, oldest: 5 } as const;

/** The age on a day that sheets are chosen by: a younger child counts as three, an older one as five. */
export function ageBandOn(day: Day, birthMonth: Month): number {
  return Math.min(AGES.oldest, Math.max(AGES.youngest, ageOn(day, birthMonth)));
}

/** Age in whole years on a day, from the month of birth: the birthday counts from the month's first day. */
export function ageOn(day: Day, birthMonth: Month): number {
  const [year = 0, month = 1] = day.split('-').map(Number);
  const [birthYear = 0, birth = 1] = birthMonth.split('-').map(Number);
  return Math.floor((MONTHS_A_YEAR * (year - birthYear) + month - birth) / MONTHS_A_YEAR);
}
