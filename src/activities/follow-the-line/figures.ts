// Which figures stand at the starts and at the ends, for each content.
import {
  type Attribute,
  attributesOf,
  type ContentId,
  type FormId,
  formsOf,
  isLetter,
  isPicture,
  mostValues,
  picturesOf,
} from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';

/** Of sizes alone: more would leave the smallest too small to see. */
const MOST_SIZES = 4;
/** Values of what changes besides, where something else tells the starts apart. */
const SIZES_BESIDES = 2;
const TURNS_BESIDES = 3;

/** How many values of each attribute the starts of so many lines take. */
export function valuesNeeded(
  content: ContentId,
  lines: number,
): Readonly<Partial<Record<Attribute, number>>> {
  const attributes = attributesOf(content);
  const isAlone = attributes.length === 1;
  return Object.fromEntries(
    attributes.map((attribute) => {
      if (attribute === 'size' && !isAlone) return [attribute, Math.min(lines, SIZES_BESIDES)];
      if (attribute === 'turn' && !isAlone) return [attribute, Math.min(lines, TURNS_BESIDES)];
      return [attribute, lines];
    }),
  );
}

/** The most lines whose starts can all be told apart. */
export function mostStarts(content: ContentId, style: PrintStyle): number {
  const attributes = attributesOf(content);
  if (content === 'sizes') return MOST_SIZES;
  const telling = attributes.filter(
    (attribute) => attributes.length === 1 || (attribute !== 'size' && attribute !== 'turn'),
  );
  return Math.min(...telling.map((attribute) => mostValues(content, attribute, style)));
}

/** Told from any letter, which is round, crossed, peaked or square where it is like a shape at all. */
const SHAPES_FOR_LETTERS: readonly FormId[] = [
  'heart',
  'star',
  'arrow',
  'drop',
  'leaf',
  'hexagon',
  'diamond',
];
/** Told from any picture, of which one is a leaf and some are round. */
const SHAPES_FOR_PICTURES: readonly FormId[] = [
  'heart',
  'star',
  'arrow',
  'drop',
  'cross',
  'hexagon',
  'diamond',
];
/** Told from a dot of colour: not round, and no hexagon, which is nearly so. */
const SHAPES_FOR_DOTS: readonly FormId[] = [
  ...SHAPES_FOR_LETTERS.filter((shape) => shape !== 'hexagon'),
  'square',
  'triangle',
  'crescent',
  'cross',
  'half-circle',
];
/** Told from any shape: neither round nor crossed nor peaked. */
const LETTERS_FOR_SHAPES: readonly FormId[] = [...'BEFGHKMNPRSWYZ'].map(
  (letter): FormId => `capital-${letter}`,
);
/** Told from shapes, signs, numerals and dots: most other things are round or pointed. */
const ANIMALS: readonly FormId[] = picturesOf('animals').filter(
  (picture) => picture !== 'picture-ladybird' && picture !== 'picture-turtle',
);

/**
 * What the lines lead to where the child tells it: nothing that goes with a start by its look or its name, such
 * as a colour with a coloured picture, a letter with a picture that begins with it, dots with their numeral.
 */
export function endForms(content: ContentId): readonly FormId[] {
  const attributes = attributesOf(content);
  const [first] = formsOf(content);
  if (content === 'colours' || content === 'colours-and-sizes') return SHAPES_FOR_DOTS;
  if (attributes.includes('colour')) return LETTERS_FOR_SHAPES;
  if (first && isLetter(first)) return SHAPES_FOR_LETTERS;
  return first && isPicture(first) ? SHAPES_FOR_PICTURES : ANIMALS;
}
