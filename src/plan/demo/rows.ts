// The invented group as it lies in its file: rows whose days are counted from the Monday of the week of the last day.

import type { KeyUnder } from '../../languages/index.ts';
import type {
  ChildFacts,
  HelpLevel,
  Mood,
  Outcome,
  PlannedSheet,
  TaskResult,
} from '../../records/index.ts';
import type { MESSAGES } from './messages-en.ts';

/** What an adult wrote down, by the name of its message. */
export type DemoNote = KeyUnder<typeof MESSAGES, 'note'>;

/** Who a child is, by the name of the message that calls it so. */
export type DemoName = KeyUnder<typeof MESSAGES, 'child'>;

/** What was chosen instead at a task of the sheet, 0 upward, with its English name; see `Instead`. */
export interface DemoChoice {
  readonly task: number;
  readonly place: number;
  readonly label: string;
}

export interface DemoSheet {
  /** Days after the Monday; below 0: before it. */
  readonly day: number;
  readonly code: string;
  /** A letter for each task, as in `LETTERS`. */
  readonly did: string;
  readonly chosen?: readonly DemoChoice[];
  readonly help?: HelpLevel;
  readonly mood?: Mood;
  readonly minutes?: number;
  readonly note?: DemoNote;
}

/** What the week's plan has for a day; it was made on the Friday before the week. */
export interface DemoPlan {
  readonly day: number;
  readonly sheets: readonly PlannedSheet[];
}

export interface DemoChild extends Pick<ChildFacts, 'writingHand' | 'languages' | 'deeds'> {
  readonly nickname: DemoName;
  /** How many months before that of the last day it was born. */
  readonly bornMonths?: number;
  readonly sheets: readonly DemoSheet[];
  readonly plans: readonly DemoPlan[];
}

export interface DemoGroup {
  readonly children: readonly DemoChild[];
}

const LETTERS: Readonly<Record<Outcome, string>> = {
  right: 'r',
  'with-help': 'h',
  'not-yet': 'n',
  'not-tried': '-',
};

/** Such as "rrhn". */
export function lettersOf(outcomes: readonly Outcome[]): string {
  return outcomes.map((outcome) => LETTERS[outcome]).join('');
}

/** The tasks of a row in the order of the sheet. Throws on a letter that says nothing. */
export function tasksOf(
  { did, chosen = [] }: Pick<DemoSheet, 'did' | 'chosen'>,
  labelOf: (choice: DemoChoice) => string = ({ label }) => label,
): readonly TaskResult[] {
  const all = Object.entries(LETTERS) as readonly (readonly [Outcome, string])[];
  return [...did].map((letter, task) => {
    const outcome = all.find(([, each]) => each === letter)?.[0];
    if (!outcome) throw new Error(`demo › tasks: expected one of r, h, n, -, got ${letter}`);
    const instead = chosen
      .filter((choice) => choice.task === task)
      .map((choice) => ({ place: choice.place, label: labelOf(choice) }));
    return { outcome, ...(instead.length > 0 ? { instead } : {}) };
  });
}
