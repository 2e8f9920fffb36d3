// What the Today screen says; fetched with it.
import type { Day } from '../../records/index.ts';
import type { PlanWishes, SheetCard } from '../planning/cards.ts';
import { minutesTold } from '../planning/planned.ts';
import { words as wishWords } from '../planning/wishes-words.ts';
import { dayWriter } from '../speaking/dates.ts';
import { capital, shared } from '../speaking/shared.ts';
import { spoken, type Telling } from '../speaking/spoken.ts';
import { words as shell } from '../words.ts';
import { MESSAGES } from './messages-en.ts';

/** What can be done with a sheet of the day, in the order of the list. */
export const SHEET_CHANGES = [
  'something-else',
  'easier',
  'harder',
  'earlier',
  'later',
  'not-today',
] as const;
export type SheetChange = (typeof SHEET_CHANGES)[number];

type Facts = Pick<SheetCard, 'minutes' | 'isDone'>;
type Telt = Telling<typeof MESSAGES>;

export const words = spoken('app/today', MESSAGES, (telling) => {
  const { say, plain, under, language } = telling;
  const longDay = dayWriter(language, { weekday: 'long', day: 'numeric', month: 'long' });
  return {
    ...plain,
    today: (child: string) => say('today', { child }),
    longDay: (day: Day) => say('day', { day: longDay(day) }),
    looking: (child: string) => say('looking', { child }),
    sum: (sheets: readonly Facts[]) => sum(telling, sheets),
    picture: (name: string) => say('picture', { name }),
    about: ({ content, step, steps, hand }: SheetCard) =>
      say(hand === undefined ? 'about' : 'about.left', { content, step, steps }),
    size: ({ minutes, tasks }: SheetCard) =>
      say('size', { minutes: aboutMinutes(telling, minutes), tasks: say('tasks', { tasks }) }),
    layOutFor: (things: readonly string[]) => say('layOutFor', { things: shared.inSeries(things) }),
    of: (what: string, name: string) => say('of', { what, name }),
    changes: under('changes') satisfies Readonly<Record<SheetChange, string>>,
    changed: {
      'something-else': ({ name }: SheetCard, before: SheetCard) =>
        say('changed.something-else', { sheet: capital(name), before: before.name }),
      easier: ({ name }: SheetCard) => say('changed.easier', { sheet: capital(name) }),
      harder: ({ name }: SheetCard) => say('changed.harder', { sheet: capital(name) }),
    },
    noOther: { 'something-else': plain.noOther, ...shell.noNotch },
    moved: {
      earlier: ({ name }: SheetCard) => say('moved.earlier', { sheet: capital(name) }),
      later: ({ name }: SheetCard) => say('moved.later', { sheet: capital(name) }),
    },
    takenOut: ({ name, why }: SheetCard) =>
      say(why === 'moved-on' ? 'putOff' : 'takenOut', { sheet: capital(name) }),
    notKept: (reason: string) => say('notKept', { reason }),
    lacking: (things: readonly string[]) => say('lacking', { things: shared.inSeries(things) }),
    nothingSuits: (child: string, wishes: PlanWishes) => nothingSuits(telling, child, wishes),
    fileName: (child: string, day: Day) => `${child} ${day}`,
  };
});

function aboutMinutes({ say }: Telt, minutes: number): string {
  return say('minutes', { minutes: minutesTold(minutes) });
}

/** `3 sheets, about 9 minutes.`, and how many of them are left once some are done; empty where there are none. */
function sum(telling: Telt, sheets: readonly Facts[]): string {
  const { say } = telling;
  const all = sheets.length;
  if (all === 0) return '';
  const left = sheets.filter(({ isDone }) => !isDone);
  if (left.length === 0) return capital(say('sum.done', { sheets: all }));
  const total = left.reduce((sofar, sheet) => sofar + sheet.minutes, 0);
  const minutes = aboutMinutes(telling, total);
  return left.length === all
    ? say('sum.all', { sheets: all, minutes })
    : say('sum.left', { left: left.length, sheets: all, minutes });
}

function nothingSuits({ say }: Telt, child: string, { supplies, print }: PlanWishes): string {
  const grey = print === 'grey' ? '.grey' : '';
  const { wishes } = wishWords;
  if (supplies === undefined) {
    return grey === ''
      ? say('nothingSuits.child', { child })
      : say('nothingSuits.grey', { child, wishes });
  }
  const things = shared.withCommas(supplies.map((kind) => wishWords.thingNames[kind]));
  const which = things === '' ? 'nothing' : 'things';
  return say(`nothingSuits.${which}${grey}`, { child, things, wishes });
}
