// What the frame and Make say, in one catalogue: everything that is not an activity's own or a refusal.
import type { AgeHint } from '../activities/index.ts';
import type { Say } from '../languages/index.ts';
import type { Ink } from '../page/index.ts';
import { MESSAGES } from './messages-en.ts';
import type { PlaceName } from './place-names.ts';
import type { LayoutChoice } from './recipe/entries.ts';
import { piecesOf } from './speaking/pieces.ts';
import { capital, shared } from './speaking/shared.ts';
import { spoken, type Telling } from './speaking/spoken.ts';

export { capital } from './speaking/shared.ts';

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
/** Whether the recipe's sentence has a place for the parameter; all others stand among the further choices. */
export function isInSentence(parameter: string): boolean {
  return (SENTENCE_PARAMETERS as readonly string[]).includes(parameter);
}

export type SentenceParameter = (typeof SENTENCE_PARAMETERS)[number];

interface LayoutWords {
  readonly label: string;
  readonly help: string;
  readonly choices: Readonly<Record<string, string>>;
}

type SayShell = Say<typeof MESSAGES>;

export const words = spoken('app/make', MESSAGES, (telling) => {
  const { say, plain, under } = telling;
  const places: Readonly<Record<PlaceName, string>> = under('places');
  const inWords = (count: number) => numberWord(say, count);
  return {
    ...plain,
    places,
    title: (place: PlaceName) =>
      place === 'make' ? plain.appName : say('titleOfPlace', { place: places[place] }),
    sentence: piecesOf((controls) => say('sentence', controls), CONTROLS),
    labels: under('labels') satisfies Readonly<Record<ShellControl, string>>,
    nouns: {
      sheets: (count: number) => say('nouns.sheets', { count }),
      tasks: (count: number) => say('nouns.tasks', { count }),
    },
    orientations: under('orientations') as Readonly<Record<string, string>>,
    paperNotes: under('paperNotes') as Readonly<Record<string, string>>,
    prints: under('prints') as Readonly<Record<string, string>>,
    printNotes: under('printNotes') as Readonly<Record<string, string>>,
    layouts: {
      size: { ...under('size'), choices: under('size.choice') },
      hand: { ...under('hand'), choices: under('hand.choice') },
      ink: { ...under('ink'), choices: under('ink.choice') },
      margin: { ...under('margin'), choices: under('margin.choice') },
    } satisfies Readonly<Record<LayoutChoice, LayoutWords>>,
    inked: (inked: Readonly<Record<Ink, number>>) => {
      const [full, saving] = [percent(inked.full), percent(inked.saving)];
      return full === saving ? say('inked.same', { full }) : say('inked.less', { full, saving });
    },
    onlyColours: {
      ...under('onlyColours'),
      help: (chosen: number) => say('onlyColours.help', { chosen }),
    },
    atHand: under('atHand'),
    name: under('name'),
    age: (age: AgeHint) => say('age', { number: inWords(age), age }),
    stepName: (step: number) => say('stepName', { step }),
    stepNote: (change: string, age: AgeHint) =>
      say('stepNote', { change, number: inWords(age), age }),
    less: (label: string) => say('less', { label }),
    moreOf: (label: string) => say('moreOf', { label }),
    toCutNames: under('toCutNames'),
    groupSortings: under('groupSortings'),
    views: under('views'),
    turnSheet: turning(telling, 'turnSheet'),
    turnChild: {
      ...under('turnChild'),
      place: (name: string, place: number, places: number) =>
        say('turnChild.place', { name, place, places }),
    },
    turnLeaf: turning(telling, 'turnLeaf'),
    turnAdultPage: turning(telling, 'turnAdultPage'),
    madeHelp: under('madeHelp'),
    madeWays: under('madeWays'),
    madeLayouts: under('madeLayouts'),
    ...proofWords(telling),
    noNotch: under('noNotch'),
    trueSize: trueSizeWords(telling),
    making: (done: number, total: number) => say('making', { done, total }),
    pressing: (done: number) => say('pressing', { done }),
    saved: piecesOf((controls) => say('saved', controls), ['file']),
    defect: (detail: string) => say('defect', { detail }),
  };
});

/** As a word where there is one. */
function numberWord(say: Say, count: number): string {
  const key = `number.${count}`;
  return say.has(key) ? say(key) : String(count);
}

/** In percent, to a tenth, below which nobody can tell. */
const percent = (share: number): number => Math.round(1000 * share) / 10;

const CONTROLS = [...SHELL_CONTROLS, ...SENTENCE_PARAMETERS];

type Telt = Telling<typeof MESSAGES>;

function turning({ say, under }: Telt, which: 'turnSheet' | 'turnLeaf' | 'turnAdultPage') {
  const place = (at: number, places: number) => say(`${which}.place`, { place: at, places });
  return { ...under(which), place };
}

/** What stands below the page. */
function proofWords({ say, plain, under }: Telt) {
  const isLower = plain.labelCase === 'lower';
  const labels = (all: readonly string[]) =>
    shared.withCommas(isLower ? all.map((label) => label.toLowerCase()) : all);
  return {
    checked: (tasks: number) => say('checked', { tasks, number: numberWord(say, tasks) }),
    checkedHow: (tasks: number) => say('checkedHow', { tasks }),
    hard: (step: number, steps: number, age: AgeHint) =>
      say('hard', { step, steps, number: numberWord(say, age), age }),
    against: (step: number, change: string) => say('against', { step, change }),
    apart: (all: readonly string[]) => say('apart', { labels: labels(all) }),
    gaveWay: (all: readonly string[]) => say('gaveWay', { labels: labels(all) }),
    nothingToCut: under('nothingToCut') as Readonly<Record<string, string>>,
    alike: (pairs: readonly (readonly [string, string])[]) =>
      capital(say('alike', { pairs: shared.inSeries(pairs.map((pair) => pairName(say, pair))) })),
  };
}

function pairName(say: SayShell, [one, other]: readonly [string, string]): string {
  return say('pairAlike', { one: shared.colour(one), other: shared.colour(other) });
}

/** `mm` is what the 50 mm line measures. */
function trueSizeWords({ say, under }: Telt) {
  return {
    ...under('trueSize'),
    ways: under('trueSize.ways'),
    first: say('trueSize.first', { title: say('trueSize.title') }),
    isTrue: (mm: number) => say('trueSize.isTrue', { mm }),
    isOff: (mm: number) => say(mm < 50 ? 'trueSize.isShort' : 'trueSize.isLong', { mm }),
    correct: (mm: number) => say('trueSize.correct', { mm }),
    inForce: (mm: number) => say('trueSize.inForce', { mm }),
    madeUp: (mm: number) => say('trueSize.madeUp', { mm }),
  };
}
