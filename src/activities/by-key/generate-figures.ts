// The figures of a key, from one attribute or two, and what may change from item to item without meaning anything.
import type { Random } from '../../base/index.ts';
import {
  DOT_LAYOUTS,
  drawForms,
  type Figure,
  formOf,
  isShape,
  mostForms,
} from '../../figures/index.ts';
import { drawColours, FIGURE_COLOURS } from '../../palette/index.ts';
import { IDLE_SIZES, standOf } from './contents.ts';
import {
  type Brief,
  drawPart,
  drawShared,
  type Part,
  POINTING,
  shapesFor,
} from './generate-parts.ts';
import type { Content } from './parameters.ts';

/** The attributes that the figures of a key differ in, by content. */
const PARTS: Readonly<Record<Content, readonly [Part] | readonly [Part, Part]>> = {
  form: ['shape'],
  direction: ['turn'],
  size: ['size'],
  sign: ['sign'],
  colour: ['colour'],
  'dot-quantity': ['count'],
  'dot-layout': ['layout'],
  numeral: ['numeral'],
  capital: ['capital'],
  'small-letter': ['small-letter'],
  'form-and-colour': ['shape', 'colour'],
  'form-and-size': ['shape', 'size'],
  'form-and-direction': ['pointing-shape', 'turn'],
  'colour-and-size': ['colour', 'size'],
};

const MOST_VARIANTS = 3;

/** The figures of a key, in random order. */
export function drawKeyFigures(random: Random, brief: Brief): readonly Figure[] {
  const { content, entries } = brief.values;
  const [first, second] = PARTS[content];
  const shared = drawShared(random, brief);
  const looks = second
    ? drawPairs(random, brief, first, second)
    : drawPart(random, first, brief, entries);
  return random.shuffle(looks).map((look) => withFill({ ...shared, ...look }, brief));
}

/**
 * Places of a grid of two attributes, so few ways each that neither attribute alone tells all entries apart:
 * three or four of two by two, five or six of two by three.
 */
function drawPairs(random: Random, brief: Brief, first: Part, second: Part): readonly Figure[] {
  const { entries } = brief.values;
  const isLong = entries > 4;
  // A third size would make the smallest figures too small, and few shapes point.
  const isFirstLonger = second === 'size' || (second !== 'turn' && random.int(0, 1) === 0);
  const [rows, columns] = [isLong && isFirstLonger ? 3 : 2, isLong && !isFirstLonger ? 3 : 2];
  const ones = drawPart(random, first, brief, rows);
  const others = drawPart(random, second, brief, columns);
  const grid = ones.flatMap((one) => others.map((other) => ({ ...one, ...other })));
  return random.sample(grid, entries);
}

/** A shape that gets its response inside or round it is printed as an outline. */
function withFill(figure: Figure, { values }: Brief): Figure {
  const isOpen =
    isShape(formOf(figure)) && figure.colour === undefined && standOf(values) !== 'below';
  return isOpen ? { ...figure, fill: 'outline' } : figure;
}

/**
 * The looks that an item may take on besides its entry's own; one empty look where nothing varies. None of them
 * is the look of the key, so that no item is more like the key than another.
 */
export function drawVariants(
  random: Random,
  brief: Brief,
  key: readonly Figure[],
): readonly Figure[] {
  const { entries, items, vary } = brief.values;
  const count = Math.min(MOST_VARIANTS, Math.max(2, Math.floor(items / entries)));
  switch (vary) {
    case 'none':
      return [{}];
    case 'size':
      return IDLE_SIZES.map((size) => ({ size }));
    case 'colour': {
      const seen = FIGURE_COLOURS.filter((colour) => colour !== 'black');
      return drawColours(random, count, brief.style.print, seen).map((colour) => ({ colour }));
    }
    case 'form':
      return otherForms(random, brief, key).slice(0, count);
    case 'layout':
      return random.sample(DOT_LAYOUTS.slice(1), count).map((layout) => ({ layout }));
  }
}

/** Forms that the key does not show: pointing ones where directions are looked at, else any shapes. */
function otherForms(random: Random, brief: Brief, key: readonly Figure[]): readonly Figure[] {
  const shown = key.map(formOf);
  const pool = brief.values.content === 'direction' ? POINTING : shapesFor(brief);
  const others = pool.filter((form) => !shown.includes(form) && !brief.keptOut.includes(form));
  return drawForms(random, others, Math.min(MOST_VARIANTS, mostForms(others))).map((form) => ({
    form,
  }));
}
