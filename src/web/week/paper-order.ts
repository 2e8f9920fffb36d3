// Which sheets of the week go onto paper, and in which order.
import type { Day, Id } from '../../records/index.ts';
import { openOf, type PlannedDay } from './moves.ts';

export const ORDERS = ['by-child', 'by-day'] as const;
export type Order = (typeof ORDERS)[number];

export interface ChildDays {
  readonly child: Id;
  readonly days: readonly PlannedDay[];
}

/** The codes of the sheets that are not done, of the days in order and the children in order. */
export function codesToPrint(
  weeks: readonly ChildDays[],
  days: readonly Day[],
  order: Order,
): readonly string[] {
  const codesOn = ({ days: planned }: ChildDays, day: Day) =>
    planned.filter((each) => each.day === day).flatMap((each) => openOf(each));
  const sheets =
    order === 'by-child'
      ? weeks.flatMap((week) => days.flatMap((day) => codesOn(week, day)))
      : days.flatMap((day) => weeks.flatMap((week) => codesOn(week, day)));
  return sheets.map(({ code }) => code);
}
