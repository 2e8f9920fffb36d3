// What the Record screen says; fetched with it.
import type { Deed } from '../../activities/index.ts';
import { codeIn } from '../../page/index.ts';
import type {
  ColourVision,
  HelpLevel,
  Mood,
  Outcome,
  TaskResult,
  WritingHand,
} from '../../records/index.ts';
import { dayWriter } from '../speaking/dates.ts';
import { piecesOf } from '../speaking/pieces.ts';
import { capital, shared } from '../speaking/shared.ts';
import { spoken, type Telling } from '../speaking/spoken.ts';
import type { Keeping } from '../store/keeping.ts';
import { MESSAGES } from './messages-en.ts';

export type Tried = Exclude<Outcome, 'not-tried'>;

type Telt = Telling<typeof MESSAGES>;

export const words = spoken('app/record', MESSAGES, (telling) => ({
  ...telling.plain,
  ...childWords(telling),
  ...sheetWords(telling),
  ...figureWords(telling),
  ...resultWords(telling),
  ...backupWords(telling),
}));

function childWords({ say, under }: Telt) {
  return {
    changeChild: (child: string) => say('changeChild', { child }),
    deleteChild: (child: string) => say('deleteChild', { child }),
    hands: under('hands') satisfies Readonly<Record<WritingHand, string>>,
    languageUnknown: (name: string) => say('languageUnknown', { name }),
    visions: under('visions') satisfies Readonly<Record<ColourVision, string>>,
    /** Easiest first. */
    deedNames: under('deedNames') satisfies Readonly<Record<Deed, string>>,
    savedChild: (child: string) => say('savedChild', { child }),
    deleteQuestion: (child: string, results: number) => say('deleteQuestion', { child, results }),
    deleted: (child: string) => say('deleted', { child }),
  };
}

function sheetWords({ say, under }: Telt) {
  const { 'not-tried': _, ...tried } = under('outcomes') satisfies Readonly<
    Record<Outcome, string>
  >;
  return {
    recordSheet: (child: string) => say('recordSheet', { child }),
    recorded: (sheet: string) => say('recorded', { sheet }),
    sheetFound: (activity: string, step: number, tasks: number) =>
      say('sheetFound', { sheet: capital(activity), step, tasks }),
    wholes: under('wholes') satisfies Readonly<Record<Tried, string>>,
    task: (number: number) => say('task', { number }),
    tried,
    helps: under('helps') satisfies Readonly<Record<HelpLevel, string>>,
    moods: under('moods') satisfies Readonly<Record<Mood, string>>,
    instead: (number: number) => say('instead', { number }),
  };
}

/** Of figures that can be tapped. */
function figureWords({ say, plain, under }: Telt) {
  const outcomes: Readonly<Record<Outcome, string>> = under('outcomes');
  return {
    figureOf: (task: number, figure: string) => say('figureOf', { task, figure }),
    rightFigure: (figure: string) => say('rightFigure', { figure }),
    notedFigure: (figure: string, label: string) => say('notedFigure', { figure, label }),
    numbered: (name: string, number: number) => say('numbered', { name, number }),
    place: (number: number) => say('place', { number }),
    takenFor: (figure: string, label: string) => say('takenFor', { figure, label }),
    chosenAt: (place: string, label: string) => say('chosenAt', { place, label }),
    chosenInstead: (label: string) => say('chosenInstead', { label }),
    takeBack: (task: number, noted: string) => say('takeBack', { task, noted }),
    tapped: (task: number, outcome: Outcome | undefined, noted: readonly string[]) => {
      const first = outcome === undefined ? plain.open : outcomes[outcome];
      return say('tapped', { task, facts: shared.inSeries([first, ...noted]) });
    },
  };
}

function resultWords({ say, under, language }: Telt) {
  const longDay = dayWriter(language, { dateStyle: 'long' });
  const moods: Readonly<Record<Mood, string>> = under('moods');
  const helps: Readonly<Record<HelpLevel, string>> = under('helps');
  /** `3 right, 1 not yet`. */
  const inCounts = (tasks: readonly TaskResult[]) =>
    shared.withCommas(
      OUTCOMES.flatMap((outcome) => {
        const count = tasks.filter((task) => task.outcome === outcome).length;
        return count === 0 ? [] : [say(`counted.${outcome}`, { count })];
      }),
    );
  return {
    savedResult: (child: string, sheet: string, tasks: readonly TaskResult[]) =>
      say('savedResult', { child, sheet, counts: inCounts(tasks) }),
    undoOf: (what: string) => say('undoOf', { what }),
    results: (child: string) => say('results', { child }),
    sheetName: (activity: string, step: number) => say('sheetName', { activity, step }),
    sheetOfCode: (code: string) => say('sheetOfCode', { code: codeIn(language, code) }),
    inCounts,
    insteadOf: (number: number, label: string) => say('insteadOf', { number, label }),
    helpWas: (help: HelpLevel) => say('helpWas', { help: helps[help] }),
    moodWas: (mood: Mood) => moods[mood],
    minutesWere: (minutes: number) => say('minutesWere', { minutes }),
    beside: (facts: readonly string[]) =>
      facts.reduce((before, next) => say('beside', { before, next })),
    longDay: (day: string) => say('longDay', { day: longDay(day) }),
  };
}

const OUTCOMES: readonly Outcome[] = ['right', 'with-help', 'not-yet', 'not-tried'];

function backupWords({ say, under }: Telt) {
  return {
    keeping: under('keeping') satisfies Readonly<Record<Keeping, string>>,
    backedUp: (entries: number) =>
      piecesOf((controls) => say('backedUp', { ...controls, entries }), ['file']),
    restored: (added: number) => say('restored', { added }),
    notRestored: (reason: string) => say('notRestored', { reason }),
    backupName: (day: string) => say('backupName', { day }),
  };
}
