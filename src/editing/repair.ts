// The smallest change that makes a task certain again: one figure first, the nearest first, then two.
import type { Task } from '../activities/index.ts';
import { type Figure, figureName, sameFigure } from '../figures/index.ts';
import { keyFor } from './edited-tasks.ts';
import { type Ground, languageOf } from './ground.ts';
import { attributesIn, EDITABLE, figuresFor } from './offers.ts';
import { placeName } from './place-names.ts';
import { factsIn, type Path, placesIn, withValue } from './places.ts';
import { MOST_NUMBER, readPrinted } from './task-edit.ts';
import { isDrawable, stateOf } from './verdict.ts';
import { EDITING_WORDS } from './words.ts';

export interface Repair {
  readonly printed: unknown;
  /** What it would do, such as "Make the blue dot in box 2 a green dot." */
  readonly sentence: string;
  /** Numbers of the places it changes. */
  readonly places: readonly number[];
}

export interface RepairAsked {
  readonly before: Task;
  /** Places that stay as they are: what was locked, and what was changed last. */
  readonly kept: readonly number[];
  /** Where the last change was: what lies near it is tried first. */
  readonly near?: number;
}

/** Candidates looked at, one change and two; limits so that the search ends in a second or two. */
const MOST_SINGLE = 500;
const MOST_PAIRS = 600;

interface Change {
  readonly path: Path;
  readonly value: unknown;
  readonly sentence: string;
  readonly place: number | undefined;
}

/**
 * The repair, always the same one for the same task; `undefined` where none was found. What gives the answer back that
 * the task was made with comes before what only makes it certain; a task that is certain already is given that answer
 * back or left alone.
 */
export function smallestRepair(
  ground: Ground,
  printed: unknown,
  asked: RepairAsked,
): Repair | undefined {
  const isUncertain = stateOf(ground, printed, asked.before) === 'uncertain';
  const singles = changesFrom(ground, printed, asked).slice(0, MOST_SINGLE);
  let certain: Repair | undefined;
  for (const changes of triedOf(singles, printed)) {
    const repaired = repairBy(ground, printed, changes);
    if (!repaired) continue;
    const state = stateOf(ground, repaired.printed, asked.before);
    if (state === 'uncertain' || !canBeGiven(ground, repaired.printed, asked.before)) continue;
    if (state === 'certain') return repaired;
    if (isUncertain) certain ??= repaired;
    if (certain && changes.length > 1) return certain;
  }
  return certain;
}

function canBeGiven(ground: Ground, printed: unknown, before: Task): boolean {
  const task = { printed, answer: keyFor(ground, printed, before) };
  return isDrawable(ground.activity, task, ground.style);
}

function repairBy(
  ground: Ground,
  printed: unknown,
  changes: readonly Change[],
): Repair | undefined {
  const changed = changes.reduce(
    (facts, { path, value }) => withValue(facts, path, value),
    printed,
  );
  const read = readPrinted(ground.activity, changed);
  if (read === undefined) return undefined;
  return {
    printed: read,
    sentence: EDITING_WORDS[languageOf(ground)].sentences(changes.map((each) => each.sentence)),
    places: changes.flatMap(({ place }) => place ?? []),
  };
}

/** Every single change, the nearest places first; of one place, what the page already shows first. */
function changesFrom(
  ground: Ground,
  printed: unknown,
  { kept, near }: RepairAsked,
): readonly Change[] {
  const language = languageOf(ground);
  const words = EDITING_WORDS[language];
  const places = placesIn(printed);
  const shown = places.flatMap(({ figure }) => figure ?? []);
  const isShown = (figure: Figure) => shown.some((other) => sameFigure(other, figure));
  const start = near === undefined ? undefined : places[near]?.path;
  const attributes = attributesIn(ground, printed);
  const own = attributes.length > 0 ? attributes : EDITABLE;
  const free = places
    .map(({ path, figure }, place) => ({ path, figure, place, far: farness(start, path) }))
    .filter(({ place }) => !kept.includes(place))
    .sort((one, other) => one.far - other.far || one.place - other.place);
  const figures = free.flatMap(({ path, figure, place }) => {
    if (figure === null) return [];
    const others = own
      .flatMap((attribute) => figuresFor(ground, printed, figure, attribute))
      .filter((other) => !sameFigure(other, figure));
    const ordered = [...others.filter(isShown), ...others.filter((other) => !isShown(other))];
    return ordered.map((value) => ({
      path,
      value,
      place,
      sentence: words.become(
        figureName(figure, language),
        placeName({ path }, language),
        figureName(value, language),
      ),
    }));
  });
  return [...numberChanges(ground, printed), ...figures];
}

/** A number that the page tells, one more or less. */
function numberChanges(ground: Ground, printed: unknown): readonly Change[] {
  const words = EDITING_WORDS[languageOf(ground)];
  return factsIn(printed).flatMap(({ path, value }) => {
    if (typeof value !== 'number') return [];
    return [value - 1, value + 1]
      .filter((next) => next >= 0 && next <= MOST_NUMBER)
      .flatMap((next) => {
        const sentence = words.tell(String(path[0]), value, next);
        return sentence === undefined ? [] : [{ path, value: next, place: undefined, sentence }];
      });
  });
}

function* triedOf(singles: readonly Change[], printed: unknown): Iterable<readonly Change[]> {
  for (const change of singles) yield [change];
  yield* pairsOf(singles, printed);
}

/** Two changes of two places, each to what the page already shows, in the order of the single ones. */
function* pairsOf(singles: readonly Change[], printed: unknown): Iterable<readonly Change[]> {
  const shown = placesIn(printed).flatMap(({ figure }) => figure ?? []);
  const few = singles.filter(({ value, place }) => {
    const isFigure = typeof value === 'object' && value !== null;
    return place === undefined || (isFigure && shown.some((other) => sameFigure(other, value)));
  });
  let tried = 0;
  for (const [index, one] of few.entries()) {
    for (const other of few.slice(index + 1)) {
      if (one.path.join() === other.path.join()) continue;
      if (++tried > MOST_PAIRS) return;
      yield [one, other];
    }
  }
}

/** How many steps of the way two places do not share, and how far apart they part. */
function farness(one: Path | undefined, other: Path): number {
  if (!one) return 0;
  const shared = other.findIndex((step, index) => step !== one[index]);
  if (shared === -1) return 0;
  const [from, to] = [one[shared], other[shared]];
  const apart = typeof from === 'number' && typeof to === 'number' ? Math.abs(from - to) : 1;
  return 100 * (other.length - shared) + apart;
}
