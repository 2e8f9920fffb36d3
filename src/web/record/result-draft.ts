// What is tapped and written about a sheet, and the entry that it comes to.
import type { Draft, HelpLevel, Id, Mood, Outcome, TaskResult } from '../../records/index.ts';
import type { Tried } from './words.ts';

/** A wrong choice that was tapped on the picture: the mark of its figure, and the name of what was chosen. */
export interface Tapped {
  readonly place: number;
  readonly label: string;
}

/** All by task from 0. */
export interface ResultDraft {
  /** What a person chose; where nothing was chosen, what was tapped on the picture tells. */
  readonly outcomes: Readonly<Record<number, Tried>>;
  /** The outcomes come from one tap for the whole sheet. */
  readonly isAtOnce: boolean;
  /** Tasks of which a right figure was tapped. */
  readonly rightTapped: Readonly<Record<number, true>>;
  /** What was chosen instead, as it was tapped. */
  readonly tapped: Readonly<Record<number, readonly Tapped[]>>;
  /** What was chosen instead, as it was written. */
  readonly instead: Readonly<Record<number, string>>;
  readonly day: string;
  readonly help: readonly HelpLevel[];
  readonly mood: readonly Mood[];
  readonly minutes: string;
  readonly note: string;
}

const NOTHING_SAID = { outcomes: {}, isAtOnce: false, rightTapped: {}, tapped: {} };

export function emptyDraft(day: string): ResultDraft {
  return { ...NOTHING_SAID, instead: {}, day, help: [], mood: [], minutes: '', note: '' };
}

export function outcomeOf(draft: ResultDraft, task: number): Tried | undefined {
  const chosen = draft.outcomes[task];
  if (chosen !== undefined) return chosen;
  if ((draft.tapped[task] ?? []).length > 0) return 'not-yet';
  return draft.rightTapped[task] ? 'right' : undefined;
}

/** The same outcome for every task; without one, all are open again. */
export function allAs(outcome: Tried | undefined, tasks: number): Partial<ResultDraft> {
  if (outcome === undefined) return NOTHING_SAID;
  return {
    outcomes: Object.fromEntries(Array.from({ length: tasks }, (_, task) => [task, outcome])),
    isAtOnce: tasks > 1,
  };
}

/** The outcome of one task; without one, it is open again. */
export function taskAs(
  draft: ResultDraft,
  task: number,
  outcome: Tried | undefined,
): Partial<ResultDraft> {
  if (outcome !== undefined) {
    return { outcomes: { ...draft.outcomes, [task]: outcome }, isAtOnce: false };
  }
  return {
    isAtOnce: false,
    outcomes: without(draft.outcomes, task),
    rightTapped: without(draft.rightTapped, task),
    tapped: without(draft.tapped, task),
  };
}

/** The outcome that all tasks have; none where they differ or one is open. */
export function wholeOf(draft: ResultDraft, tasks: number): Tried | undefined {
  const [first, ...others] = Array.from({ length: tasks }, (_, task) => outcomeOf(draft, task));
  return others.every((other) => other === first) ? first : undefined;
}

export function isOpen(draft: ResultDraft, tasks: number): boolean {
  return Array.from({ length: tasks }, (_, task) => outcomeOf(draft, task)).every(
    (outcome) => outcome === undefined,
  );
}

/** A right figure was tapped: the task is right, if nothing else was said of it. */
export function tapRight(draft: ResultDraft, task: number): Partial<ResultDraft> {
  if (outcomeOf(draft, task) !== undefined) return {};
  return { rightTapped: { ...draft.rightTapped, [task]: true }, isAtOnce: false };
}

/**
 * A wrong choice was tapped: it is noted, or, noted before, no longer. At one mark one thing is noted. A task that was
 * right is not yet right as long as something is noted; one of which more was said stays as it was said.
 */
export function tapWrong(draft: ResultDraft, task: number, wrong: Tapped): Partial<ResultDraft> {
  const noted = notedIn(draft, task);
  const others = noted.filter(({ place }) => place !== wrong.place);
  const wasNoted = noted.some(({ place, label }) => place === wrong.place && label === wrong.label);
  const tapped = { ...draft.tapped, [task]: wasNoted ? others : [...others, wrong] };
  if (draft.outcomes[task] !== 'right') return { tapped, isAtOnce: false };
  return {
    tapped,
    isAtOnce: false,
    outcomes: without(draft.outcomes, task),
    rightTapped: { ...draft.rightTapped, [task]: true },
  };
}

/** The wrong choices that were tapped of a task. */
export function notedIn(draft: ResultDraft, task: number): readonly Tapped[] {
  return takesInstead(outcomeOf(draft, task)) ? (draft.tapped[task] ?? []) : [];
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
    ...(draft.isAtOnce ? { atOnce: true as const } : {}),
    ...(help === undefined ? {} : { help }),
    ...(mood === undefined ? {} : { mood }),
    // What is no number stays none, so that the store refuses it and says why.
    ...(minutes === '' ? {} : { minutes: Number(minutes) }),
    ...(note === '' ? {} : { note }),
  };
}

function taskOf(draft: ResultDraft, task: number): TaskResult {
  const outcome: Outcome = outcomeOf(draft, task) ?? 'not-tried';
  const label = takesInstead(outcome) ? (draft.instead[task] ?? '').trim() : '';
  const instead = [...notedIn(draft, task), ...(label === '' ? [] : [{ label }])];
  return instead.length === 0 ? { outcome } : { outcome, instead };
}

/** Something else was chosen only where it was not right at once. */
export function takesInstead(outcome: Outcome | undefined): boolean {
  return outcome === 'with-help' || outcome === 'not-yet';
}

function without<T>(all: Readonly<Record<number, T>>, task: number): Readonly<Record<number, T>> {
  const { [task]: _, ...others } = all;
  return others;
}
