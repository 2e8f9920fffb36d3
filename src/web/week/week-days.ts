// The days of a week that are planned for, by their names from Monday on.
import { addDays, mondayOf } from '../../plan/index.ts';
import type { Day } from '../../records/index.ts';

export const WEEKDAYS = [
  'monday',
  'tuesday',
  'wednesday',
  'thursday',
  'friday',
  'saturday',
  'sunday',
] as const;
export type Weekday = (typeof WEEKDAYS)[number];

export const DAYS_A_WEEK = WEEKDAYS.length;
export const USUAL_WEEKDAYS: readonly Weekday[] = WEEKDAYS.slice(0, 5);

/** The days of those names in the week of a Monday, in order. */
export function daysNamed(monday: Day, names: readonly Weekday[]): readonly Day[] {
  return WEEKDAYS.flatMap((name, place) => (names.includes(name) ? addDays(monday, place) : []));
}

/** The Monday of the week that one can still plan for: the next one's where none of its days is left in this one. */
export function weekToPlan(today: Day, names: readonly Weekday[]): Day {
  const monday = mondayOf(today);
  const isLeft = names.length === 0 || daysNamed(monday, names).some((day) => day >= today);
  return isLeft ? monday : addDays(monday, DAYS_A_WEEK);
}
