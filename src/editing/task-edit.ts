// What was changed in one task, as plain data against the task that its seed gives.
import type { Activity } from '../activities/index.ts';
import type { Figure } from '../figures/index.ts';
import { factsIn, type Path, placesIn, sameFacts, withValue } from './places.ts';
import { type ShapeChange, withShape } from './shape-change.ts';

export interface TaskEdit {
  /** Which task of the sheet, from 0. */
  readonly task: number;
  /** Seed of the task that was drawn in its stead; absent: the sheet's own task. */
  readonly seed?: number;
  /** What was added and taken away, in order, before all else. */
  readonly shape: readonly ShapeChange[];
  /** Places that show something else, by their numbers. */
  readonly figures: readonly (readonly [place: number, figure: Figure | null])[];
  /** Facts that say something else, by their numbers. */
  readonly facts: readonly (readonly [fact: number, value: number | string])[];
}

/** More in one task, or on one sheet, is no longer a change; limits against hostile files. */
export const MOST_SHAPE_CHANGES = 15;
export const MOST_PLACES = 512;
export const MOST_FACTS = 64;
/** Numbers that a page tells stay below this. */
export const MOST_NUMBER = 63;

/** The printed facts after the change, as the activity reads them; `undefined` where it does not fit them. */
export function withEdit(activity: Activity, base: unknown, edit: TaskEdit): unknown {
  const shaped = edit.shape.reduce<unknown>(
    (facts, change) => (facts === undefined ? undefined : withShape(facts, change)),
    base,
  );
  if (shaped === undefined) return undefined;
  const [places, facts] = [placesIn(shaped), factsIn(shaped)];
  const changes = [
    ...edit.figures.map(([place, figure]) => ({ path: places[place]?.path, value: figure })),
    ...edit.facts.map(([fact, value]) => ({ path: facts[fact]?.path, value })),
  ];
  if (changes.some(({ path }) => path === undefined)) return undefined;
  const changed = changes.reduce<unknown>(
    (printed, { path, value }) => withValue(printed, path as Path, value),
    shaped,
  );
  return readPrinted(activity, changed);
}

/** The facts as the activity reads them; `undefined` where its schema refuses them. */
export function readPrinted(activity: Activity, printed: unknown): unknown {
  const read = activity.printed.safeParse(printed);
  return read.success ? read.data : undefined;
}

/**
 * What leads from the base to the printed facts, the shape having been changed so; `undefined` where nothing does.
 * Two ways to the same page give the same edit.
 */
export function editBetween(
  base: unknown,
  printed: unknown,
  { task, seed, shape }: Pick<TaskEdit, 'task' | 'seed' | 'shape'>,
): TaskEdit | undefined {
  const shaped = shape.reduce<unknown>((facts, change) => withShape(facts, change), base);
  const [placesBefore, factsBefore] = [placesIn(shaped), factsIn(shaped)];
  const [places, facts] = [placesIn(printed), factsIn(printed)];
  if (places.length !== placesBefore.length || facts.length !== factsBefore.length) {
    return undefined;
  }
  return {
    task,
    ...(seed === undefined ? {} : { seed }),
    shape,
    figures: places.flatMap(({ figure }, place) =>
      sameFacts(figure, placesBefore[place]?.figure) ? [] : [[place, figure] as const],
    ),
    facts: facts.flatMap(({ value }, fact) =>
      value === factsBefore[fact]?.value ? [] : [[fact, value] as const],
    ),
  };
}

/** Whether the edit leaves the task as it was. */
export function isIdle({ seed, shape, figures, facts }: TaskEdit): boolean {
  return seed === undefined && shape.length + figures.length + facts.length === 0;
}
