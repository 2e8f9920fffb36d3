// What can be added or taken away at a place: its figure, and each thing round it that stands in a list.
import type { Task } from '../activities/index.ts';
import { type Random, randomFrom } from '../base/index.ts';
import { type Figure, sameFigure } from '../figures/index.ts';
import { keyFor } from './edited-tasks.ts';
import { findingsOf } from './findings.ts';
import { type Ground, languageOf } from './ground.ts';
import { attributesIn, figuresFor } from './offers.ts';
import { itemKind } from './place-names.ts';
import {
  type List,
  listsIn,
  type Path,
  placesIn,
  sameFacts,
  valueAt,
  withValue,
} from './places.ts';
import { type ShapeChange, withShape } from './shape-change.ts';
import { readPrinted } from './task-edit.ts';
import { isDrawable, stateOf } from './verdict.ts';
import { EDITING_WORDS } from './words.ts';

export interface ShapeOffer {
  readonly label: string;
  readonly change: ShapeChange;
  /** The task after it. */
  readonly printed: unknown;
}

/** Looks tried for what is added, so that it differs from what it is copied from and the answer stays. */
const MOST_LOOKS = 24;

/** The innermost first. What cannot be drawn, or brings a fault of form, is not offered. */
export function shapeOffersAt(
  ground: Ground,
  printed: unknown,
  before: Task,
  place: number,
): readonly ShapeOffer[] {
  const words = EDITING_WORDS[languageOf(ground)];
  const path = placesIn(printed)[place]?.path ?? [];
  return listsIn(printed)
    .map((list, index) => ({ list, index, at: path[list.path.length] }))
    .filter(({ list, at }) => typeof at === 'number' && isWithin(path, list.path))
    .reverse()
    .flatMap(({ list, index, at }) => {
      const thing = itemKind(list.path);
      const offered = (kind: ShapeChange['kind'], label: string) => {
        const change = { kind, list: index, at: Number(at) };
        const found = bestChange(ground, printed, before, change, list);
        return found ? [{ label, ...found }] : [];
      };
      return [...offered('add', words.add(thing)), ...offered('take', words.take(thing))];
    });
}

function isWithin(path: Path, outer: Path): boolean {
  return outer.every((step, index) => step === path[index]);
}

/** Alone or together with what stands beside it, whichever brings no new fault. */
function bestChange(
  ground: Ground,
  printed: unknown,
  before: Task,
  change: Omit<ShapeChange, 'together'>,
  list: List,
): Omit<ShapeOffer, 'label'> | undefined {
  const faultsNow = findingsOf(ground.activity, printed).faults.length;
  for (const together of [false, true]) {
    const whole = { ...change, together };
    const shaped = withShape(printed, whole);
    const copy =
      shaped !== undefined && change.kind === 'add'
        ? withOtherLooks(ground, shaped, before, list, change.at + 1)
        : shaped;
    const read = copy === undefined ? undefined : readPrinted(ground.activity, copy);
    if (read === undefined) continue;
    const isFit = findingsOf(ground.activity, read).faults.length <= faultsNow;
    if (isFit && isGivable(ground, read, before)) return { change: whole, printed: read };
  }
  return undefined;
}

function isGivable(ground: Ground, printed: unknown, before: Task): boolean {
  const answer = keyFor(ground, printed, before);
  return isDrawable(ground.activity, { printed, answer }, ground.style);
}

/** The added item with looks of its own: the first that leave the answer as it is; else as copied. */
function withOtherLooks(
  ground: Ground,
  shaped: unknown,
  before: Task,
  list: List,
  at: number,
): unknown {
  const own = placesIn(shaped).filter(({ path }) => isWithin(path, [...list.path, at]));
  const random = randomFrom(at);
  for (let look = 0; look < MOST_LOOKS; look++) {
    const varied = own.reduce<unknown>(
      (facts, { path, figure }) =>
        figure && random.int(0, 1) === 1
          ? withValue(facts, path, otherLook(ground, shaped, figure, random))
          : facts,
      shaped,
    );
    const read = readPrinted(ground.activity, varied);
    if (read === undefined || isRepeated(read, list, at)) continue;
    if (stateOf(ground, read, before) === 'certain') return read;
  }
  return shaped;
}

/** A figure that the page shows elsewhere, or else one that differs in what the task is about. */
function otherLook(ground: Ground, printed: unknown, figure: Figure, random: Random): Figure {
  const shown = placesIn(printed).flatMap((place) => place.figure ?? []);
  const made = attributesIn(ground, printed).flatMap((attribute) =>
    figuresFor(ground, printed, figure, attribute),
  );
  const others = [...shown, ...made].filter((other) => !sameFigure(other, figure));
  return others.length === 0 ? figure : random.pick(others);
}

function isRepeated(printed: unknown, list: List, at: number): boolean {
  const items = valueAt(printed, list.path) as readonly unknown[];
  return items.some((item, index) => index !== at && sameFacts(item, items[at]));
}
