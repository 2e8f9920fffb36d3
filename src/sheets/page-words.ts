// The words of the pages that go round the tasks: foot, answer pages, the adult's page.
import type { FootLabels, PaperName } from '../page/index.ts';
import type { ColourName } from '../palette/index.ts';
import type { Framework, GoalId } from './goals.ts';
import type { Tool } from './stock-facts.ts';
import type { ToCut } from './to-cut.ts';

export interface PageWords {
  readonly foot: FootLabels;
  /** At the foot, of a code that is too long to print. */
  readonly inFile: string;
  readonly about: (activity: string, step: number) => string;
  /** Of a sheet that a person changed. */
  readonly aboutChanged: (activity: string, step: number) => string;
  readonly sheetTitle: (activity: string, step: number, code: string) => string;
  readonly answersTitle: (page: number, pages: number) => string;
  readonly answerLabel: (number: number, activity: string, step: number) => string;
  readonly marking: MarkingWords;
  readonly cut: CutWords;
  readonly documentTitle: (parts: readonly PartName[]) => string;
  readonly adult: AdultWords;
  readonly goals: GoalsWords;
  readonly ruler: RulerWords;
}

/** The page that shows whether a printer keeps true size. */
export interface RulerWords {
  readonly title: string;
  readonly about: string;
  readonly steps: readonly string[];
  readonly across: string;
  readonly upright: string;
  /** With a line to write on. */
  readonly measured: string;
}

/** The feet of pages to cut, and their titles. */
export interface CutWords {
  readonly cards: (code: string) => string;
  readonly cardsTitle: (code: string) => string;
  readonly key: (code: string) => string;
  readonly keyTitle: (code: string) => string;
  readonly keyAlt: string;
  readonly pieces: (code: string) => string;
  readonly piecesTitle: (code: string) => string;
  /** Empty for the only page. */
  readonly page: (page: number, pages: number) => string;
}

export interface MarkingWords {
  readonly title: string;
  readonly how: string;
  readonly pageTitle: (page: number, pages: number) => string;
  readonly column: (number: number, activity: string, steps: PartName['steps']) => string;
  /** Out of how many tasks. */
  readonly outOf: (tasks: number) => string;
}

export interface AdultWords {
  readonly title: string;
  readonly packTitle: (parts: readonly PartName[]) => string;
  readonly layOut: string;
  readonly stickers: (diameterMm: number) => string;
  /** Beside a dot of the colour. */
  readonly stickerEntry: (count: number, colour: string) => string;
  readonly crayons: (colours: readonly string[]) => string;
  /** Which letter stands for which colour in grey print. */
  readonly marks: (colours: readonly ColourName[]) => string;
  /** Says the cautions as well. */
  readonly tools: Readonly<Record<Tool, string>>;
  readonly nothing: string;
  /** What one kind of sheet of several takes. */
  readonly brief: Readonly<Record<Tool, string>> & {
    readonly stickers: (diameterMm: number, stickers: string) => string;
    readonly nothing: string;
    readonly list: (things: readonly string[]) => string;
    readonly inParts: (things: readonly string[]) => string;
  };
  readonly start: string;
  readonly partHeading: (part: PartName, sheetNumbers: string) => string;
  readonly takes: string;
  /** How long one of some sheets takes a child of these ages in years. */
  readonly minutes: (minutes: WholeRange, sheets: number, ages: WholeRange) => string;
  readonly continued: string;
  readonly say: string;
  /** What the adult says, as speech. */
  readonly sayWords: (words: string) => string;
  readonly show: string;
  readonly showOne: (how: string, sheet: number | undefined) => string;
  readonly helpHere: string;
  readonly easier: string;
  readonly harder: string;
  readonly lookFor: string;
  /** The help ladder that holds for every sheet, from least to most. */
  readonly help: string;
  readonly ladder: readonly string[];
  readonly stop: string;
  readonly stopAdvice: readonly string[];
  readonly size: string;
  readonly checkLine: string;
  readonly checkAdvice: (paper: PaperName) => string;
  readonly cut: {
    readonly title: string;
    readonly kinds: Readonly<Record<ToCut, string>>;
    /** Where pieces stand on the sheet, too. */
    readonly both: string;
    /** What holds for all that is cut out. */
    readonly always: readonly string[];
  };
  readonly pocket: {
    readonly title: string;
    readonly advice: Readonly<Record<PocketAdvice, string>>;
  };
  /** For sheets that may come two on one page. */
  readonly cutAdvice: string;
  readonly care: string;
  readonly cautions: readonly string[];
  readonly sheets: string;
  readonly moreSheets: (count: number) => string;
  /** How many tasks were proven, and of how many that cannot be said. */
  readonly proof: (tasks: number, doubts: number) => string;
  readonly doubts: string;
  readonly doubt: (
    sheet: number,
    task: number,
    reason: 'several' | 'none' | 'unfit',
    why: readonly string[],
  ) => string;
}

/** What is said of sheets in a wipe-clean pocket. */
export const POCKET_ADVICE = ['write', 'stickers', 'pieces', 'cut', 'fold'] as const;
export type PocketAdvice = (typeof POCKET_ADVICE)[number];

/** Whole minutes or years; both may be the same. */
export interface WholeRange {
  readonly least: number;
  readonly most: number;
}

export interface GoalsWords {
  readonly title: string;
  /** Says whose reading it is. */
  readonly note: string;
  readonly frameworks: Readonly<Record<Framework, string>>;
  readonly meanings: Readonly<Record<GoalId, string>>;
  readonly served: (goals: readonly ServedGoal[]) => string;
}

/** A goal, and the numbers of the sheets that serve it; absent where all do. */
export interface ServedGoal {
  readonly id: GoalId;
  readonly meaning: string;
  readonly sheets: { readonly text: string; readonly count: number } | undefined;
}

/** Some sheets of an activity, and which steps they are of. */
export interface PartName {
  readonly activity: string;
  /** `1–3, 7`. */
  readonly steps: { readonly text: string; readonly count: number };
  readonly sheets: number;
}
