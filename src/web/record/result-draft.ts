// What is tapped and written about a sheet, and the entry that it comes to.
import type { Draft, HelpLevel, Id, Mood, Outcome, TaskResult } from '../../records/index.ts';
import type { Tried } from './words.ts';

export interface ResultDraft {
  /** By task from 0; what was not tapped is absent. */
  readonly outcomes: Readonly<Record<number, Tried>>;
  /** What was chosen instead, by task from 0. */
  readonly instead: Readonly<Record<number, string>>;
  readonly day: string;
  readonly help: readonly HelpLevel[];
  readonly mood: readonly Mood[];
  readonly minutes: string;
  readonly note: string;
}

export function emptyDraft(day: string): ResultDraft {
  return { outcomes: {}, instead: {}, day, help: [], mood: [], minutes: '', note: '' };
}

/** The same outcome for every task. */
export function allAs(outcome: Tried, tasks: number): ResultDraft['outcomes'] {
  return Object.fromEntries(Array.from({ length: tasks }, (_, task) => [task, outcome]));
}

/** The outcome that all tasks have; none where they differ or one is open. */
export function wholeOf({ outcomes }: ResultDraft, tasks: number): Tried | undefined {
  const [first, ...others] = Array.from({ length: tasks }, (_, task) => outcomes[task]);
  return others.every((other) => other === first) ? first : undefined;
}

export function resultEntryOf(draft: ResultDraft, child: Id, code: string, tasks: number): Draft {
  const [help] = draft.help;
  const [mood] = draft.mood;
  const minutes = draft.minutes.trim();
  const note = draft.note.trim();
  return {
    kind: 'result',
    child,
    code,
    day: draft.day,
    tasks: Array.from({ length: tasks }, (_, task) => taskOf(draft, task)),
    ...(help === undefined ? {} : { help }),
    ...(mood === undefined ? {} : { mood }),
    // What is no number stays none, so that the store refuses it and says why.
    ...(minutes === '' ? {} : { minutes: Number(minutes) }),
    ...(note === '' ? {} : { note }),
  };
}

function taskOf({ outcomes, instead }: ResultDraft, task: number): TaskResult {
  const outcome: Outcome = outcomes[task] ?? 'not-tried';
  const label = takesInstead(outcome) ? (instead[task] ?? '').trim() : '';
  return label === '' ? { outcome } : { outcome, instead: [{ label }] };
}

/** Something else was chosen only where it was not right at once. */
export function takesInstead(outcome: Outcome | undefined): boolean {
  return outcome === 'with-help' || outcome === 'not-yet';
}
