// What the Record screen says; fetched with it.
import type { Deed } from '../../activities/index.ts';
import type {
  ColourVision,
  HelpLevel,
  Mood,
  Outcome,
  TaskResult,
  WritingHand,
} from '../../records/index.ts';
import type { Keeping } from '../store/keeping.ts';
import { capital } from '../words.ts';

export type Tried = Exclude<Outcome, 'not-tried'>;

const OUTCOMES: Readonly<Record<Outcome, string>> = {
  right: 'right',
  'with-help': 'right with help',
  'not-yet': 'not yet',
  'not-tried': 'not tried',
};

const WHOLE: Readonly<Record<Tried, string>> = {
  right: 'All right',
  'with-help': 'All with help',
  'not-yet': 'Not yet',
};

const HELP: Readonly<Record<HelpLevel, string>> = {
  none: 'none',
  'said-again': 'said again',
  pointed: 'pointed',
  'shown-one': 'showed one',
  'done-together': 'did it together',
};

const MOODS: Readonly<Record<Mood, string>> = {
  glad: 'glad',
  calm: 'calm',
  restless: 'restless',
  tired: 'tired',
  upset: 'upset',
};

const HANDS: Readonly<Record<WritingHand, string>> = {
  left: 'left',
  right: 'right',
  either: 'either',
};

const VISIONS: Readonly<Record<ColourVision, string>> = {
  normal: 'usual',
  'red-green': 'red–green, kind not known',
  protan: 'red–green, protan',
  deutan: 'red–green, deutan',
  tritan: 'blue–yellow, tritan',
};

/** Easiest first. */
const DEEDS: Readonly<Record<Deed, string>> = {
  point: 'point',
  sticker: 'place a sticker',
  'sign-dot': 'draw a dot',
  'colour-in': 'colour in',
  'sign-upright-line': 'an upright line',
  'sign-level-line': 'a level line',
  ring: 'ring a figure',
  'sign-ring': 'a ring',
  join: 'join with a line',
  spots: 'fill with spots',
  cut: 'cut with scissors',
  'sign-plus': 'an upright cross',
  'upright-stripes': 'upright stripes',
  'level-stripes': 'level stripes',
  'sign-oblique-cross': 'a slanted cross',
  'slanted-stripes': 'slanted stripes',
  'sign-wave': 'a wave',
  waves: 'fill with waves',
  'sign-tick': 'a tick',
  zigzag: 'fill with zigzags',
  'sign-square': 'a square',
  checks: 'fill with checks',
  bricks: 'fill with bricks',
  'sign-triangle': 'a triangle',
};

const counted = (count: number, one: string, many = `${one}s`) =>
  `${count} ${count === 1 ? one : many}`;

/** `3 right, 1 not yet`. */
function inCounts(tasks: readonly TaskResult[]): string {
  return (Object.keys(OUTCOMES) as Outcome[])
    .map((outcome) => ({ outcome, count: tasks.filter((task) => task.outcome === outcome).length }))
    .filter(({ count }) => count > 0)
    .map(({ outcome, count }) => `${count} ${OUTCOMES[outcome]}`)
    .join(', ');
}

const LONG_DAY = new Intl.DateTimeFormat('en-GB', { dateStyle: 'long', timeZone: 'UTC' });

export const words = {
  children: 'Children',
  chooseChild: 'Whose record',
  noChild:
    'No child yet. Here you keep what each child did with a sheet. A nickname is enough to begin, and all of it stays in this browser.',
  addChild: 'Add a child',
  noChildOfDemo: 'No invented child is left.',
  changeChild: (name: string) => `Change ${name}`,
  deleteChild: (name: string) => `Delete ${name}`,
  nickname: 'Nickname',
  nicknameHelp: 'Whatever you call the child; the full name is not needed.',
  nicknameMissing: 'Write a nickname first.',
  restIsFree: 'All the rest can be left out. What is known helps to choose sheets that suit.',
  birthMonth: 'Month of birth',
  birthMonthHelp:
    'So that sheets suit the age from the first one on. As year and month, such as 2022-05.',
  birthMonthWrong: 'Write it as year and month, such as 2022-05, or leave it out.',
  hand: 'Writing hand',
  handHelp: 'Kept for layouts that come later; no sheet is chosen by it yet.',
  hands: HANDS,
  languages: 'Languages, the strongest first',
  languagesHelp:
    'Letters of another script come only where one of these is written in it. English names with commas between, such as Polish, English.',
  languageUnknown: (name: string) =>
    `“${name}” is no language known here. Use its English name, or its tag, such as pt-BR.`,
  vision: 'Colour vision, as a professional found it',
  visionHelp: 'So that no sheet is chosen on which two colours of a task look alike to this child.',
  visions: VISIONS,
  deeds: 'What the hand does well',
  deedsLabel: 'Tap all that go well, easiest first',
  deedsHelp:
    'So that no sheet is chosen that is harder for the hand, and none with scissors unless they are tapped here. With nothing tapped, the age tells.',
  deedNames: DEEDS,
  save: 'Save',
  cancel: 'Cancel',
  savedChild: (name: string) => `${name} is saved.`,
  deleteQuestion: (name: string, results: number) =>
    `Delete ${name} and ${counted(results, 'record')} for good?`,
  deleteFacts:
    'They go from this browser and cannot be brought back. A backup file made earlier still holds them: delete such files too if nothing is to be left.',
  deleted: (name: string) => `${name} and all that was recorded are deleted.`,

  recordSheet: (name: string) => `Record a sheet for ${name}`,
  sheetArea: 'The sheet',
  noSheet: 'The sheet appears here once it is picked, or its code is written.',
  ofToday: 'Today’s sheets',
  ofLastDays: 'Of the last days, not recorded yet',
  lookingUpToday: 'Looking up today’s sheets …',
  recorded: (sheet: string) => `${sheet}: recorded`,
  code: 'Code printed on the sheet',
  codeHelp: 'It stands at the foot of the sheet. Capitals and spaces do not matter.',
  sheetFound: (activity: string, step: number, tasks: number) =>
    `${capital(activity)}, step ${step}: ${counted(tasks, 'task')}.`,
  looking: 'Making the sheet again …',
  whole: 'The whole sheet',
  wholes: WHOLE,
  eachTask: 'Or task by task',
  task: (number: number) => `Task ${number}`,
  outcomes: OUTCOMES,
  untouched: 'A task that you leave open is kept as not tried.',
  tapHelp: 'Tap what was chosen.',
  bigger: 'Bigger',
  wholePage: 'Whole page',
  figureOf: (task: number, figure: string) => `Task ${task}: ${figure}`,
  rightFigure: (figure: string) => `${figure}, right`,
  notedFigure: (figure: string, label: string) => `${figure}, noted: ${label}`,
  numbered: (name: string, number: number) => `${name} ${number}`,
  place: (number: number) => `place ${number}`,
  takenForWhat: 'It was taken for',
  chosenInsteadWhat: 'Chosen instead',
  takenFor: (figure: string, label: string) => `${figure} taken for ${label}`,
  chosenAt: (place: string, label: string) => `${place}, chosen instead: ${label}`,
  chosenInstead: (label: string) => `chosen instead: ${label}`,
  takeBack: (task: number, noted: string) => `Task ${task}: take back “${noted}”`,
  tapped: (task: number, outcome: Outcome | undefined, noted: readonly string[]) =>
    `Task ${task}: ${[outcome === undefined ? 'open' : OUTCOMES[outcome], ...noted].join('; ')}.`,
  day: 'Day',
  more: 'More to note',
  help: 'Most help given',
  helps: HELP,
  mood: 'Mood',
  moods: MOODS,
  minutes: 'Minutes',
  note: 'Note',
  instead: (number: number) => `Task ${number}: chosen instead`,
  insteadHelp: 'A word or two is enough, such as orange circle.',
  saveRecord: 'Save the record',
  nothingChosen: 'Say first how it went: one tap for the whole sheet, or one for each task.',
  savedResult: (name: string, sheet: string, tasks: readonly TaskResult[]) =>
    `Saved for ${name}, ${sheet}: ${inCounts(tasks)}.`,
  undoOf: (what: string) => `Undo: ${what}`,

  results: (name: string) => `Records of ${name}`,
  noResults: 'Nothing recorded yet.',
  sheetName: (activity: string, step: number) => `${activity}, step ${step}`,
  sheetOfCode: (code: string) => `sheet ${code}`,
  inCounts,
  insteadOf: (number: number, label: string) => `task ${number}: ${label} instead`,
  helpWas: (help: HelpLevel) => `help: ${HELP[help]}`,
  moodWas: (mood: Mood) => MOODS[mood],
  minutesWere: (minutes: number) => counted(minutes, 'minute'),
  alsoRecorded: 'This sheet has another record of the same day. If it was given once, undo one.',
  earlier: 'Show earlier ones',
  longDay: (day: string) => LONG_DAY.format(new Date(`${day}T00:00Z`)),

  backup: 'Back up and restore',
  keeping: {
    kept: 'This browser keeps the records until you delete them.',
    'may-go':
      'This browser may throw the records away when its disk runs short or after a long time without a visit. A backup file is the safe place.',
    unknown:
      'This browser does not say whether it keeps the records for good. A backup file is the safe place.',
  } satisfies Record<Keeping, string>,
  noBackupYet: 'No backup was made in this visit.',
  backUp: 'Back up to a file',
  restore: 'Restore from a file',
  backedUp: (name: string, entries: number) =>
    `Saved as ${name}, with ${counted(entries, 'entry', 'entries')}. It is not encrypted: keep it as you would keep a notebook about a child.`,
  restoreHelp: 'Restoring adds what is not here yet; it never deletes.',
  restored: (added: number) =>
    added === 0
      ? 'Nothing was added: all that is in this file is here already.'
      : `${capital(counted(added, 'entry was', 'entries were'))} added. What was here has stayed.`,
  notRestored: (reason: string) => `Nothing was restored, and nothing was changed. ${reason}`,
  fileUnreadable: 'The browser could not read this file. Nothing was changed.',
  backupName: (day: string) => `samewise-records-${day}.json`,
} as const;
