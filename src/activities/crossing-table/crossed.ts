// Which two things a content crosses in a table, how many of each there can be, and draws them.
import type { Random } from '../../base/index.ts';
import {
  type Attribute,
  attributesOf,
  drawSpace,
  type Figure,
  mostValues,
} from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { coloursOf, drawColours, FIGURE_COLOURS, mostFairColours } from '../../palette/index.ts';
import { type Content, MOST_LINES, type TableValues } from './task.ts';

/** What the lines of one direction are about: a value for each line. */
export type Line = Partial<Figure>;

export interface Crossed {
  readonly first: readonly Line[];
  readonly second: readonly Line[];
}

/** Up, down and one side: left and right never stand in one table. */
const MOST_DIRECTIONS = 3;
/** More sizes leave no room for a table of figures of which the smallest is large enough. */
const MOST_SIZES = 3;
/** Crossed with what may stand in ink: a black head would look like one that shows no colour. */
const COLOURS = FIGURE_COLOURS.filter((colour) => colour !== 'black');

/** The most values that the first and the second thing of the content can have. */
export function mostCrossed(content: Content, style: PrintStyle): readonly [number, number] {
  const [first, ...others] = attributesOf(content);
  const second =
    others.length === 0
      ? mostFairColours(style.print, coloursOf(style, COLOURS))
      : Math.min(...others.map((attribute) => mostOf(content, attribute, style)));
  return [first ? mostOf(content, first, style) : 1, second];
}

function mostOf(content: Content, attribute: Attribute, style: PrintStyle): number {
  const most = mostValues(content, attribute, style);
  if (attribute === 'turn') return Math.min(most, MOST_DIRECTIONS);
  return attribute === 'size' ? Math.min(most, MOST_SIZES) : most;
}

/** Whether the content has values for so many rows of the first thing and columns of the second, and for extra ones. */
export function isCrossable(
  { content, rows, columns, extra }: Pick<TableValues, 'content' | 'rows' | 'columns' | 'extra'>,
  style: PrintStyle,
): boolean {
  const [first, second] = mostCrossed(content, style);
  const hasMore = rows < first || columns < second;
  return rows <= first && columns <= second && (extra === 0 || hasMore);
}

/** The most rows, or columns, of a content: where sizes differ figures are large. */
export function mostLines(content: Content): number {
  return attributesOf(content).includes('size') ? MOST_SIZES : MOST_LINES;
}

/** `counts` values of each; of three attributes the last two change together. */
export function drawCrossed(
  content: Content,
  counts: readonly [number, number],
  random: Random,
  style: PrintStyle,
): Crossed {
  const attributes = attributesOf(content);
  const wanted = attributes.map((attribute, axis) => [attribute, counts[axis === 0 ? 0 : 1]]);
  const { base, axes } = drawSpace(content, random, Object.fromEntries(wanted), style);
  const [first, ...others] = axes.map(({ values }) => values);
  // A circle is what a figure without a form is; of other forms the first thing tells.
  const shared = base.form === 'circle' ? {} : base;
  const colours = () => drawColours(random, counts[1], style.print, coloursOf(style, COLOURS));
  const second =
    others.length === 0
      ? colours().map((colour) => ({ colour }))
      : Array.from(
          { length: counts[1] },
          (_, place): Line => Object.assign({}, ...others.map((values) => values[place])),
        );
  return { first: (first ?? []).map((value) => ({ ...shared, ...value })), second };
}
