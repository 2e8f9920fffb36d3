// The proof of a task as it now stands: certain, certain with another answer, or not, and what is wrong in words.
import { type Activity, faultIn, type Task } from '../activities/index.ts';
import { type Told, told } from '../base/index.ts';
import { figureName, placeOf } from '../figures/index.ts';
import type { PrintStyle } from '../page/index.ts';
import { tracedTask } from './places.ts';
import { editingWords as words } from './words-en.ts';

/** Something to know of the task, and where on the page it shows. */
export interface Problem {
  readonly sentence: string;
  /** Numbers of places; empty: nowhere in particular. */
  readonly places: readonly number[];
}

export interface Verdict {
  /** `changed`: exactly one answer, but no longer the one that it was. */
  readonly state: 'certain' | 'changed' | 'uncertain';
  /** Every answer that was found, in words. */
  readonly answers: readonly string[];
  /** The one answer, where there is exactly one; else `undefined`. */
  readonly answer: unknown;
  readonly problems: readonly Problem[];
}

/**
 * `before` is the task as it was made; `touched` the places of the last change, shown where a fault names none.
 * Nothing but the activity's own solver decides, from the printed facts alone.
 */
export function judge(
  activity: Activity,
  printed: unknown,
  before: Task,
  touched: readonly number[] = [],
): Verdict {
  const found = findingsOf(activity, printed);
  const { answers, faults } = found;
  const said = answers.map((answer) => activity.words.en.answer(printed, answer));
  const [only] = answers;
  if (faults.length > 0 || answers.length !== 1) {
    const problems = [
      ...faults.map((fault) => ({ sentence: words.fault(faultIn('en', fault)), places: touched })),
      ...(answers.length === 0 && faults.length === 0
        ? [{ sentence: words.noAnswer, places: touched }]
        : []),
      ...(answers.length > 1 ? [severalProblem(activity, printed, answers, said)] : []),
    ];
    return { state: 'uncertain', answers: said, answer: undefined, problems };
  }
  const key = activity.prove({ printed, answer: before.answer });
  if (key.proven) return { state: 'certain', answers: said, answer: only, problems: [] };
  const problems = [changedProblem(activity, { printed, answer: only }, before, said[0] ?? '')];
  return { state: 'changed', answers: said, answer: only, problems };
}

/** What the solver finds; facts that break it make no task. */
export function findingsOf(
  activity: Activity,
  printed: unknown,
): { readonly answers: readonly unknown[]; readonly faults: readonly Told[] } {
  try {
    return activity.solve(printed);
  } catch {
    return { answers: [], faults: [told('faults', 'unreadable')] };
  }
}

/** Whether the task can be measured, told of, and drawn at its least size; the page may still lack the room. */
export function isDrawable(activity: Activity, task: Task, style: PrintStyle): boolean {
  const { printed } = task;
  try {
    activity.features(printed);
    activity.materials(task);
    activity.decisions(task);
    activity.words.en.describe(printed);
    activity.draw(task, activity.room(printed), style, false);
    return true;
  } catch {
    return false;
  }
}

/** The figures that an answer makes right, by name, and where they stand. */
function rightIn(activity: Activity, task: Task) {
  const right = new Map<string, number[]>();
  const decisions = activity.decisions({ ...task, printed: tracedTask(task.printed) });
  for (const { figure, isRight } of decisions.flatMap(({ options }) => options)) {
    const place = placeOf(figure);
    if (!isRight || place === undefined) continue;
    const name = figureName(figure);
    right.set(name, [...(right.get(name) ?? []), place]);
  }
  return right;
}

function severalProblem(
  activity: Activity,
  printed: unknown,
  answers: readonly unknown[],
  said: readonly string[],
): Problem {
  const places = answers.map((answer) =>
    [...rightIn(activity, { printed, answer }).values()].flat(),
  );
  const inAll = (place: number) => places.every((each) => each.includes(place));
  const differing = [...new Set(places.flat())].filter((place) => !inAll(place));
  return { sentence: words.several(said), places: differing.sort((one, other) => one - other) };
}

/** What is right now and was not, and the other way round. */
function changedProblem(activity: Activity, now: Task, before: Task, said: string): Problem {
  const [right, was] = [rightIn(activity, now), rightIn(activity, before)];
  const come = [...right].filter(([name]) => !was.has(name));
  const gone = [...was.keys()].filter((name) => !right.has(name));
  return {
    sentence: words.changed(
      come.map(([name]) => name),
      gone,
      said,
    ),
    places: come.flatMap(([, places]) => places),
  };
}
