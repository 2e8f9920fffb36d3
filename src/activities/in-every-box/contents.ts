// Which figures of a content may stand together in a task, and the drawing of some of them.
import type { Random } from '../../base/index.ts';
import {
  type Attribute,
  type Axis,
  attributesOf,
  drawNearSizes,
  drawSpace,
  type Figure,
  figureAt,
  formsOf,
  MOST_UNMIRRORED_DIRECTIONS,
  mostForms,
  mostValues,
  type Space,
  withoutVowels,
} from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import type { Content } from './task.ts';

/**
 * Where two or three attributes are looked at, the most values of each, so that every figure has others that
 * are like it in all but one; and the most different figures in a task of these. Common practice, no source.
 */
const MOST_OF_SEVERAL: Readonly<Partial<Record<Attribute, number>>> = {
  form: 5,
  colour: 5,
  size: 2,
};
const MOST_MIXED_FIGURES = 20;

/** Of more sizes the smallest would be too small, or the boxes too large for a page. */
const MOST_BOX_SIZES = 4;

const pools = new Map<Content, number>();

/** How many different figures of the content can stand in one task, every two fairly different. */
export function poolSize(content: Content): number {
  const known = pools.get(content) ?? measurePool(content);
  pools.set(content, known);
  return known;
}

function measurePool(content: Content): number {
  const attributes = attributesOf(content);
  const all = attributes.reduce((product, each) => product * mostOf(content, each), 1);
  return attributes.length === 1 ? all : Math.min(all, MOST_MIXED_FIGURES);
}

/** Letters come without vowels, and directions without left and right together. */
function mostOf(content: Content, attribute: Attribute): number {
  const isAlone = attributesOf(content).length === 1;
  const most = isAlone ? undefined : MOST_OF_SEVERAL[attribute];
  switch (attribute) {
    case 'turn':
      return MOST_UNMIRRORED_DIRECTIONS;
    case 'form':
      return most ?? mostForms(withoutVowels(formsOf(content)));
    case 'size':
      return most ?? MOST_BOX_SIZES;
    default:
      return most ?? mostValues(content, attribute, 'colour');
  }
}

/**
 * `count` (at most `poolSize`) different figures in random order, alike in all but what is looked at. Of
 * several attributes there are as few values as make so many figures, and for each attribute two figures that
 * differ in that one alone, so that none of them can be left out of sight.
 */
export function drawFigures(
  content: Content,
  count: number,
  random: Random,
  { print }: PrintStyle,
): readonly Figure[] {
  const values = valuesFor(content, count);
  const drawn = drawSpace(content, random, values, print, withoutVowels(formsOf(content)));
  const space = { ...drawn, axes: drawn.axes.map((axis) => nearSized(axis, random)) };
  return random.shuffle(drawPlaces(space, count, random)).map((places) => figureAt(space, places));
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

/** Boxes are many, and room is short: sizes stand as near each other as is fair. */
function nearSized(axis: Axis, random: Random): Axis {
  if (axis.attribute !== 'size') return axis;
  return { ...axis, values: drawNearSizes(random, axis.values.length).map((size) => ({ size })) };
}

/** How many values of each attribute make at least `count` figures: as evenly as can be. */
function valuesFor(content: Content, count: number): Readonly<Partial<Record<Attribute, number>>> {
  const attributes = attributesOf(content);
  const [only] = attributes;
  if (only && attributes.length === 1) return { [only]: count };
  // Two values of each, but that two figures show one neighbour only, and three figures two.
  const values = new Map<Attribute, number>(
    attributes.map((each, index) => [each, index < count - 1 ? 2 : 1]),
  );
  const made = () => [...values.values()].reduce((product, each) => product * each, 1);
  while (made() < count) {
    const open = [...values].filter(([attribute, used]) => used < mostOf(content, attribute));
    const least = Math.min(...open.map(([, used]) => used));
    const next = open.find(([, used]) => used === least);
    if (!next)
      throw new Error(`in-every-box › figures: expected ${poolSize(content)}, got ${count}`);
    values.set(next[0], least + 1);
  }
  return Object.fromEntries(values);
}
