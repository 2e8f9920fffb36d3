// What the Today screen says; fetched with it.
import type { Day } from '../../records/index.ts';
import type { PlanWishes, SheetCard } from '../planning/cards.ts';
import { words as wishWords } from '../planning/wishes-words.ts';
import { capital, words as shell } from '../words.ts';

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

const CHANGES: Readonly<Record<SheetChange, string>> = {
  'something-else': 'Something else',
  easier: 'Easier',
  harder: 'Harder',
  earlier: 'Give it earlier',
  later: 'Give it later',
  'not-today': 'Not today',
};

const LONG_DAY = new Intl.DateTimeFormat('en-GB', {
  weekday: 'long',
  day: 'numeric',
  month: 'long',
  timeZone: 'UTC',
});

const counted = (count: number, one: string, many = `${one}s`) =>
  `${count} ${count === 1 ? one : many}`;

/** Names of activities are sentences themselves. */
const quoted = (name: string) => `“${capital(name)}”`;

/** Never less than one, so that it is never said to take no time. */
const aboutMinutes = (minutes: number) =>
  `about ${counted(Math.max(1, Math.round(minutes)), 'minute')}`;

type Facts = Pick<SheetCard, 'minutes' | 'isDone'>;

/** `3 sheets, about 9 minutes.`, and how many of them are left once some are done; empty where there are none. */
function sum(sheets: readonly Facts[]): string {
  if (sheets.length === 0) return '';
  const left = sheets.filter(({ isDone }) => !isDone);
  const all = counted(sheets.length, 'sheet');
  if (left.length === 0) return `${capital(all)}, and all of it is done.`;
  const minutes = aboutMinutes(left.reduce((total, sheet) => total + sheet.minutes, 0));
  return left.length === sheets.length
    ? `${all}, ${minutes}.`
    : `${left.length} of ${all} left, ${minutes}.`;
}

function nothingSuits(child: string, { supplies, print }: PlanWishes): string {
  const grey = print === 'grey' ? ' printed in grey' : '';
  if (supplies !== undefined) {
    const things = supplies.map((kind) => wishWords.thingNames[kind]).join(', ');
    return `No sheet suits ${child}${grey} with ${things || 'nothing'} in the house. More can be chosen under “${wishWords.wishes}”.`;
  }
  if (grey !== '') {
    return `No sheet${grey} suits ${child}. Colour can be chosen under “${wishWords.wishes}”.`;
  }
  return `No sheet suits what is recorded of ${child}. What the hand does well and the colour vision can be changed in Record.`;
}

export const words = {
  today: (child: string) => `Today for ${child}`,
  longDay: (day: Day) => LONG_DAY.format(new Date(`${day}T00:00Z`)),
  looking: (child: string) => `Looking for what suits ${child} …`,
  sum,
  sheets: 'Sheets of the day',
  picture: (name: string) => `Picture of the sheet: ${name}`,
  about: ({ content, step, steps, hand }: SheetCard) => {
    const about = `with ${content} · step\u00a0${step}\u00a0of\u00a0${steps}`;
    return hand === undefined ? about : `${about} · for the left\u00a0hand`;
  },
  size: ({ minutes, tasks }: SheetCard) => `${aboutMinutes(minutes)} · ${counted(tasks, 'task')}`,
  layOutFor: (things: readonly string[]) => `Lay out ${things.join('; ')}.`,
  done: 'Done',
  seeRecord: 'See it in Record',
  record: 'Record how it went',
  of: (what: string, name: string) => `${what}: ${name}`,

  change: 'Change',
  changing: 'Changing …',
  changes: CHANGES,
  changed: {
    'something-else': ({ name }: SheetCard, before: SheetCard) =>
      `${quoted(name)} takes the place of “${before.name}”.`,
    easier: ({ name }: SheetCard) => `${quoted(name)}, one notch easier.`,
    harder: ({ name }: SheetCard) => `${quoted(name)}, one notch harder.`,
  },
  noOther: {
    'something-else':
      'Nothing else suits now. More may suit with other wishes, or once more is recorded.',
    ...shell.noNotch,
  },
  moved: {
    earlier: ({ name }: SheetCard) => `${quoted(name)} comes earlier.`,
    later: ({ name }: SheetCard) => `${quoted(name)} comes later.`,
  },
  takenOut: ({ name, why }: SheetCard) =>
    why === 'moved-on'
      ? `${quoted(name)} is put off again, and planned for tomorrow.`
      : `${quoted(name)} is taken out of today.`,
  notKept: (reason: string) => `The plan could not be kept. ${reason}`,

  forTheDay: 'For the whole day',
  layOut: 'Lay out',
  lacking: (things: readonly string[]) =>
    `By the last count of your supplies you lack ${things.join('; ')}.`,
  another: 'Another plan for today',
  anotherMade: 'Another plan for today.',
  noOtherPlan: 'There is no other plan that suits now. More may suit with other wishes.',
  keptStands:
    'This plan is kept, so it stands as it is. “Another plan for today” follows the wishes.',
  nothingLeft: 'Nothing is planned for today any more.',
  nothingSuits,
  fileName: (child: string, day: Day) => `${child} ${day}`,
} as const;
