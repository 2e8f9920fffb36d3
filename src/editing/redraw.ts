// Drawing the rest again: another task of the same kind in which the locked figures stand as they do.
import type { Task } from '../activities/index.ts';
import { MAX_SEED, randomFrom } from '../base/index.ts';
import { type Figure, sameFigure } from '../figures/index.ts';
import { keyFor } from './edited-tasks.ts';
import { drawnTask, type Ground } from './ground.ts';
import { placesIn, withValue } from './places.ts';
import { smallestRepair } from './repair.ts';
import { withShape } from './shape-change.ts';
import { readPrinted, type TaskEdit } from './task-edit.ts';
import { isDrawable, stateOf } from './verdict.ts';

export interface Redrawn {
  readonly seed: number;
  readonly base: Task;
  readonly printed: unknown;
}

/** Fresh tasks looked at, and those that are worth a search for a repair. */
const MOST_DRAWS = 60;
const MOST_REPAIRS = 2;

/**
 * The task drawn again from a seed: the first that shows the locked figures by itself, else the first that stays
 * certain with them put in, else one that a repair makes so. What was added or taken away stays so. Always the same
 * for the same seed; `undefined` where nothing certain was found.
 */
export function redraw(
  ground: Ground,
  printed: unknown,
  shape: TaskEdit['shape'],
  locked: readonly number[],
  seed: number,
): Redrawn | undefined {
  const places = placesIn(printed);
  const wanted = locked.map((place) => [place, places[place]?.figure ?? null] as const);
  const drawn = draws(ground, shape, places.length, seed);
  const agreeing = drawn.find((each) =>
    wanted.every(([place, figure]) => shows(each, place, figure)),
  );
  if (agreeing) return agreeing;
  const put = drawn.flatMap((each) => withLocked(ground, each, wanted) ?? []);
  const certain = put.find((each) => isCertain(ground, each));
  if (certain) return certain;
  for (const each of put.slice(0, MOST_REPAIRS)) {
    const repaired = smallestRepair(ground, each.printed, { before: each.base, kept: locked });
    if (repaired) return { ...each, printed: repaired.printed };
  }
  return undefined;
}

/** Different seeds' tasks of the same form; as generators draw them they are certain. */
function draws(
  ground: Ground,
  shape: TaskEdit['shape'],
  places: number,
  seed: number,
): readonly Redrawn[] {
  const random = randomFrom(seed);
  return Array.from({ length: MOST_DRAWS }, () => random.int(0, MAX_SEED)).flatMap((own) => {
    const base = drawnTask(ground, own);
    const shaped = shape.reduce<unknown>(
      (facts, change) => (facts === undefined ? undefined : withShape(facts, change)),
      base.printed,
    );
    const printed = shaped === undefined ? undefined : readPrinted(ground.activity, shaped);
    const isLike = printed !== undefined && placesIn(printed).length === places;
    const each = { seed: own, base, printed };
    const isSure = shape.length === 0 || isCertain(ground, each);
    return isLike && isSure ? [each] : [];
  });
}

function shows({ printed }: Redrawn, place: number, figure: Figure | null): boolean {
  const own = placesIn(printed)[place]?.figure ?? null;
  return own === null || figure === null ? own === figure : sameFigure(own, figure);
}

function withLocked(
  ground: Ground,
  each: Redrawn,
  wanted: readonly (readonly [place: number, figure: Figure | null])[],
): Redrawn | undefined {
  const paths = placesIn(each.printed).map(({ path }) => path);
  const put = wanted.reduce<unknown>(
    (facts, [place, figure]) => withValue(facts, paths[place] ?? [], figure),
    each.printed,
  );
  const printed = readPrinted(ground.activity, put);
  return printed === undefined ? undefined : { ...each, printed };
}

function isCertain(ground: Ground, { printed, base }: Redrawn): boolean {
  const { activity, style } = ground;
  const answer = keyFor(ground, printed, base);
  return (
    stateOf(ground, printed, base) !== 'uncertain' &&
    isDrawable(activity, { printed, answer }, style)
  );
}
