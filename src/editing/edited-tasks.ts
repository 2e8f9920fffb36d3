// The tasks of a sheet with what was changed in them; each solved again from what is printed.
import type { Task } from '../activities/index.ts';
import { accept, type Refusal, type Result, refuse, type Told, told } from '../base/index.ts';
import type { Figure } from '../figures/index.ts';
import { findingsOf } from './findings.ts';
import { baseTask, type Ground } from './ground.ts';
import { isIdle, type TaskEdit, withEdit } from './task-edit.ts';
import { isDrawable, stateOf } from './verdict.ts';

/** A task that is not certain, and why. */
export interface Doubt {
  /** From 0. */
  readonly task: number;
  readonly reason: 'several' | 'none' | 'unfit';
}

export interface EditedTasks {
  readonly tasks: readonly Task[];
  /** Empty: every task has exactly the answer of its key. */
  readonly doubts: readonly Doubt[];
}

/** Edits in the one form that a sheet holds: by task, sizes in thousandths, none that changes nothing; absent where there are none. */
export function editsField(edits: readonly TaskEdit[] | undefined): {
  readonly edits?: readonly TaskEdit[];
} {
  const kept = (edits ?? []).filter((edit) => !isIdle(edit)).map(inThousandths);
  return kept.length === 0 ? {} : { edits: [...kept].sort((one, other) => one.task - other.task) };
}

/** Sizes are told in thousandths, as generators draw them: more than that no code holds. */
function inThousandths(edit: TaskEdit): TaskEdit {
  const figures = edit.figures.map(
    ([place, figure]) => [place, figure && rounded(figure)] as const,
  );
  return { ...edit, figures };
}

function rounded(figure: Figure): Figure {
  const { size, dotSize } = figure;
  return {
    ...figure,
    ...(size === undefined ? {} : { size: Math.round(1000 * size) / 1000 }),
    ...(dotSize === undefined ? {} : { dotSize: Math.round(1000 * dotSize) / 1000 }),
  };
}

/** Refuses edits of tasks that there are not, and those that make no task that can be drawn. */
export function editedTasks(
  ground: Ground,
  own: readonly Task[],
  edits: readonly TaskEdit[],
): Result<EditedTasks> {
  const tasks = [...own];
  const doubts: Doubt[] = [];
  const seen = new Set<number>();
  for (const edit of edits) {
    const task = own[edit.task];
    if (task === undefined || seen.has(edit.task)) return refuseEdit(ground, edit);
    seen.add(edit.task);
    const edited = editedTask(ground, task, edit);
    if (!edited) return refuseEdit(ground, edit);
    tasks[edit.task] = edited.task;
    if (edited.doubt) doubts.push(edited.doubt);
  }
  return accept({ tasks, doubts });
}

/** Where there is no one answer, the task keeps the first that was found, or that it was made with. */
function editedTask(
  ground: Ground,
  own: Task,
  edit: TaskEdit,
): { readonly task: Task; readonly doubt?: Doubt } | undefined {
  const { activity, style } = ground;
  const before = baseTask(ground, own, edit);
  const printed = withEdit(activity, before.printed, edit);
  if (printed === undefined) return undefined;
  const state = stateOf(ground, printed, before);
  const task = { printed, answer: keyFor(ground, printed, before) };
  if (!isDrawable(activity, task, style)) return undefined;
  if (state !== 'uncertain') return { task };
  const { answers, faults } = findingsOf(activity, printed);
  const reason = answers.length > 1 ? 'several' : faults.length > 0 ? 'unfit' : 'none';
  return { task, doubt: { task: edit.task, reason } };
}

/** The key as the solver finds it, by which the answers are drawn and what to lay out is told. */
export function keyFor({ activity }: Ground, printed: unknown, before: Task): unknown {
  return findingsOf(activity, printed).answers[0] ?? before.answer;
}

function refuseEdit(ground: Ground, { task }: TaskEdit): Result<never> {
  return refuse(unchangeable(ground, task, told('reasons', 'change.undrawable')));
}

/** Why a change of the task with this number, from 0, cannot be made. */
export function unchangeable({ activity }: Ground, task: number, reason: Told): Refusal {
  return { code: 'unchangeable', at: `${activity.id} › task ${task + 1}`, reason };
}
