// Which looks the figures of a task take, in numbers alone: the frame's, and the wrong ones that there can be.
import { type Attribute, attributesOf, type ContentId, mostValues } from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import type { RememberValues } from './task.ts';

/** For each attribute the number of a value. */
export type Look = readonly number[];

/** All looks that a task can choose from. */
export interface Looks {
  /** How many values each attribute takes. */
  readonly counts: readonly number[];
  readonly set: readonly Look[];
  /** Wrong ones that have all but one attribute of some look of the set. */
  readonly near: readonly Look[];
  /** Wrong ones that differ from each of the set in two or more; of one attribute, all. */
  readonly far: readonly Look[];
}

/** Values beside those of the set, of each of several attributes. */
const SPARE = 3;
/** Up, down and one side: left and right mirror each other. Sizes and numbers are kept in mind less finely than seen. */
const MOST: Readonly<Partial<Record<Attribute, number>>> = { turn: 3, size: 3, count: 4 };

/** How many figures of the frame come again below. */
export function againCount({ set, again }: Pick<RememberValues, 'set' | 'again'>): number {
  return again === 'all' ? set : Math.ceil(set / 2);
}

export function wrongCount(values: Pick<RememberValues, 'set' | 'again' | 'choices'>): number {
  return values.choices - againCount(values);
}

/** The most values of each attribute of the content that a task can hold. */
export function mostOfEach(content: ContentId, style: PrintStyle): readonly number[] {
  return attributesOf(content).map((attribute) =>
    Math.min(mostValues(content, attribute, style), MOST[attribute] ?? Number.POSITIVE_INFINITY),
  );
}

const known = new Map<string, Looks>();

/** The looks for a frame of `set` figures; undefined where the content has not so many. */
export function looksFor(content: ContentId, set: number, style: PrintStyle): Looks | undefined {
  const most = mostOfEach(content, style);
  if (set > (most[0] ?? 0)) return undefined;
  const key = `${set} ${most.join()}`;
  const looks = known.get(key) ?? makeLooks(most, set);
  known.set(key, looks);
  return looks;
}

function makeLooks(most: readonly number[], count: number): Looks {
  const spare = most.length === 1 ? Number.POSITIVE_INFINITY : SPARE;
  const counts = most.map((values) => Math.min(values, Math.min(values, count) + spare));
  // Each of the set has a value of its own of every attribute, as far as there are so many.
  const set = Array.from({ length: count }, (_, index) =>
    most.map((values) => index % Math.min(values, count)),
  );
  const wrong = everyLook(counts).filter((look) => nearestTo(look, set) > 0);
  const isNear = (look: Look) => most.length > 1 && nearestTo(look, set) === 1;
  return {
    counts,
    set,
    near: wrong.filter(isNear),
    far: wrong.filter((look) => !isNear(look)),
  };
}

/** In how many attributes a look differs from that of the set which is nearest to it. */
function nearestTo(look: Look, set: readonly Look[]): number {
  const distances = set.map((other) => look.filter((value, axis) => value !== other[axis]).length);
  return Math.min(...distances);
}

function everyLook(counts: readonly number[]): readonly Look[] {
  return counts.reduce<readonly Look[]>(
    (looks, count) =>
      looks.flatMap((look) => Array.from({ length: count }, (_, value) => [...look, value])),
    [[]],
  );
}
