// Rows of invented children as entries that end before a day.
import { type Random, randomFrom } from '../../base/index.ts';
import {
  type Day,
  type Draft,
  type Entry,
  ID_RANDOM_BYTES,
  type Id,
  type Month,
  newId,
  stamped,
} from '../../records/index.ts';
import { addDays, dayNumber, MS_A_DAY, mondayOf, weekdayOf } from '../days.ts';
import { seedOf } from '../seed.ts';
import type { DemoWords } from './demo-words.ts';
import { type DemoChild, type DemoGroup, type DemoSheet, tasksOf } from './rows.ts';

const MS_A_MINUTE = 60_000;
const MONTHS_A_YEAR = 12;
/** At 9 in the morning at Greenwich it is the same day from Alaska to Tonga, or one hour from it. */
const MORNING_MINUTES = 9 * 60;
const MINUTES_A_SHEET = 7;
/** Friday, from the Monday after it. */
const FRIDAY_BEFORE = -3;

/** Something that is recorded of a child, whose id is known only when it is made. */
interface Moment {
  readonly at: number;
  readonly nickname: string;
  readonly draft: (child: Id) => Draft;
}

/**
 * All entries are marked `demo`; their ids rise, and the same day gives the same entries. What was done ends before
 * `lastDay`, what is planned reaches to the end of its week, and weekdays stay weekdays.
 */
export function entriesOf(group: DemoGroup, lastDay: Day, words: DemoWords): readonly Entry[] {
  const random = randomFrom(seedOf('demo', lastDay));
  const ids = new Map<string, Id>();
  const entries: Entry[] = [];
  for (const { at, nickname, draft } of momentsUntil(group, lastDay, words)) {
    const last = entries.at(-1)?.id;
    const id = newId({
      now: at,
      random: randomBytes(random),
      ...(last === undefined ? {} : { last }),
    });
    const child = ids.get(nickname) ?? id;
    ids.set(nickname, child);
    entries.push(stamped({ ...draft(child), demo: true }, id, at));
  }
  return entries;
}

function momentsUntil({ children }: DemoGroup, lastDay: Day, words: DemoWords): readonly Moment[] {
  return children
    .flatMap((child) => [
      arrival(child, lastDay, words),
      ...plansOf(child, lastDay),
      ...resultsOf(child, lastDay, words),
    ])
    .sort((one, other) => one.at - other.at);
}

/** A child is entered on the Friday before its first week. */
function arrival(
  { nickname, bornMonths, sheets, plans: _plans, ...facts }: DemoChild,
  lastDay: Day,
  words: DemoWords,
): Moment {
  const birthMonth =
    bornMonths === undefined ? {} : { birthMonth: monthBefore(lastDay, bornMonths) };
  const first = addDays(mondayOf(lastDay), sheets[0]?.day ?? 0);
  return {
    at: timeOn(fridayBefore(first), 0),
    nickname,
    draft: (child) => ({
      kind: 'child',
      child,
      nickname: words.nickname(nickname),
      ...birthMonth,
      ...facts,
    }),
  };
}

function plansOf({ nickname, plans }: DemoChild, lastDay: Day): readonly Moment[] {
  return plans.map(({ day: place, sheets }) => {
    const day = addDays(mondayOf(lastDay), place);
    return {
      at: timeOn(fridayBefore(day), MINUTES_A_SHEET * (1 + weekdayOf(day))),
      nickname,
      draft: (child) => ({ kind: 'plan', child, day, sheets }),
    };
  });
}

function resultsOf(
  { nickname, sheets }: DemoChild,
  lastDay: Day,
  words: DemoWords,
): readonly Moment[] {
  return sheets.flatMap((sheet, place) => {
    const day = addDays(mondayOf(lastDay), sheet.day);
    if (day >= lastDay) return [];
    const before = sheets.slice(0, place).filter((other) => other.day === sheet.day).length;
    const at = timeOn(day, MINUTES_A_SHEET * (before + 1));
    return [{ at, nickname, draft: (child: Id) => resultOf(sheet, child, day, words) }];
  });
}

function resultOf(sheet: DemoSheet, child: Id, day: Day, words: DemoWords): Draft {
  const { day: _place, did: _did, chosen: _chosen, code, note, ...noted } = sheet;
  const tasks = tasksOf(sheet, (choice) => words.chosen(code, choice));
  const written = note === undefined ? {} : { note: words.note(note) };
  return { kind: 'result', child, code, day, tasks, ...noted, ...written };
}

function fridayBefore(day: Day): Day {
  return addDays(mondayOf(day), FRIDAY_BEFORE);
}

/** Milliseconds since 1970, so many minutes after the morning of the day began. */
function timeOn(day: Day, minutes: number): number {
  return dayNumber(day) * MS_A_DAY + (MORNING_MINUTES + minutes) * MS_A_MINUTE;
}

function monthBefore(day: Day, months: number): Month {
  const [year = 0, month = 1] = day.split('-').map(Number);
  const count = MONTHS_A_YEAR * year + month - 1 - months;
  const inYear = String((count % MONTHS_A_YEAR) + 1).padStart(2, '0');
  return `${Math.floor(count / MONTHS_A_YEAR)}-${inYear}`;
}

function randomBytes(random: Random): Uint8Array {
  return Uint8Array.from({ length: ID_RANDOM_BYTES }, () => random.int(0, 255));
}
