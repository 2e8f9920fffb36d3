// English words of the pages that go round the tasks.
import { GOALS_WORDS_EN } from './goals-words-en.ts';
import type {
  AdultWords,
  CutWords,
  MarkingWords,
  PageWords,
  PartName,
  RulerWords,
} from './page-words.ts';

/** `1 sheet`, `2 sheets`. */
function counted(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}

function listed(names: readonly string[]): string {
  const last = names[names.length - 1] ?? '';
  return names.length < 2 ? last : `${names.slice(0, -1).join(', ')} and ${last}`;
}

const partText = ({ activity, steps }: PartName) =>
  `“${activity}”, ${steps.count === 1 ? 'step' : 'steps'} ${steps.text}`;
/** More activities than this are counted in the title of a pack, not named: the list of sheets names them. */
const MOST_NAMED = 4;
/** Keeps a number and its unit on one line. */
const NBSP = '\u00a0';

const adult: AdultWords = {
  title: 'For the adult',
  packTitle: (parts) =>
    parts.length > MOST_NAMED
      ? `${parts.reduce((sum, { sheets }) => sum + sheets, 0)} sheets of ${parts.length} activities.`
      : `${listed(parts.map((part) => `${counted(part.sheets, 'sheet')} of ${partText(part)}`))}.`,
  layOut: 'Lay out',
  stickers: (diameterMm) => `Stickers, ${diameterMm}${NBSP}mm across:`,
  crayons: (colours) =>
    colours.length === 1 ? `a ${listed(colours)} crayon` : `crayons: ${listed(colours)}`,
  pencil: 'a pencil',
  scissors: 'scissors for children, with round ends; stay beside the child, or cut out yourself',
  glue: 'a glue stick for paper',
  nothing: 'nothing: the child points',
  start: 'To start',
  continued: 'For the adult, continued',
  partHeading: (part, sheets) =>
    `${partText(part)} (${part.sheets === 1 ? 'sheet' : 'sheets'} ${sheets})`,
  takes: 'Takes',
  minutes: ({ least, most }, sheets) => {
    const minutes = least === most ? counted(least, 'minute') : `${least} to ${most} minutes`;
    return `about ${minutes}${sheets === 1 ? '' : ' a sheet'}`;
  },
  say: 'Say',
  show: 'Show',
  showOne: (how, sheet) => (sheet === undefined ? how : `On sheet ${sheet}: ${how}`),
  helpHere: 'Help',
  easier: 'Easier',
  harder: 'Harder',
  lookFor: 'Look for',
  help: 'Help, from least to most',
  ladder: [
    'Wait a little, then say it again.',
    'Point out where to look, or cover the rest.',
    'Show how on another task.',
    'Do one together.',
    'Lead the hand only if the child wants it.',
  ],
  stop: 'When to stop',
  stopAdvice: [
    'Stop while it is fun, and when the child looks away, guesses or gets cross. What is left can wait ' +
      'for another day.',
    `Most children of five attend for 5 to 10${NBSP}minutes (CDC, “Learn the Signs”, 2022). For younger ` +
      'ones no figure has been published: go by the child.',
  ],
  size: 'True size',
  checkLine: '50 mm',
  checkAdvice: (paper) =>
    `Lay a ruler along this line. If it is not 50${NBSP}mm long, print again on ${paper} paper at ` +
    `100${NBSP}% (“actual size”, not “fit to page”); otherwise stickers will not fit their dots.`,
  cut: {
    title: 'To cut out',
    kinds: {
      cards:
        'Cards: one task each. Lay each at a place of its own; its code and number tell where it belongs.',
      'key-card': 'Key card: lay it beside the sheet, on the side of the hand that does not work.',
      pieces:
        'Pieces: the child cuts them out one at a time and sticks each in its empty place, instead of what ' +
        'else the sheet asks the hand to do. A slip spoils one piece only. A short line on a piece is at its foot.',
    },
    always: [
      'Print on one side of the paper only: what is on the back would be cut as well.',
      'Cut pieces are small: keep them from children under three.',
    ],
  },
  cutAdvice:
    'Where two sheets share a page, cut along the dashed line. Then lay the left or upper pile on the ' +
    'other: they lie in order.',
  care: 'Take care',
  cautions: [
    'Stay beside a child who works with stickers, and keep what is left over out of reach.',
    'If you use counters, buttons or beads instead: they are small parts and not for children ' +
      'under three, who may choke on them (16 CFR 1501 in the United States, EN 71-1 in Europe).',
    'This is play and practice. It is no test and no diagnosis. Stop while it is still fun.',
    'Colours mixed up at three or four prove nothing. If you worry about how a child sees or ' +
      'develops, ask an eye-care or child-development professional.',
    'The rules of your country, school or nursery come first.',
  ],
  sheets: 'The sheets',
  moreSheets: (count) => `and ${counted(count, 'more sheet')}, each with its code at the foot.`,
  proof: (tasks) =>
    `${tasks === 1 ? 'The task' : `All ${tasks} tasks`} of this pack ${tasks === 1 ? 'was' : 'were'} ` +
    'proven: a solver that reads only what is printed found the answer in the key, and no other. ' +
    'A sheet is made again from the code at its foot.',
};

const marking: MarkingWords = {
  title: 'The group',
  how: 'For each sheet write how many were right without help. Sheets in a column are different and equally hard.',
  pageTitle: (page, pages) => (pages === 1 ? 'The group' : `The group, page ${page} of ${pages}`),
  column: (number, activity, steps) =>
    `${number} · ${activity}, ${steps.count === 1 ? 'step' : 'steps'} ${steps.text}`,
  outOf: (tasks) => `of ${tasks}`,
};

const cut: CutWords = {
  cards: (code) => `The tasks of sheet ${code} as cards. Print on one side only.`,
  cardsTitle: (code) => `Cards of sheet ${code}`,
  key: (code) => `Cut out and lay beside sheet ${code}. Print on one side only.`,
  keyTitle: (code) => `Key of sheet ${code}`,
  keyAlt: 'what to look back at, as on the sheet',
  pieces: (code) => `Pieces for sheet ${code}. Print on one side only.`,
  piecesTitle: (code) => `Pieces for sheet ${code}`,
  page: (page, pages) => (pages === 1 ? '' : `${page} of ${pages}`),
};

const ruler: RulerWords = {
  title: 'Check your printer',
  about:
    'Stickers fit their dots only if a page comes out at true size. These two lines show whether it does.',
  steps: [
    `Print this page at 100${NBSP}% (“actual size”), not “fit to page”.`,
    `Measure both lines with a ruler, from the middle of one end mark to the middle of the other. Each should be 50${NBSP}mm long.`,
    `49.5 to 50.5${NBSP}mm is true size: you are done.`,
    'If not, look for the scale in the print window, and print this page once more.',
    'If a line is still too long or too short, type in what it measures where you got this page. Sheets are then made larger or smaller for this printer. If the two lines differ, type what lies between.',
  ],
  across: 'Across: 50 mm',
  upright: 'Upright: 50 mm',
  measured: `It measures ${'_'.repeat(8)} mm`,
};

export const ENGLISH: PageWords = {
  foot: { name: 'Name', date: 'Date', qr: 'The sheet code as a QR code' },
  about: (activity, step) => `${activity} · step ${step}`,
  sheetTitle: (activity, step, code) => `${activity}, step ${step}, sheet ${code}`,
  answersTitle: (page, pages) => (pages === 1 ? 'Answers' : `Answers, page ${page} of ${pages}`),
  answerLabel: (number, activity, step) => `${number} · ${activity} · step ${step}`,
  documentTitle: (parts) => `Samewise: ${listed(parts.map(partText))}`,
  cut,
  marking,
  adult,
  goals: GOALS_WORDS_EN,
  ruler,
};
