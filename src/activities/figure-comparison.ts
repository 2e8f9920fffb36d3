// All that the features of a task ask of two figures, measured once for each pair and looked up from then on.
import {
  type Differences,
  differencesOf,
  directionRelation,
  type Figure,
  formOf,
  mirrorRelation,
  pairLikeness,
  sameFigure,
} from '../figures/index.ts';

/** What figures can differ in, as a child is asked to see it. */
export const ATTRIBUTES = ['colour', 'fill', 'form', 'turn', 'size', 'count', 'layout'] as const;
export type Attribute = (typeof ATTRIBUTES)[number];

export interface Comparison {
  /** They print alike. */
  readonly isAlike: boolean;
  /** 0 to 1; see `pairLikeness`. */
  readonly likeness: number;
  /** Each attribute in which they are seen to differ; none where they print alike. */
  readonly differing: ReadonlySet<Attribute>;
  /** They are left-right mirror images, at a slant or not. */
  readonly isMirror: boolean;
  /** They are mirror images that both lie at a slant. */
  readonly isOblique: boolean;
  /** Smaller over larger quantity, where quantities differ. */
  readonly countShare?: number;
}

/** Forgotten when this many pairs are known, so that a hostile file cannot fill the memory. */
const MOST_KNOWN = 20_000;

const known = new Map<string, Comparison>();
const keys = new WeakMap<Figure, string>();

/** The comparison of two figures as they are printed. */
export function compareFigures(one: Figure, other: Figure): Comparison {
  const key = `${keyOf(one)} ${keyOf(other)}`;
  const before = known.get(key);
  if (before) return before;
  const comparison = measure(one, other);
  if (known.size >= MOST_KNOWN) known.clear();
  known.set(key, comparison);
  return comparison;
}

/** Whether two figures print alike. */
export function areAlike(one: Figure, other: Figure): boolean {
  return one === other || compareFigures(one, other).isAlike;
}

function keyOf(figure: Figure): string {
  const before = keys.get(figure);
  if (before !== undefined) return before;
  const key = JSON.stringify(figure);
  keys.set(figure, key);
  return key;
}

function measure(one: Figure, other: Figure): Comparison {
  const found = differencesOf(one, other);
  const isOneForm = formOf(one) === formOf(other);
  const relation =
    directionRelation(one, other) ?? (isOneForm ? undefined : mirrorRelation(one, other));
  return {
    isAlike: sameFigure(one, other),
    likeness: pairLikeness(one, other),
    differing: attributesOf(found, isOneForm),
    isMirror: relation === 'left-right' || relation === 'opposite-obliques',
    isOblique: relation === 'opposite-obliques',
    ...(found.countRatio === undefined ? {} : { countShare: 1 / found.countRatio }),
  };
}

function attributesOf(found: Differences, isOneForm: boolean): ReadonlySet<Attribute> {
  const isTurned = found.turnDeg !== undefined || found.mirrored === true;
  const differs: Readonly<Record<Attribute, boolean>> = {
    colour: found.colourDe00 !== undefined,
    fill: found.fill === true,
    form:
      found.turnedOutlineShare !== undefined ||
      found.insideShare !== undefined ||
      (!isOneForm && isTurned),
    turn: isOneForm && isTurned,
    size: found.sizeRatio !== undefined,
    count: found.countRatio !== undefined,
    layout: found.layout === true,
  };
  return new Set(ATTRIBUTES.filter((attribute) => differs[attribute]));
}
