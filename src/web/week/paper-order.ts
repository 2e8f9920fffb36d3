// Which sheets of the week go onto paper, and in which order.
import type { Day, Id } from '../../records/index.ts';
import type { SheetCard } from '../planning/cards.ts';

export const ORDERS = ['by-child', 'by-day'] as const;
export type Order = (typeof ORDERS)[number];

export interface ChildDays {
  readonly child: Id;
  readonly days: readonly {
    readonly day: Day;
    readonly sheets: readonly Pick<SheetCard, 'code' | 'isDone'>[];
  }[];
}

/** The codes of the sheets that are not done, of the days in order and the children in order. */
export function codesToPrint(
  weeks: readonly ChildDays[],
  days: readonly Day[],
  order: Order,
): readonly string[] {
  const openOn = ({ days: planned }: ChildDays, day: Day) =>
    planned.flatMap((each) => (each.day === day ? each.sheets : [])).filter(isOpen);
  const sheets =
    order === 'by-child'
      ? weeks.flatMap((week) => days.flatMap((day) => openOn(week, day)))
      : days.flatMap((day) => weeks.flatMap((week) => openOn(week, day)));
  return sheets.map(({ code }) => code);
}

function isOpen({ isDone }: Pick<SheetCard, 'isDone'>): boolean {
  return !isDone;
}
