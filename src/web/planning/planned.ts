// What Today and Week alike take from the sheets of a day: which are done, and the entry that keeps them.
import type { Day, Draft, Id, PlannedSheet } from '../../records/index.ts';
import type { DayCards, SheetCard } from './cards.ts';

type Sheets = Pick<DayCards, 'sheets'>;

export function doneOf({ sheets }: Sheets): readonly SheetCard[] {
  return sheets.filter(({ isDone }) => isDone);
}

export function openOf({ sheets }: Sheets): readonly SheetCard[] {
  return sheets.filter(({ isDone }) => !isDone);
}

/** The entry that keeps the sheets as the plan of a child's day, in this order. */
export function planOf(child: Id, day: Day, sheets: readonly PlannedSheet[]): Draft {
  return { kind: 'plan', child, day, sheets: sheets.map(({ code, why }) => ({ code, why })) };
}

/** Minutes as they are told: whole, and never less than one, so that nothing is said to take no time. */
export function minutesTold(minutes: number): number {
  return Math.max(1, Math.round(minutes));
}
