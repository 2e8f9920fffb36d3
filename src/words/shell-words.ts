// What the command line has to say, whatever the language.
import type { Use } from '../supplies/index.ts';

export interface ShellWords {
  readonly about: string;
  readonly commands: Readonly<
    Record<'pack' | 'check' | 'again' | 'ruler' | 'activities' | 'schema', string>
  >;
  readonly options: Readonly<
    Record<
      | 'activity'
      | 'step'
      | 'age'
      | 'difficulty'
      | 'tasks'
      | 'sheets'
      | 'seed'
      | 'paper'
      | 'orientation'
      | 'print'
      | 'colours'
      | 'lettersOf'
      | 'ownLetters'
      | 'hand'
      | 'size'
      | 'ink'
      | 'margin'
      | 'set'
      | 'goals'
      | 'recipe'
      | 'stock'
      | 'children'
      | 'sorted'
      | 'language'
      | 'perChild'
      | 'out'
      | 'json'
      | 'svg'
      | 'pieces'
      | 'keyCard'
      | 'cards'
      | 'single'
      | 'measured'
      | 'noAnswers'
      | 'noAdultPage'
      | 'byHand'
      | 'halfMade'
      | 'sticker'
      | 'quick'
      | 'asJson'
      | 'uncertain',
      string
    >
  >;
  /** Which sheets can be had with each of what is to be cut out. */
  readonly sheetsToCut: Readonly<Record<'cards' | 'key-card' | 'pieces', string>>;
  readonly arguments: Readonly<Record<'file' | 'code' | 'activity' | 'schema', string>>;
  readonly examples: string;
  /** A name was given for sheets whose content is no letters. */
  readonly noLetters: string;
  /** The house that the pack is made for has no printer. */
  readonly noPrinter: string;
  /** What a pack takes of the house, thing by thing. */
  readonly fromTheHouse: (uses: readonly Use[]) => string;
  readonly seedChosen: (seed: number) => string;
  readonly proving: (done: number, all: number) => string;
  readonly drawing: (done: number, all: number) => string;
  readonly checking: (done: number, all: number) => string;
  readonly packMade: (sheets: number, tasks: number, doubts: number) => string;
  /** The share of the page that is inked, 0 to 1, as it is printed and in the other ink. */
  readonly inked: (share: number, ink: 'full' | 'saving', otherShare: number) => string;
  /** Why a sheet that a person changed is not written without a yes. */
  readonly askSure: (tasks: readonly number[]) => string;
  /** What an asked-for difficulty came to: the step, the values that differ from it, and the mean. */
  readonly aimed: (
    activity: string,
    step: number,
    settings: readonly string[],
    logits: number,
  ) => string;
  readonly written: (path: string) => string;
  /** `doubts`: tasks that were changed and printed though they are not certain. */
  readonly allProven: (sheets: number, tasks: number, doubts: number) => string;
  readonly someNotProven: (faults: number, tasks: number) => string;
  readonly fault: (
    at: string,
    activity: string,
    code: string,
    reason: string,
    detail: string,
  ) => string;
  readonly notes: Readonly<
    Record<
      | 'code-unreadable'
      | 'code-makes-other-tasks'
      | 'difficulty-differs'
      | 'changed-and-not-certain',
      (at: string, code: string) => string
    >
  >;
  readonly list: Readonly<
    Record<'contents' | 'responses' | 'parameters' | 'steps' | 'above', string>
  >;
  readonly range: (min: number, max: number) => string;
  readonly yesNo: string;
  readonly step: (age: number, tasks: number) => string;
  readonly defect: (reason: string) => string;
}
