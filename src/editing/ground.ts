// What an edited task stands on: its activity, the values it was made with, and how it is printed.
import type { Activity, Language, Task, Values } from '../activities/index.ts';
import { randomFrom } from '../base/index.ts';
import type { PrintStyle } from '../page/index.ts';
import type { TaskEdit } from './task-edit.ts';

/** What is said of the task is in; the style's language. */
export function languageOf({ style }: Pick<Ground, 'style'>): Language {
  return style.language ?? 'en';
}

export interface Ground {
  readonly activity: Activity;
  readonly values: Values;
  readonly style: PrintStyle;
}

/** The task of a seed of its own. */
export function drawnTask({ activity, values, style }: Ground, seed: number): Task {
  return activity.generate(values, randomFrom(seed), style);
}

/** The task that an edit changes. */
export function baseTask(ground: Ground, own: Task, edit: TaskEdit | undefined): Task {
  return edit?.seed === undefined ? own : drawnTask(ground, edit.seed);
}
