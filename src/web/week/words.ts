// What the Week screen says; fetched with it.
import type { Day } from '../../records/index.ts';
import { minutesTold } from '../planning/planned.ts';
import { dayWriter } from '../speaking/dates.ts';
import { piecesOf } from '../speaking/pieces.ts';
import { shared } from '../speaking/shared.ts';
import { spoken, type Telling } from '../speaking/spoken.ts';
import { MESSAGES } from './messages-en.ts';
import type { Order } from './paper-order.ts';
import { WEEKDAYS, type Weekday } from './week-days.ts';

/** Some Monday. */
const MONDAY = Date.UTC(2024, 0, 1);
const DAY_MS = 86_400_000;

export const words = spoken('app/week', MESSAGES, (telling) => {
  const { say, plain, language } = telling;
  const weekday = dayWriter(language, { weekday: 'long' });
  const date = dayWriter(language, { day: 'numeric', month: 'long' });
  const longDate = dayWriter(language, { day: 'numeric', month: 'long', year: 'numeric' });
  const onDay = (day: Day) => ({ weekday: weekday(day), date: date(day) });
  const dayNames = Object.fromEntries(
    WEEKDAYS.map((name, place) => {
      const day = new Date(MONDAY + place * DAY_MS).toISOString().slice(0, 10);
      return [name, say('day', { day: weekday(day) })];
    }),
  ) as Readonly<Record<Weekday, string>>;
  const names = (all: readonly string[]) => namesText(telling, all);
  return {
    ...plain,
    ...paperWords(telling),
    weekOf: (monday: Day) => say('weekOf', { date: longDate(monday) }),
    summary: (children: readonly string[], weekdays: readonly Weekday[], minutes: number) =>
      say('summary', {
        children: names(children),
        days: daysText(telling, weekdays, dayNames),
        minutes,
      }),
    only: (child: string) => say('only', { child }),
    dayNames,
    planFor: (children: readonly string[]) => say('planFor', { children: names(children) }),
    planning: (child: string, place: number, total: number) =>
      say('planning', { child, place, total }),
    planned: (children: readonly string[], sheets: number) =>
      say('planned', { children: names(children), sheets }),
    notKept: (objection: string) => say('notKept', { objection }),
    weekday: (day: Day) => say('day', { day: weekday(day) }),
    date: (day: Day) => say('day', { day: date(day) }),
    longDay: (day: Day) => say('longDay', onDay(day)),
    listOf: (child: string, day: Day) => say('listOf', { child, ...onDay(day) }),
    sheet: (step: number, content: string, minutes: number) =>
      say('sheet', { step, content, minutes: minutesTold(minutes) }),
    movesOn: (day: Day, today: Day) =>
      day === today ? plain.movesOnToday : say('movesOn', onDay(day)),
    more: (sheet: string, day: Day) => say('more', { sheet, weekday: weekday(day) }),
    facts: (step: number, steps: number, content: string, tasks: number) =>
      say('facts', { step, steps, content, tasks }),
    layOut: (things: readonly string[]) => say('layOut', { things: shared.inSeries(things) }),
    moveToDay: (day: Day, today: Day) =>
      day === today ? plain.moveToToday : say('moveToDay', { weekday: weekday(day) }),
    dayShort: (day: Day, today: Day) =>
      day === today ? plain.today : say('day', { day: weekday(day) }),
    moved: (sheet: string, day: Day) => say('moved', { sheet, weekday: weekday(day) }),
    movedInDay: (sheet: string, place: number) => say('movedInDay', { sheet, place }),
    takenOut: (sheet: string, day: Day) => say('takenOut', { sheet, weekday: weekday(day) }),
  };
});

type Telt = Telling<typeof MESSAGES>;

function paperWords({ say, under }: Telt) {
  const who = (children: readonly string[]) =>
    children.length === 1 ? (children[0] ?? '') : say('file.children', { count: children.length });
  return {
    print: {
      ...under('print'),
      sentence: (sheets: number) =>
        piecesOf((controls) => say('print', { ...controls, sheets }), ['what', 'order']),
      orders: under('orders') satisfies Readonly<Record<Order, string>>,
    },
    fileName: (children: readonly string[], monday: Day, day: Day | undefined) =>
      day === undefined
        ? say('file.week', { who: who(children), monday })
        : say('file.day', { who: who(children), day }),
  };
}

/** `Fern`, `Fern and Wren`, `Fern, Wren and 3 more`. */
function namesText({ say }: Telt, all: readonly string[]): string {
  const [first = '', second = ''] = all;
  return all.length <= 3
    ? shared.listed(all)
    : say('namesAndMore', { first, second, more: all.length - 2 });
}

/** `Monday to Friday` where they follow one another, else each by name. */
function daysText(
  { say }: Telt,
  all: readonly Weekday[],
  names: Readonly<Record<Weekday, string>>,
): string {
  const [first] = all;
  const last = all.at(-1);
  const from = first === undefined ? -1 : WEEKDAYS.indexOf(first);
  const areInRow = all.every((name, place) => WEEKDAYS[from + place] === name);
  return areInRow && all.length > 2 && first && last
    ? say('daysInRow', { first: names[first], last: names[last] })
    : shared.withCommas(all.map((name) => names[name]));
}
