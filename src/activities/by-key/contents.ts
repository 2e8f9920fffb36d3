// Which responses and which idle changes each content can take, and how many entries its key can hold.
import {
  type Attribute,
  attributesOf,
  isOfCharacters,
  MOST_UNMIRRORED_DIRECTIONS,
  mostValues,
} from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import {
  type ColourName,
  coloursOf,
  FIGURE_COLOURS,
  mostFairColours,
} from '../../palette/index.ts';
import {
  type Content,
  isOwn,
  type OwnContent,
  type Parameters,
  type ResponseKind,
  type Vary,
} from './parameters.ts';
import { MOST_ENTRIES } from './task.ts';

type Looked = Attribute | 'layout';

const OWN_ATTRIBUTES: Readonly<Record<OwnContent, readonly Looked[]>> = {
  'dot-layouts': ['layout'],
  'shapes-and-directions': ['form', 'turn'],
};

/** The attributes that the figures of a key differ in. */
export function lookedAt(content: Content): readonly Looked[] {
  return isOwn(content) ? OWN_ATTRIBUTES[content] : attributesOf(content);
}

/** Whether the figures are dots that must be seen one by one. */
export function isOfDots(content: Content): boolean {
  return content === 'dot-quantities' || content === 'dot-layouts';
}

/** Whether the figures are letters or numerals, which the marks of colours are too. */
export function isRead(content: Content): boolean {
  return !isOwn(content) && isOfCharacters(content);
}

/** Responses to figures without a colour of their own, the easiest for the hand first. */
const ANY_RESPONSE: readonly ResponseKind[] = ['sticker', 'colour-in', 'ring', 'sign', 'fill'];
/** A figure that has a colour to be looked at gets no second one. */
const WITHOUT_COLOUR: readonly ResponseKind[] = ['sign', 'fill'];
/** A sign is read and not drawn over with another. */
const WITHOUT_DRAWING: readonly ResponseKind[] = ['sticker', 'colour-in', 'ring'];

/** The nearest to each other first: a refusal offers the first. */
export function responsesTo(content: Content): readonly ResponseKind[] {
  if (lookedAt(content).includes('colour') || content === 'pictures') return WITHOUT_COLOUR;
  if (content === 'signs') return WITHOUT_DRAWING;
  return content === 'textures' ? ANY_RESPONSE.filter((each) => each !== 'fill') : ANY_RESPONSE;
}

/** What may change and say nothing, whatever the response. */
export function variesOf(content: Content): readonly Vary[] {
  const looked = lookedAt(content);
  if (content === 'textures') return ['none'];
  const isColourable = !looked.includes('colour') && content !== 'signs' && content !== 'pictures';
  const isReformable = content === 'directions' || content === 'colours';
  return [
    'none',
    ...(looked.includes('size') ? [] : (['size'] as const)),
    ...(isColourable ? (['colour'] as const) : []),
    ...(isReformable ? (['form'] as const) : []),
    ...(content === 'dot-quantities' ? (['layout'] as const) : []),
  ];
}

/** Fewer could not need all attributes: one of them could be left out of sight. */
export function fewestEntries(content: Content): number {
  return lookedAt(content).length + 1;
}

/** Layouts of dots that look clearly different, quantities and sizes that are clear steps. */
const MOST_OF_FEW: Readonly<Partial<Record<Content, number>>> = {
  directions: 4,
  sizes: 3,
  'dot-quantities': 5,
  'dot-layouts': 4,
};

export function mostEntries(content: Content): number {
  return MOST_OF_FEW[content] ?? Math.min(MOST_ENTRIES, mostAlone(content));
}

/** A small pool, such as numerals that children mix up, may hold fewer forms than a key has room for. */
function mostAlone(content: Content): number {
  if (isOwn(content)) return MOST_ENTRIES;
  const isOfForms = attributesOf(content).join() === 'form';
  return isOfForms ? mostValues(content, 'form', { print: 'colour' }) : MOST_ENTRIES;
}

/** Black is the ink of the page and grey the pencil's: as responses they would look printed or unfinished. */
export const RESPONSE_COLOURS: readonly ColourName[] = FIGURE_COLOURS.filter(
  (name) => name !== 'black' && name !== 'grey',
);
/** Colours that say nothing, none of them the ink that the key is printed in. */
export const IDLE_COLOURS: readonly ColourName[] = FIGURE_COLOURS.filter(
  (name) => name !== 'black',
);

export const MOST_VARIANTS = 3;

/** How many looks an item may take on that say nothing. */
export function variantsOf({ items, entries }: Pick<Parameters, 'items' | 'entries'>): number {
  return Math.min(MOST_VARIANTS, Math.max(2, Math.floor(items / entries)));
}

/** Values of an attribute in a key of several: a third size would make the smallest figures too small. */
export function mostOf(attribute: Looked, leftRight: boolean, style: PrintStyle): number {
  if (attribute === 'size') return 2;
  if (attribute === 'turn') return leftRight ? 4 : MOST_UNMIRRORED_DIRECTIONS;
  return attribute === 'colour'
    ? Math.min(MOST_ENTRIES, mostFairColours('colour', coloursOf(style)))
    : MOST_ENTRIES;
}

/** Textures that a child can draw and that no two share: waves or zigzag, stripes three ways, spots. */
export const MOST_TEXTURES = 5;

/** Where the response goes: into the outline, round the figure, or into a space of its own below it. */
export type Stand = 'inside' | 'around' | 'below';

const SHAPE_CONTENTS: readonly Content[] = [
  'shapes',
  'directions',
  'sizes',
  'shapes-and-sizes',
  'shapes-and-directions',
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
  if (content === 'sizes' && entries === 3) return THREE_SIZES[2];
  if (lookedAt(content).includes('size')) return TWO_SIZES[1];
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
