// Which responses and which idle changes each content can take, and how many entries its key can hold.
import type { Content, Parameters, ResponseKind, Vary } from './parameters.ts';
import { MOST_ENTRIES } from './task.ts';

export interface ContentRule {
  /** The nearest to each other first: a refusal offers the first. */
  readonly responses: readonly ResponseKind[];
  readonly varies: readonly Vary[];
  readonly fewestEntries: number;
  readonly mostEntries: number;
}

/** Responses to figures without a colour of their own, the easiest for the hand first. */
const ANY_RESPONSE: readonly ResponseKind[] = ['sticker', 'colour-in', 'ring', 'sign', 'fill'];
/** A figure that has a colour to be looked at gets no second one. */
const WITHOUT_COLOUR: readonly ResponseKind[] = ['sign', 'fill'];
/** A sign is read and not drawn over with another. */
const WITHOUT_DRAWING: readonly ResponseKind[] = ['sticker', 'colour-in', 'ring'];

const plain: ContentRule = {
  responses: ANY_RESPONSE,
  varies: ['none', 'size', 'colour'],
  fewestEntries: 2,
  mostEntries: MOST_ENTRIES,
};

/** Fewer than three entries cannot need both: one attribute alone would tell them apart. */
const paired = { ...plain, fewestEntries: 3 };

export const CONTENT_RULES: Readonly<Record<Content, ContentRule>> = {
  form: plain,
  direction: { ...plain, varies: ['none', 'size', 'colour', 'form'], mostEntries: 4 },
  size: { ...plain, varies: ['none', 'colour'], mostEntries: 3 },
  sign: { ...plain, responses: WITHOUT_DRAWING, varies: ['none', 'size'] },
  colour: { ...plain, responses: WITHOUT_COLOUR, varies: ['none', 'size', 'form'] },
  'dot-quantity': { ...plain, varies: ['none', 'size', 'colour', 'layout'], mostEntries: 5 },
  'dot-layout': { ...plain, mostEntries: 4 },
  numeral: plain,
  capital: plain,
  'small-letter': plain,
  'form-and-colour': { ...paired, responses: WITHOUT_COLOUR, varies: ['none', 'size'] },
  'form-and-size': { ...paired, varies: ['none', 'colour'] },
  'form-and-direction': paired,
  'colour-and-size': { ...paired, responses: WITHOUT_COLOUR, varies: ['none'] },
};

/** Without left and right side by side: up, down and one side. */
export const MOST_UNMIRRORED_DIRECTIONS = 3;

/** Textures that a child can draw and that no two share: waves or zigzag, stripes three ways, spots. */
export const MOST_TEXTURES = 5;

/** Where the response goes: into the outline, round the figure, or into a space of its own below it. */
export type Stand = 'inside' | 'around' | 'below';

const SHAPE_CONTENTS: readonly Content[] = [
  'form',
  'direction',
  'size',
  'form-and-size',
  'form-and-direction',
];

/** Only the outline of a shape has room inside. */
export function standOf({
  content,
  response,
  vary,
}: Pick<Parameters, 'content' | 'response' | 'vary'>): Stand {
  if (response === 'ring') return 'around';
  // Where figures change in size, colour or form, what is drawn keeps a space that does not.
  const needsSpace = response === 'sticker' || (vary !== 'none' && response !== 'colour-in');
  return needsSpace || !SHAPE_CONTENTS.includes(content) ? 'below' : 'inside';
}

/** Sizes as shares of the full size: a step is clear where lengths differ by 1.4 or more (ratios of area 2 or more). */
export const TWO_SIZES = [1, 0.55] as const;
export const THREE_SIZES = [1, 0.7, 0.49] as const;
/** Sizes that say nothing: each a clear step from the other and from the key's own full size. */
export const IDLE_SIZES = [0.76, 0.56] as const;

/** The smallest size, as a share of the full one, that a sheet of these values prints. */
export function leastSizeOf({ content, entries, vary }: Parameters): number {
  if (content === 'size' && entries === 3) return THREE_SIZES[2];
  if (content === 'size' || content === 'form-and-size' || content === 'colour-and-size') {
    return TWO_SIZES[1];
  }
  return vary === 'size' ? IDLE_SIZES[1] : 1;
}

const THREE_ROWS_FROM = 11;
const FOUR_ROWS_FROM = 16;

/**
 * How many items stand in a row. Two rows for few, three for more; four only where an item is no higher
 * than its figure, so that the sheet also fits a page that lies.
 */
export function columnsOf(items: number, stand: Stand): number {
  const rows = items >= FOUR_ROWS_FROM && stand !== 'below' ? 4 : items >= THREE_ROWS_FROM ? 3 : 2;
  return Math.ceil(items / (items === 9 ? 3 : rows));
}
