// What the app itself says, in one catalogue: everything that is not an activity's own or a refusal.
import type { AgeHint } from '../activities/index.ts';
import type { Ink } from '../page/index.ts';
import type { PlaceName } from './place-names.ts';
import type { LayoutChoice } from './recipe/entries.ts';

/** The names of the controls that every recipe has, whatever its activity. */
export const SHELL_CONTROLS = [
  'sheets',
  'tasks',
  'activity',
  'age',
  'step',
  'paper',
  'orientation',
  'print',
] as const;
export type ShellControl = (typeof SHELL_CONTROLS)[number];

/** The parameters that every activity has and that stand in the first sentence. */
export const SENTENCE_PARAMETERS = ['content', 'response'] as const;
export type SentenceParameter = (typeof SENTENCE_PARAMETERS)[number];

/** A piece of the recipe's sentence: plain words, or the place of a control. */
export type Piece = string | { readonly control: ShellControl | SentenceParameter };

interface LayoutWords {
  readonly label: string;
  readonly help: string;
  readonly choices: Readonly<Record<string, string>>;
}

const NUMBERS = ['none', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];
/** To a tenth, below which nobody can tell. */
const percent = (share: number): string => `${Math.round(1000 * share) / 10} %`;
const inWords = (count: number): string => NUMBERS[count] ?? String(count);

const SENTENCE: readonly Piece[] = [
  'Make ',
  { control: 'sheets' },
  ' of ',
  { control: 'tasks' },
  ' of ',
  { control: 'activity' },
  ' with ',
  { control: 'content' },
  ', for a child of about ',
  { control: 'age' },
  ' who ',
  { control: 'response' },
  ', ',
  { control: 'step' },
  ', on ',
  { control: 'paper' },
  ' ',
  { control: 'orientation' },
  ', in ',
  { control: 'print' },
  '.',
];

const PLACES: Readonly<Record<PlaceName, string>> = {
  today: 'Today',
  make: 'Make',
  week: 'Week',
  record: 'Record',
  growth: 'Growth',
  supplies: 'Supplies',
};

export const words = {
  appName: 'Samewise',
  tagline: 'Sheets for telling same from different',
  placesLabel: 'Places',
  places: PLACES,
  title: (place: PlaceName) => (place === 'make' ? 'Samewise' : `${PLACES[place]} · Samewise`),
  opening: 'Opening …',
  newer: 'A newer Samewise is ready.',
  changeOver: 'Change over',
  changingOver: 'Changing over once all is written …',
  newerByHand: 'The newer Samewise comes with the next reload; save first what you are writing.',
  sentence: SENTENCE,
  labels: {
    sheets: 'Sheets',
    tasks: 'Tasks on a sheet',
    activity: 'Activity',
    age: 'Age of the child',
    step: 'Step',
    paper: 'Paper',
    orientation: 'How the paper lies',
    print: 'Printed in',
  } satisfies Record<ShellControl, string>,
  nouns: {
    sheets: (count: number) => (count === 1 ? 'sheet' : 'sheets'),
    tasks: (count: number) => (count === 1 ? 'task' : 'tasks'),
  },
  orientations: { portrait: 'upright', landscape: 'sideways' } as Readonly<Record<string, string>>,
  paperNotes: {
    A3: 'twice as large as A4, for a table of children or large print',
    A5: 'half of A4: two sheets come on one A4, to cut apart',
  } as Readonly<Record<string, string>>,
  prints: { colour: 'colour', grey: 'grey' } as Readonly<Record<string, string>>,
  printNotes: {
    colour: 'for a colour printer',
    grey: 'for a grey printer: each colour also carries a letter',
  } as Readonly<Record<string, string>>,
  layouts: {
    size: {
      label: 'Tasks are drawn',
      help: 'Large: a quarter to a half larger, fewer on a page. Stickers keep their size.',
      choices: { usual: 'as usual', large: 'large' },
    },
    hand: {
      label: 'The child writes with',
      help: 'For the left hand, what is to be looked at stands above or to the right, so that the hand does not cover it.',
      choices: { right: 'the right hand', left: 'the left hand' },
    },
    ink: {
      label: 'Ink',
      help: 'Saving: figures as outlines, wherever the task does not hang on how they are filled.',
      choices: { full: 'as drawn', saving: 'saving' },
    },
    margin: {
      label: 'Margin',
      help: 'For a wipe-clean pocket: wide enough for its frame.',
      choices: { usual: 'usual', pocket: 'for a wipe-clean pocket' },
    },
  } satisfies Readonly<Record<LayoutChoice, LayoutWords>>,
  inked: ({ full, saving }: Readonly<Record<Ink, number>>) => {
    const [inFull, toSave] = [percent(full), percent(saving)];
    const known = `About ${inFull} of this page is inked`;
    return inFull === toSave
      ? `${known}; saving changes nothing here.`
      : `${known} as drawn, ${toSave} when saving.`;
  },
  onlyColours: {
    label: 'Only with these colours',
    help: (chosen: number) =>
      chosen === 0
        ? 'None chosen: all colours. Choose those of the stickers and pens that you have.'
        : `Figures and answers have ${chosen === 1 ? 'this colour' : 'these colours'} alone. Pictures keep their own.`,
  },
  atHand: {
    label: 'Only with what you have',
    help: 'Colours and sizes of stickers, crayons, tools and the printer as they were counted in Supplies; all sheets together take no more than there is.',
    never: 'Nothing was counted yet, so this cannot be told.',
    link: 'Count what is in the house',
  },
  yes: 'yes',
  no: 'no',
  age: (age: AgeHint) => inWords(age),
  stepName: (step: number) => `step ${step}`,
  stepNote: (change: string, age: AgeHint) => `${change} · about ${inWords(age)}`,
  recipe: 'What to make',
  desk: 'Recipe and what to do with it',
  more: 'More choices',
  moreAsked: 'What is asked',
  moreLayout: 'The page',
  moreHouse: 'What you have',
  less: (label: string) => `Less: ${label}`,
  moreOf: (label: string) => `More: ${label}`,
  toCut: 'To cut out',
  toCutHelp:
    'Printed after each sheet, with its code. Pieces are there for sheets with empty places for figures, a key card for sheets with a key or a model. The sheet itself stays as it is.',
  toCutPrinted:
    'Only printed sheets have pages to cut: choose “printed” below, where it says how the sheets are made.',
  toCutNames: {
    pieces: 'pieces to cut',
    'key-card': 'the key as a card',
    cards: 'the tasks as cards',
  },
  goals: 'Goals of curricula',
  goalsHelp:
    'The adult’s page then names the goals that the sheets serve. Which sheet serves which is our own reading.',
  group: 'For a group',
  groupNames: 'Names, one a line',
  groupHelp:
    'Each child gets the pack on sheets of its own, different and equally hard, with the name printed. +1 or -1 behind a name gives that child steps above or below. Names stay in this browser.',
  groupSorted: 'The sheets lie',
  groupSortings: { child: 'child by child', activity: 'all of one kind together' },
  ownChoices: 'Back to what the step itself asks for',
  table: 'The page',
  blankPage: 'The page is being made.',
  views: { sheet: 'Sheet', cut: 'To cut', answers: 'Answers', adult: 'Adult’s page' },
  viewLabel: 'What to look at',
  turnSheet: {
    before: 'Sheet before',
    next: 'Next sheet',
    place: (sheet: number, sheets: number) => `sheet ${sheet} of ${sheets}`,
  },
  turnLeaf: {
    before: 'Page of the guide before',
    next: 'Next page of the guide',
    place: (page: number, pages: number) => `its page ${page} of ${pages}`,
  },
  made: 'The sheets are',
  madeHelp: {
    printed: 'Everything comes from the printer.',
    'half-made':
      'Printed with empty circles in place of dots: you put the stickers on before the child gets the sheet. Figures other than dots are printed.',
    'by-hand':
      'No printer: a list of what to fold, rule, stick on and draw on a blank page, and where. Read it from the screen or a print of it.',
  },
  madeWays: { printed: 'printed', 'half-made': 'half-made', 'by-hand': 'made by hand' },
  noPrinter:
    'Supplies says that there is no printer in the house. Choose “made by hand” for a list of what to stick and draw, and where.',
  madeLayout: 'The layout is',
  madeLayouts: { no: 'as printed', yes: 'the quickest by hand: one task a page' },
  turnAdultPage: {
    before: 'Page before',
    next: 'Next page',
    place: (page: number, pages: number) =>
      pages === 1 ? 'for the whole pack' : `page ${page} of ${pages}, for the whole pack`,
  },
  proof: 'What was checked',
  checked: (tasks: number) =>
    tasks === 1
      ? 'Checked: the task has exactly one answer.'
      : `Checked: each of the ${inWords(tasks)} tasks has exactly one answer.`,
  checkedHow: (tasks: number) =>
    `${tasks === 1 ? 'It' : 'Each'} was solved again from what is printed alone, by a reader that shares nothing with its maker.`,
  hard: (step: number, steps: number, age: AgeHint) =>
    `Step ${step} of ${steps}, a first guess for about ${inWords(age)} years. The child decides.`,
  against: (step: number, change: string) => `Against step ${step}: ${change}.`,
  firstStep: 'It is where this activity begins.',
  apart: (labels: readonly string[]) => `Other than the step says: ${labels.join(', ')}.`,
  gaveWay: (labels: readonly string[]) => `Fitted to your choices: ${labels.join(', ')}.`,
  nothingToCut: {
    pieces: 'No pieces to cut: on this sheet no figure goes into an empty place.',
    'key-card': 'No key card: this sheet has neither a key nor one model.',
  } as Readonly<Record<string, string>>,
  alike: (pairs: readonly (readonly [string, string])[]) =>
    `${capital(inSeries(pairs.map(([one, other]) => `${one} and ${other}`)))} look alike to some children with a colour-vision deficiency. If this child may be one of them, choose grey print, where each colour also carries a letter.`,
  lastGood: 'The page shows the last recipe that could be made.',
  another: 'Another like this',
  easier: 'One notch easier',
  harder: 'One notch harder',
  noNotch: {
    easier: 'It gets no easier with what is looked at and done here. Try another activity.',
    harder: 'It gets no harder with what is looked at and done here. Try another activity.',
  },
  getPdf: 'Get the PDF',
  getZip: 'One PDF each',
  print: 'Print',
  trueSize: {
    title: 'Is it true size?',
    why: 'Stickers fit their dots only if pages come out at true size. Print the page with two 50 mm lines at 100 % (“actual size”), and measure both with a ruler.',
    ways: { pages: 'Print the two lines', pdf: 'Two lines as a PDF' },
    fileName: 'check-your-printer',
    measured: 'The 50 mm line measures, in mm',
    measuredHelp: 'Such as 48.5. If the two lines differ, type what lies between.',
    check: 'Check',
    isTrue: (mm: number) =>
      `${mm} mm is true size, as near as a ruler can tell. There is nothing to put right.`,
    isOff: (mm: number) =>
      `${mm} mm is ${mm < 50 ? 'too short' : 'too long'}. First print the page once more, with “100 %” or “actual size” chosen in the print window. If the line still measures ${mm} mm, pages can be made ${mm < 50 ? 'larger' : 'smaller'} to make up for it.`,
    correct: (mm: number) => `Make up for ${mm} mm from now on`,
    inForce: (mm: number) =>
      `For this printer: every PDF and print from this browser makes up for a 50 mm line that measures ${mm} mm. For another printer, stop this and measure anew. The page with the two lines is never changed.`,
    madeUp: (mm: number) => `It makes up for a 50 mm line that measures ${mm} mm.`,
    stop: 'Stop making up for it',
    stopped: 'Pages are printed as they are again.',
  },
  copyCode: 'Copy the code',
  copied: 'Copied',
  codeLabel: 'Code of this sheet',
  cannotCopy: 'The browser does not let the app copy. Mark the code and copy it by hand.',
  openByCode: 'Open by code',
  codeField: 'Code printed on the sheet',
  codeHelp: 'It stands at the foot of each sheet. Capitals and spaces do not matter.',
  open: 'Open',
  cancel: 'Cancel',
  making: (done: number, total: number) => `Making and checking: ${done} of ${total}`,
  pressing: (done: number) => `Writing page ${done}`,
  starting: 'Starting …',
  saved: (name: string) => `Saved as ${name}.`,
  cancelled: 'Stopped. Nothing was saved.',
  defect: (detail: string) =>
    `Something in the program itself went wrong: ${detail}. Nothing you entered is lost. Try “Another like this”, and please report it together with the address of this page.`,
  local: 'Everything is made on this machine; nothing leaves it.',
} as const;

/** `a; b; c`, for items that hold an "and" themselves. */
function inSeries(items: readonly string[]): string {
  return items.join('; ');
}

/** With a capital first letter. */
export function capital(sentence: string): string {
  return sentence.charAt(0).toUpperCase() + sentence.slice(1);
}
