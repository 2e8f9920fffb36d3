// Sheets that change their day or place in the plan of one child; nothing is kept by it.
import type { Day, Draft, Id } from '../../records/index.ts';
import type { DayCards, SheetCard } from '../planning/cards.ts';
import { doneOf, openOf, planOf } from '../planning/planned.ts';

/** What of a day is looked at and changed. */
export type PlannedDay = Pick<DayCards, 'day' | 'sheets'>;

export type Change =
  | {
      readonly kind: 'move';
      readonly code: string;
      readonly from: Day;
      readonly to: Day;
      /** Before which of the sheets of that day that are not done; absent: after all of them. */
      readonly place?: number;
    }
  | { readonly kind: 'take-out'; readonly code: string; readonly from: Day };

/**
 * The days after a change; a day that stays as it was is the same object. What was planned for a day before `today`
 * stays there, so that one sees what was not done.
 */
export function changed<D extends PlannedDay>(
  days: readonly D[],
  change: Change,
  today: Day,
): readonly D[] {
  const { code, from } = change;
  const { to, place } = change.kind === 'move' ? change : {};
  const sheet = days.find(({ day }) => day === from)?.sheets.find((each) => each.code === code);
  if (sheet === undefined) return days;
  return days.map((day) => {
    if (day.day === to) return withSheet(day, movedSheet(sheet, from < today), place);
    const isLeft = day.day === from && from >= today;
    return isLeft ? { ...day, sheets: day.sheets.filter((each) => each !== sheet) } : day;
  });
}

/** A sheet that was not done when it was planned for is on its new day because of that. */
function movedSheet(sheet: SheetCard, wasMissed: boolean): SheetCard {
  const { movesOnTo: _before, ...moved } = sheet;
  return wasMissed ? { ...moved, why: 'moved-on' } : moved;
}

/** The day with the sheet at its place. Sheets that are done come first: the others can still change places. */
function withSheet<D extends PlannedDay>(day: D, sheet: SheetCard, place = Infinity): D {
  const others = openOf(day).filter(({ code }) => code !== sheet.code);
  const sheets = [...doneOf(day), ...others.slice(0, place), sheet, ...others.slice(place)];
  const isSame = sheets.every(({ code }, at) => code === day.sheets[at]?.code);
  return isSame && sheets.length === day.sheets.length ? day : { ...day, sheets };
}

/** The days that are not as they were. */
export function daysChanged<D extends PlannedDay>(
  before: readonly D[],
  after: readonly D[],
): readonly D[] {
  return after.filter((day) => !before.includes(day));
}

/** What is to be kept of the days. */
export function draftsOf(child: Id, days: readonly PlannedDay[]): readonly Draft[] {
  return days.map(({ day, sheets }) => planOf(child, day, sheets));
}

/** Before which of the open sheets one lies that is dropped beside the sheet with the code; none: after all. */
export function placeBeside(
  day: PlannedDay,
  dropped: string,
  beside: string,
  side: 'before' | 'after',
): number | undefined {
  const others = openOf(day).filter(({ code }) => code !== dropped);
  const place = others.findIndex(({ code }) => code === beside);
  if (place < 0) return undefined;
  return side === 'before' ? place : place + 1;
}

/** Names one sheet of one day. */
export function sheetKey(day: Day, code: string): string {
  return `${day} ${code}`;
}

/** The sheets whose activity is the same as that of the sheet before; what was never done counts as not there. */
export function twiceInRow(days: readonly PlannedDay[], today: Day): ReadonlySet<string> {
  const given = days.flatMap((day) =>
    [...doneOf(day), ...(day.day < today ? [] : openOf(day))].map((sheet) => ({
      key: sheetKey(day.day, sheet.code),
      activity: sheet.activity,
    })),
  );
  return new Set(
    given
      .filter(({ activity }, place) => activity === given[place - 1]?.activity)
      .map(({ key }) => key),
  );
}
