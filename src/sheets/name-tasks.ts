// Of several tasks the one that is most about the letters of a name.
import type { Activity, Task } from '../activities/index.ts';
import { type FormId, formOf, isWantedForm } from '../figures/index.ts';

/** So many tasks are drawn for one on a sheet that is about letters of a name; by trial, no source. */
export const NAME_DRAWS = 6;

/** The first of those in which the child looks for wanted letters most, then of those that show most of them. */
export function mostAbout(
  activity: Activity,
  tasks: readonly [Task, ...Task[]],
  letters: string,
): Task {
  return tasks.reduce((best, task) =>
    scoreOf(activity, task, letters) > scoreOf(activity, best, letters) ? task : best,
  );
}

/** Whole parts of a hundred: what is looked for before all else. */
function scoreOf(activity: Activity, task: Task, letters: string): number {
  const right = activity
    .decisions(task)
    .flatMap(({ options }) => options.filter(({ isRight }) => isRight))
    .map(({ figure }) => formOf(figure));
  return 1000 * shareOf(right, letters) + shareOf(formsIn(task.printed), letters);
}

function shareOf(forms: readonly FormId[], letters: string): number {
  if (forms.length === 0) return 0;
  const wanted = forms.filter((form) => isWantedForm(form, letters));
  return Math.floor((100 * wanted.length) / forms.length);
}

/** The letters of `letters` that stand in the printed tasks, in their order. */
export function lettersShown(tasks: readonly Task[], letters: string): string {
  const forms = new Set(tasks.flatMap(({ printed }) => formsIn(printed)));
  return [...letters]
    .filter((letter) => [...forms].some((form) => isWantedForm(form, letter)))
    .join('');
}

/** All forms that a printed task names, wherever they stand. */
function formsIn(printed: unknown): readonly FormId[] {
  if (Array.isArray(printed)) return printed.flatMap(formsIn);
  if (typeof printed !== 'object' || printed === null) return [];
  return Object.entries(printed).flatMap(([name, value]) =>
    name === 'form' && typeof value === 'string' ? [value as FormId] : formsIn(value),
  );
}
