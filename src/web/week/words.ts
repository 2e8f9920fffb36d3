// What the Week screen says; fetched with it.
import type { Skill } from '../../activities/index.ts';
import type { Day } from '../../records/index.ts';
import { SKILL_NAMES } from '../planning/words.ts';
import type { Order } from './paper-order.ts';
import type { Weekday } from './week-days.ts';

const DAY_NAMES: Readonly<Record<Weekday, string>> = {
  monday: 'Monday',
  tuesday: 'Tuesday',
  wednesday: 'Wednesday',
  thursday: 'Thursday',
  friday: 'Friday',
  saturday: 'Saturday',
  sunday: 'Sunday',
};

const format = (options: Intl.DateTimeFormatOptions) => {
  const written = new Intl.DateTimeFormat('en-GB', { ...options, timeZone: 'UTC' });
  return (day: Day) => written.format(new Date(`${day}T00:00Z`));
};
const weekday = format({ weekday: 'long' });
const date = format({ day: 'numeric', month: 'long' });
const longDate = format({ day: 'numeric', month: 'long', year: 'numeric' });

const ORDERS: Readonly<Record<Order, string>> = {
  'by-child': 'by child, then by day',
  'by-day': 'by day, then by child',
};

const counted = (count: number, noun: string, plural = `${noun}s`) =>
  `${count} ${count === 1 ? noun : plural}`;

/** `Fern`, `Fern and Wren`, `Fern, Wren and 3 more`. */
function names(all: readonly string[]): string {
  const [first = '', second = ''] = all;
  if (all.length <= 1) return first;
  if (all.length === 2) return `${first} and ${second}`;
  if (all.length === 3) return `${first}, ${second} and ${all[2]}`;
  return `${first}, ${second} and ${all.length - 2} more`;
}

/** `Monday to Friday` where they follow one another, else each by name. */
function days(all: readonly Weekday[]): string {
  const everyDay = Object.keys(DAY_NAMES);
  const from = everyDay.indexOf(all[0] ?? '');
  const areInRow = all.every((name, place) => everyDay[from + place] === name);
  const [first, last] = [all[0], all.at(-1)].map((name) => (name ? DAY_NAMES[name] : ''));
  if (areInRow && all.length > 2) return `${first} to ${last}`;
  return all.map((name) => DAY_NAMES[name]).join(', ');
}

function about(minutes: number): string {
  const whole = Math.max(1, Math.round(minutes));
  return `about\u00a0${whole}\u00a0min`;
}

export const words = {
  screen: 'The week',
  weekOf: (monday: Day) => `Week of ${longDate(monday)}`,
  before: 'Week before',
  after: 'Week after',
  backToNow: 'Back to this week',

  wanted: 'What to plan for',
  summary: (children: readonly string[], weekdays: readonly Weekday[], minutes: number) =>
    `For ${names(children)}, ${days(weekdays)}, about ${minutes} minutes a day`,
  children: 'Children',
  all: 'All children',
  only: (name: string) => `Only ${name}`,
  weekdays: 'Days',
  dayNames: DAY_NAMES,
  favoured: 'More of',
  favouredHelp: 'Every other sheet is of these. Each other skill still comes where there is room.',
  skills: SKILL_NAMES satisfies Readonly<Record<Skill, string>>,
  noChildChosen: 'Choose whom to plan for.',
  noDayChosen: 'Choose days to plan for.',
  noDayLeft: 'None of these days is left in this week. Go on to the week after, or choose others.',

  plan: 'Plan the week',
  planFor: (children: readonly string[]) => `Plan the week for ${names(children)}`,
  planAnew: 'Plan anew',
  anewHelp: 'From today on; what is done stays. You can take it back.',
  planning: (name: string, place: number, total: number) =>
    total === 1 ? `Planning for ${name} …` : `Planning for ${name}, ${place} of ${total} …`,
  stop: 'Stop',
  planned: (children: readonly string[], sheets: number) =>
    `Planned for ${names(children)}: ${counted(sheets, 'sheet')}.`,
  notKept: (objection: string) =>
    `This is on the screen, but could not be kept yet. ${objection} Nothing of it is lost while this page is open.`,

  calendar: 'The plan',
  child: 'Child',
  childBefore: 'Child before',
  childAfter: 'Next child',
  reading: 'Looking …',
  weekday,
  date,
  longDay: (day: Day) => `${weekday(day)} ${date(day)}`,
  today: 'today',
  listOf: (name: string, day: Day) => `${name}, ${weekday(day)} ${date(day)}`,
  nothing: 'Nothing planned',
  nothingWas: 'Nothing was planned',
  notPlannedYet: 'Nothing is planned for this week yet.',

  sheet: (step: number, content: string, minutes: number) =>
    `step\u00a0${step} · ${content} · ${about(minutes)}`,
  done: 'done',
  notDone: 'not done',
  movesOn: (day: Day, today: Day) =>
    `moves on to ${day === today ? 'today' : `${weekday(day)} ${date(day)}`}`,
  twice: 'the same activity as just before',
  more: (name: string, day: Day) => `${name}: why, and where to, ${weekday(day)}`,
  facts: (step: number, steps: number, content: string, tasks: number) =>
    `Step ${step} of ${steps}, ${content}, ${counted(tasks, 'task')}`,
  layOut: (things: readonly string[]) => `Lay out: ${things.join('; ')}.`,
  code: 'Sheet code',
  moveTo: 'Move to',
  moveToDay: (day: Day, today: Day) => `Move to ${day === today ? 'today' : weekday(day)}`,
  dayShort: (day: Day, today: Day) => (day === today ? 'today' : weekday(day)),
  moveToToday: 'Move to today',
  onTheDay: 'On the day',
  earlier: 'Earlier',
  later: 'Later',
  takeOut: 'Take out',
  moved: (sheet: string, day: Day) => `${sheet} is on ${weekday(day)} now.`,
  movedInDay: (sheet: string, place: number) =>
    `${sheet} comes ${place === 1 ? 'first' : `as number ${place}`} of what is left on that day.`,
  takenOut: (sheet: string, day: Day) => `${sheet} is taken out of ${weekday(day)}.`,

  onPaper: 'On paper',
  print: {
    what: 'Which days',
    order: 'In which order',
    before: 'Print ',
    week: 'the whole week',
    between: ', ',
    after: (sheets: number) => `: ${counted(sheets, 'sheet')} not done yet.`,
    orders: ORDERS,
  },
  fileName: (children: readonly string[], monday: Day, day: Day | undefined) => {
    const who = children.length === 1 ? children[0] : `${children.length} children`;
    return day === undefined ? `${who} week of ${monday}` : `${who} ${day}`;
  },
} as const;
