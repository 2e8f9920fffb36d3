// Which figures of a content may stand together in a task, and the drawing of some of them.
import type { Random } from '../../base/index.ts';
import {
  type Attribute,
  attributesOf,
  type Figure,
  formsKey,
  formsOf,
  MOST_UNMIRRORED_DIRECTIONS,
  mostForms,
  mostValues,
  withoutVowels,
} from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { coloursOf } from '../../palette/index.ts';
import { drawFigureSet, mostInSet, redrawNearSizes } from '../figure-sets.ts';
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

const pools = new Map<string, number>();

/** How many different figures of the content can stand in one task, every two fairly different. */
export function poolSize(content: Content, style: PrintStyle): number {
  const key = `${formsKey(content)} ${coloursOf(style)}`;
  const known = pools.get(key) ?? measurePool(content, style);
  pools.set(key, known);
  return known;
}

function measurePool(content: Content, style: PrintStyle): number {
  const all = mostInSet({ content, mostOf: (attribute) => mostOf(content, attribute, style) });
  return attributesOf(content).length === 1 ? all : Math.min(all, MOST_MIXED_FIGURES);
}

/** Letters come without vowels, and directions without left and right together. */
function mostOf(content: Content, attribute: Attribute, style: PrintStyle): number {
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
      return Math.min(most ?? Number.POSITIVE_INFINITY, mostValues(content, attribute, style));
  }
}

/** `count` (at most `poolSize`) different figures in random order; boxes are many, and room is short. */
export function drawFigures(
  content: Content,
  count: number,
  random: Random,
  style: PrintStyle,
): readonly Figure[] {
  const source = {
    content,
    mostOf: (attribute: Attribute) => mostOf(content, attribute, style),
    forms: withoutVowels(formsOf(content), style.letters),
    redraw: redrawNearSizes,
  };
  return drawFigureSet(source, count, random, style);
}
