// What Growth says, on the screen and in the printed report alike; fetched with it.
import type { Trend, Watch } from '../../plan/index.ts';
import type { Day } from '../../records/index.ts';
import type { CourseWords, FittingWords, GrowthView } from '../planning/cards.ts';
import { capital } from '../words.ts';

type Pair = GrowthView['pairs'][number];
type Steps = Pick<FittingWords, 'step' | 'least' | 'most' | 'steps'>;

const LONG_DAY = new Intl.DateTimeFormat('en-GB', { dateStyle: 'long', timeZone: 'UTC' });

function longDay(day: Day): string {
  return LONG_DAY.format(new Date(`${day}T00:00Z`));
}

const counted = (count: number, one: string, many = `${one}s`) =>
  `${count} ${count === 1 ? one : many}`;

/** Of all skills together, after a colon. */
const TRENDS: Readonly<Record<Trend, string>> = {
  unknown: 'too few answers so far to say whether it moved',
  unclear: 'the answers so far do not tell whether it moved',
  rising: 'more goes right than some weeks ago, or as much at harder sheets',
  falling:
    'less goes right than some weeks ago, or as much only at easier sheets. That can have many reasons',
};

/** Of one skill; where nothing can be said, in few words, since it is so of most. */
const SKILL_TRENDS: Readonly<Record<Trend, string>> = {
  ...TRENDS,
  unknown: 'whether it moved is not known yet',
  unclear: 'whether it moved is not clear yet',
};

/** Keeps a step and its number on one line. */
const NBSP = '\u00a0';
const nameOfStep = (step: number) => `step${NBSP}${step}`;

/** How sure it is which step fits. */
function sureOf({ least, most, steps }: Steps): string {
  if (least === 1 && most === steps) return 'how far is not known well yet';
  if (least === most) return `probably ${nameOfStep(least)}`;
  if (least === 1) return `probably ${nameOfStep(most)} or easier`;
  if (most === steps) return `probably ${nameOfStep(least)} or harder`;
  return `probably between ${nameOfStep(least)} and ${nameOfStep(most)}`;
}

const stepOf = ({ step, steps }: Steps) => `${nameOfStep(step)} of${NBSP}${steps}`;
const pairName = ({ pair: [one, other] }: Pair) => `${one} with ${other}`;
const pairCounts = ({ times, opportunities }: Pair) =>
  `${counted(times, 'time')} of ${counted(opportunities, 'chance')}`;
const CONFUSED = 'more often than by chance';

const COLOUR_SIGHT =
  'At three and four this is common, and it says nothing about the eyes. If you wonder about colour sight, an eye-care professional can check it.';
const PAIR_CARE =
  'This is common while such things are new, and it does not say why. If you worry about how the child sees or develops, an eye-care or child-development professional can look.';
const FALLING_CARE =
  'Tiredness, illness, a change at home or sheets that do not suit can all do that. If it lasts and you worry, speak with a child-development or eye-care professional.';

const WATCHES: Readonly<Record<Watch, string>> = {
  colours: `Two colours are taken for each other ${CONFUSED}; they are marked under “Mixed up”. ${COLOUR_SIGHT}`,
  pair: `Two things are taken for each other ${CONFUSED}; they are marked under “Mixed up”. ${PAIR_CARE}`,
  falling: `Over the last weeks clearly less goes right than before. ${FALLING_CARE}`,
};

export const words = {
  longDay,
  looking: 'Looking through the records …',
  title: (name: string) => `How ${name} is getting on`,
  noRecords: (name: string) =>
    `Nothing is recorded of ${name} yet. Once sheets are recorded, this page shows which steps fit, how that moves over the weeks, and what is mixed up.`,
  recordFirst: 'Record a sheet',
  facts: ({ sheets, days, from = '', to = '' }: GrowthView) =>
    `${counted(sheets, 'sheet')} on ${counted(days, 'day')}, ${
      from === to ? longDay(to) : `from ${longDay(from)} to ${longDay(to)}`
    }.`,
  allSkills: (trend: Trend) => `All skills together: ${TRENDS[trend]}.`,
  skillTrend: (trend: Trend) => `${capital(SKILL_TRENDS[trend])}.`,
  unread: (count: number) =>
    count === 1
      ? 'One record has a code that this version cannot read. It is left out here.'
      : `${count} records have codes that this version cannot read. They are left out here.`,

  notMet: 'No sheet of this skill is recorded yet.',
  fitsNow: 'Fits now',
  stepOf,
  sureOf,
  fittingLine: (fitting: FittingWords) =>
    `${capital(fitting.name)}: ${stepOf(fitting)}, ${sureOf(fitting)}.`,
  noCourse: 'How it moves is drawn from the second day on.',
  course: (skill: string, { name, from, to, weeks }: CourseWords) => {
    const [first, last] = [weeks[0], weeks.at(-1)];
    const then = first === undefined ? '' : `${nameOfStep(first.step)} fitted at first`;
    const now = last === undefined ? '' : `${stepOf(last)} fits now, ${sureOf(last)}`;
    return `${capital(skill)} from ${longDay(from)} to ${longDay(to)}, in steps of ${name}: ${then}, ${now}.`;
  },
  measured: (name: string) => `The marks are steps of “${name}”.`,
  harder: 'harder',
  easier: 'easier',
  guide: nameOfStep,
  asTable: 'Show as table',
  tableOf: (skill: string, name: string) => `${capital(skill)}, week by week, in steps of ${name}`,
  week: 'Up to',
  sheets: 'Sheets',
  fitted: 'Step that fits',
  sure: 'How sure',

  mixedUp: 'Mixed up',
  nothingMixedUp:
    'Nothing was noted in the last half year. Where you note in Record what was chosen instead of the right one, the pairs that are mixed up come to stand here.',
  mixedUpFacts:
    'How often one was chosen instead of the other in the last half year, of how often it could have been. Why, the counts do not say.',
  pairs: 'Pairs that were mixed up',
  pair: 'Pair',
  howOften: 'How often',
  pairName,
  pairCounts,
  confused: CONFUSED,
  seldom: (count: number) => `${counted(count, 'pair')} met once or twice`,

  worthALook: 'Worth a look',
  watches: WATCHES,
  care: 'This is play and practice, not a test. What fits is reckoned from the sheets recorded here alone, by weights that are provisional. It gives no age, compares the child with nobody, and is no diagnosis.',

  report: {
    heading: 'A report on paper',
    about:
      'For the other parent, the nursery or the school: what stands here with its cautions, on one or two pages, with room for a remark.',
    paper: 'Paper',
    withNotes: 'Your notes',
    before: 'On ',
    between: ', ',
    after: '.',
    notes: { true: 'with your notes', false: 'without your notes' },
    lookThrough: 'Look through the notes before you pass them on.',
    nothing: 'Nothing is recorded yet.',
    written: (day: Day) => `Written on ${longDay(day)}.`,
    howToRead:
      'Of each skill the steps of its sheets that fit now are named. In the drawings the line is what fitted best, week by week; the pale band is where it probably lies, nine times in ten.',
    notMet: 'Not met yet',
    pairsOf: (all: number) => `Of ${all} pairs these are the most telling.`,
    morePairs: 'There was no room for further pairs.',
    pairRow: (pair: Pair) =>
      `${pairName(pair)}: ${pairCounts(pair)}${pair.isConfused ? `, ${CONFUSED}` : ''}`,
    notesHeading: 'Notes',
    note: (day: Day, note: string) => `${longDay(day)}: ${note}`,
    moreNotes: 'There was no room for further notes.',
    care: 'What this is, and what it is not',
    careFurther:
      'Colours or letters that are mixed up at three or four prove nothing. If you worry about how a child sees or develops, ask an eye-care or child-development professional.',
    remarks: 'Remarks',
    fields: ['Date', 'Signature'],
    foot: (name: string, day: Day) => `${name} · ${longDay(day)} · Samewise`,
    fileName: (name: string, day: Day) => `${name} ${day}`,
    lacking:
      'Where an underline stands, letters are missing that the font of this page does not have. Please write them in by hand.',
  },
} as const;
