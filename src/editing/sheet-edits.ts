// One sheet under a person's hands: what was changed, what is locked, and each deed done to it.
import type { Task } from '../activities/index.ts';
import { accept, type Result, refuse, type Told, told } from '../base/index.ts';
import { type Figure, placeOf } from '../figures/index.ts';
import { keyFor, unchangeable } from './edited-tasks.ts';
import { baseTask, type Ground } from './ground.ts';
import {
  factsIn,
  haveSamePlaces,
  type Path,
  placesIn,
  tracedTask,
  valueAt,
  withValue,
} from './places.ts';
import { redraw } from './redraw.ts';
import { smallestRepair } from './repair.ts';
import { type ShapeChange, withShape } from './shape-change.ts';
import { shapeOffersAt } from './shape-offers.ts';
import {
  editBetween,
  isIdle,
  MOST_SHAPE_CHANGES,
  readPrinted,
  type TaskEdit,
  withEdit,
} from './task-edit.ts';
import { isDrawable } from './verdict.ts';

/** A place of a sheet: its task and its number there, both from 0. */
export interface Spot {
  readonly task: number;
  readonly place: number;
}

export interface SheetEdits {
  readonly edits: readonly TaskEdit[];
  readonly locks: readonly Spot[];
  /** The last change: what a repair leaves alone, and near which it looks first. */
  readonly last?: { readonly task: number; readonly places: readonly number[] };
}

export const NO_EDITS: SheetEdits = { edits: [], locks: [] };

export type Deed =
  | { readonly kind: 'become'; readonly at: Spot; readonly figure: Figure | null }
  | {
      readonly kind: 'tell';
      readonly task: number;
      readonly fact: number;
      readonly value: number | string;
    }
  | { readonly kind: 'swap'; readonly at: Spot; readonly with: number }
  | { readonly kind: 'shape'; readonly at: Spot; readonly change: ShapeChange }
  | { readonly kind: 'lock'; readonly at: Spot }
  /** Two items of lists, such as two boxes, with all that belongs to each. */
  | { readonly kind: 'exchange'; readonly task: number; readonly one: Path; readonly other: Path }
  | {
      readonly kind: 'lock-all';
      readonly task: number;
      readonly places: readonly number[];
      readonly isLocked: boolean;
    }
  | { readonly kind: 'repair'; readonly task: number }
  | { readonly kind: 'redraw'; readonly task: number; readonly seed: number };

/** A task as it lies on the table. */
export interface Lying {
  readonly before: Task;
  readonly printed: unknown;
  readonly edit: TaskEdit;
}

/** The task with what was changed in it; a defect where the edits do not fit the sheet. */
export function lyingTask(
  ground: Ground,
  own: readonly Task[],
  { edits }: Pick<SheetEdits, 'edits'>,
  task: number,
): Lying {
  const made = own[task];
  if (!made) throw new Error(`editing: expected a task ${task + 1}, got ${own.length}`);
  const edit = edits.find((each) => each.task === task) ?? {
    task,
    shape: [],
    figures: [],
    facts: [],
  };
  const before = baseTask(ground, made, edit);
  const printed = isIdle(edit) ? made.printed : withEdit(ground.activity, before.printed, edit);
  if (printed === undefined) throw new Error(`editing: the edit of task ${task + 1} does not fit`);
  return { before, printed, edit };
}

/** The sheet after the deed. Refuses what leaves no task that can be drawn, and what cannot be found. */
export function doDeed(
  ground: Ground,
  own: readonly Task[],
  work: SheetEdits,
  deed: Deed,
): Result<SheetEdits> {
  const task = 'at' in deed ? deed.at.task : deed.task;
  if (own[task] === undefined) return refuseDeed(ground, task, told('reasons', 'change.no-task'));
  const lying = lyingTask(ground, own, work, task);
  switch (deed.kind) {
    case 'become':
      return changedAt(ground, work, lying, [[deed.at.place, deed.figure]]);
    case 'tell': {
      const path = factsIn(lying.printed)[deed.fact]?.path;
      if (!path) return refuseDeed(ground, task, told('reasons', 'change.no-fact'));
      return changedTo(ground, work, lying, withValue(lying.printed, path, deed.value), []);
    }
    case 'swap': {
      const places = placesIn(lying.printed);
      const [one, other] = [places[deed.at.place], places[deed.with]];
      if (!one || !other) return refuseDeed(ground, task, told('reasons', 'change.no-place'));
      return changedAt(ground, work, lying, [
        [deed.at.place, other.figure],
        [deed.with, one.figure],
      ]);
    }
    case 'shape':
      return shapedTo(ground, work, lying, deed.at.place, deed.change);
    case 'exchange':
      return exchanged(ground, work, lying, deed.one, deed.other);
    case 'lock-all':
      return accept({ ...work, locks: withLocks(work.locks, deed) });
    case 'lock':
      return accept({ ...work, locks: toggled(work.locks, deed.at) });
    case 'repair':
      return repaired(ground, work, lying);
    case 'redraw':
      return redrawn(ground, work, lying, deed.seed);
  }
}

/** Places of the task that are locked. */
export function lockedIn({ locks }: Pick<SheetEdits, 'locks'>, task: number): readonly number[] {
  return locks.filter((lock) => lock.task === task).map(({ place }) => place);
}

function changedAt(
  ground: Ground,
  work: SheetEdits,
  lying: Lying,
  changes: readonly (readonly [place: number, figure: Figure | null])[],
): Result<SheetEdits> {
  const places = placesIn(lying.printed);
  if (changes.some(([place]) => places[place] === undefined)) {
    return refuseDeed(ground, lying.edit.task, told('reasons', 'change.no-place'));
  }
  const printed = changes.reduce(
    (facts, [place, figure]) => withValue(facts, places[place]?.path ?? [], figure),
    lying.printed,
  );
  const touched = changes.map(([place]) => place);
  return changedTo(ground, work, lying, printed, touched);
}

/** The task as the facts now are, if the activity takes them and can draw them. */
function changedTo(
  ground: Ground,
  work: SheetEdits,
  { before, edit }: Lying,
  facts: unknown,
  places: readonly number[],
): Result<SheetEdits> {
  const printed = readPrinted(ground.activity, facts);
  if (printed === undefined)
    return refuseDeed(ground, edit.task, told('reasons', 'change.unprintable'));
  const answer = keyFor(ground, printed, before);
  const next = editBetween(before.printed, printed, edit);
  if (!next || !isDrawable(ground.activity, { printed, answer }, ground.style)) {
    return refuseDeed(ground, edit.task, told('reasons', 'change.undrawable'));
  }
  return accept({
    edits: withTask(work.edits, next),
    locks: work.locks,
    last: { task: edit.task, places },
  });
}

function withTask(edits: readonly TaskEdit[], next: TaskEdit): readonly TaskEdit[] {
  const others = edits.filter(({ task }) => task !== next.task);
  const all = isIdle(next) ? others : [...others, next];
  return [...all].sort((one, other) => one.task - other.task);
}

function shapedTo(
  ground: Ground,
  work: SheetEdits,
  lying: Lying,
  place: number,
  change: ShapeChange,
): Result<SheetEdits> {
  const { before, printed, edit } = lying;
  const offer = shapeOffersAt(ground, printed, before, place).find(
    (each) => JSON.stringify(keyOf(each.change)) === JSON.stringify(keyOf(change)),
  );
  if (!offer) return refuseDeed(ground, edit.task, told('reasons', 'change.no-offer'));
  if (edit.shape.length >= MOST_SHAPE_CHANGES) {
    return refuseDeed(
      ground,
      edit.task,
      told('reasons', 'change.most', { most: MOST_SHAPE_CHANGES }),
    );
  }
  const moved = movedLocks(work.locks, edit.task, printed, change);
  const shape = [...edit.shape, offer.change];
  const shaped = { ...lying, edit: { ...edit, shape } };
  return changedTo(ground, { ...work, locks: moved }, shaped, offer.printed, []);
}

function keyOf({ kind, list, at, together }: ShapeChange) {
  return [kind, list, at, together];
}

/** Locks follow their figures to where they now stand. */
function movedLocks(
  locks: readonly Spot[],
  task: number,
  printed: unknown,
  change: ShapeChange,
): readonly Spot[] {
  const places = placesIn(withShape(tracedTask(printed), change));
  return locks.flatMap((lock) => {
    if (lock.task !== task) return [lock];
    const place = places.findIndex(({ figure }) => figure && placeOf(figure) === lock.place);
    return place === -1 ? [] : [{ task, place }];
  });
}

/** What stands in one for what stands in the other; refused where the two are not of one form. */
function exchanged(
  ground: Ground,
  work: SheetEdits,
  lying: Lying,
  one: Path,
  other: Path,
): Result<SheetEdits> {
  const { printed, edit } = lying;
  const [first, second] = [valueAt(printed, one), valueAt(printed, other)];
  const isThere = first !== undefined && second !== undefined;
  const both = isThere ? withValue(withValue(printed, one, second), other, first) : undefined;
  const [was, is] = [placesIn(printed), placesIn(both)];
  const isAlike = isThere && haveSamePlaces(was, is);
  if (!isAlike) return refuseDeed(ground, edit.task, told('reasons', 'change.unlike'));
  const touched = was.flatMap(({ path }, place) =>
    [one, other].some((outer) => outer.every((step, index) => step === path[index])) ? [place] : [],
  );
  return changedTo(ground, work, lying, both, touched);
}

function withLocks(
  locks: readonly Spot[],
  { task, places, isLocked }: Extract<Deed, { readonly kind: 'lock-all' }>,
): readonly Spot[] {
  const others = locks.filter((lock) => lock.task !== task || !places.includes(lock.place));
  return isLocked ? [...others, ...places.map((place) => ({ task, place }))] : others;
}

function toggled(locks: readonly Spot[], spot: Spot): readonly Spot[] {
  const isSpot = ({ task, place }: Spot) => task === spot.task && place === spot.place;
  return locks.some(isSpot) ? locks.filter((lock) => !isSpot(lock)) : [...locks, spot];
}

function repaired(ground: Ground, work: SheetEdits, lying: Lying): Result<SheetEdits> {
  const { task } = lying.edit;
  const repair = smallestRepair(ground, lying.printed, {
    before: lying.before,
    ...repairAsked(work, task),
  });
  if (!repair) return refuseDeed(ground, task, told('reasons', 'change.locked.repair'));
  return changedTo(ground, work, lying, repair.printed, repair.places);
}

/** What a repair leaves alone, and where it looks first. */
export function repairAsked(work: SheetEdits, task: number) {
  const touched = work.last?.task === task ? work.last.places : [];
  const [near] = touched;
  return {
    kept: [...lockedIn(work, task), ...touched],
    ...(near === undefined ? {} : { near }),
  };
}

function redrawn(ground: Ground, work: SheetEdits, lying: Lying, seed: number): Result<SheetEdits> {
  const { printed, edit } = lying;
  const found = redraw(ground, printed, edit.shape, lockedIn(work, edit.task), seed);
  if (!found) return refuseDeed(ground, edit.task, told('reasons', 'change.locked.redraw'));
  const { base, seed: own } = found;
  const drawn = { before: base, printed: found.printed, edit: { ...edit, seed: own } };
  return changedTo(ground, work, drawn, found.printed, []);
}

function refuseDeed(ground: Ground, task: number, reason: Told): Result<never> {
  return refuse(unchangeable(ground, task, reason));
}
