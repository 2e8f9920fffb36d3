// Draws sets of different figures of a content, such as the figures of several boxes or of a key.
import type { Random } from '../base/index.ts';
import {
  type Attribute,
  type Axis,
  attributesOf,
  type ContentId,
  drawNearSizes,
  drawSpace,
  type Figure,
  type FormId,
  figureAt,
  type Space,
} from '../figures/index.ts';
import type { PrintStyle } from '../page/index.ts';

/** What a set is drawn from. */
export interface SetSource {
  readonly content: ContentId;
  /** How many values of each attribute the set may hold. */
  readonly mostOf: (attribute: Attribute) => number;
  /** The forms that the figures take, some of the content's own. */
  readonly forms: readonly FormId[];
  /** Draws the values of an attribute otherwise than a space of the content does. */
  readonly redraw?: Redraw;
}

/** `count` values for figures like `base`; undefined: as a space of the content has them. */
export type Redraw = (
  attribute: Attribute,
  count: number,
  base: Figure,
  random: Random,
) => readonly Partial<Figure>[] | undefined;

/** Sizes as near each other as is fair, for pages on which room is short. */
export const redrawNearSizes: Redraw = (attribute, count, _base, random) =>
  attribute === 'size' ? drawNearSizes(random, count).map((size) => ({ size })) : undefined;

/** How many different figures a set can hold; of several attributes each must take two values, or there is one. */
export function mostInSet({ content, mostOf }: Pick<SetSource, 'content' | 'mostOf'>): number {
  const most = attributesOf(content).map(mostOf);
  if (most.length > 1 && Math.min(...most) < 2) return Math.max(0, Math.min(...most));
  return most.reduce((product, values) => product * values, 1);
}

/**
 * `count` (at most `mostInSet`) different figures in random order, alike in all but what is looked at. Of
 * several attributes there are as few values as make so many figures, and, with more figures than attributes,
 * for each attribute two figures that differ in that one alone, so that none can be left out of sight.
 */
export function drawFigureSet(
  source: SetSource,
  count: number,
  random: Random,
  style: PrintStyle,
): readonly Figure[] {
  const { content, forms, redraw } = source;
  const { base, axes } = drawSpace(content, random, valuesFor(source, count), style, forms);
  const redrawn = axes.map(({ attribute, values }): Axis => {
    return { attribute, values: redraw?.(attribute, values.length, base, random) ?? values };
  });
  return drawFromSpace({ base, axes: redrawn }, count, random);
}

/** `count` figures of a space in random order, the first of them with their neighbours along each axis. */
export function drawFromSpace(space: Space, count: number, random: Random): readonly Figure[] {
  return random.shuffle(drawPlaces(space, count, random)).map((places) => figureAt(space, places));
}

/** How many values of each attribute make at least `count` figures: as evenly as can be. */
function valuesFor(
  { content, mostOf }: SetSource,
  count: number,
): Readonly<Partial<Record<Attribute, number>>> {
  const attributes = attributesOf(content);
  const [only] = attributes;
  if (only && attributes.length === 1) return { [only]: count };
  // Two values of each, but that two figures show one neighbour only, and three figures two.
  const values = new Map<Attribute, number>(
    attributes.map((each, index) => [each, index < count - 1 ? 2 : 1]),
  );
  const made = () => [...values.values()].reduce((product, each) => product * each, 1);
  while (made() < count) {
    const open = [...values].filter(([attribute, used]) => used < mostOf(attribute));
    const least = Math.min(...open.map(([, used]) => used));
    const next = open.find(([, used]) => used === least);
    if (!next) throw new Error(`figure sets › ${content}: expected 1 to ${made()}, got ${count}`);
    values.set(next[0], least + 1);
  }
  return Object.fromEntries(values);
}

/** Places of figures in a space: one, its neighbours along each axis, then any others. */
function drawPlaces(space: Space, count: number, random: Random): readonly (readonly number[])[] {
  const all = random.shuffle(placesIn(space));
  const [first = []] = all;
  const differing = (places: readonly number[]) =>
    places.flatMap((place, axis) => (place === first[axis] ? [] : [axis]));
  const near = space.axes.flatMap((_, axis) => {
    const neighbour = all.find((places) => differing(places).join() === String(axis));
    return neighbour ? [neighbour] : [];
  });
  return [...new Set([first, ...near, ...all])].slice(0, count);
}

function placesIn({ axes }: Space): readonly (readonly number[])[] {
  return axes.reduce<readonly (readonly number[])[]>(
    (places, { values }) => places.flatMap((place) => values.map((_, index) => [...place, index])),
    [[]],
  );
}
