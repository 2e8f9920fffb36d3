// What a task can be about: each content with the attributes it looks at and the forms it draws from.
import { type ColourStock, coloursOf, mostFairColours } from '../palette/index.ts';
import { MOST_DOTS } from './dots.ts';
import { type Figure, TEXTURES, type Texture } from './figure.ts';
import {
  CAPITALS,
  type FormId,
  isLetter,
  isNumeral,
  NUMERALS,
  PICTURES,
  SCRIPT_LETTERS,
  SCRIPT_NUMERALS,
  SHAPES,
  SIGNS,
  SMALL_LETTERS,
  SPANISH_CAPITALS,
  SPANISH_SMALL_LETTERS,
} from './form-names.ts';
import { mostForms } from './likeness.ts';
import { picturesInForce, picturesKey } from './own-forms.ts';
import { TURNABLE } from './pools.ts';

/** What can differ from figure to figure while all else stays. */
export const ATTRIBUTES = ['colour', 'form', 'size', 'turn', 'count', 'fill'] as const;
export type Attribute = (typeof ATTRIBUTES)[number];

/** Contents that came after the first sheet codes were printed; codes of the first versions do not count them. */
export const LATER_CONTENT_IDS = [
  'spanish-capitals',
  'spanish-small',
  'devanagari-varnamala',
  'devanagari-numerals',
  'arabic-letters-with-hamza',
  'arabic-indic-numerals',
] as const;

/** Contents of letters and numerals of other scripts, and of Spanish, in the order in which codes count them. */
export const SCRIPT_CONTENT_IDS = [
  'cyrillic-capitals',
  'cyrillic-small',
  'greek-capitals',
  'greek-small',
  'devanagari-letters',
  'arabic-letters',
  ...LATER_CONTENT_IDS,
] as const;

export const CONTENT_IDS = [
  'colours',
  'shapes',
  'sizes',
  'directions',
  'capitals',
  'small-letters',
  'numerals',
  'signs',
  'dot-quantities',
  'textures',
  'pictures',
  'shapes-and-colours',
  'shapes-and-sizes',
  'colours-and-sizes',
  'directions-and-colours',
  'shapes-colours-and-sizes',
  ...SCRIPT_CONTENT_IDS,
] as const;
export type ContentId = (typeof CONTENT_IDS)[number];

/** One content: what differs, and the forms that its figures take. */
interface Content {
  readonly attributes: readonly Attribute[];
  /** Where the form differs, the forms to draw from; elsewhere one of these is shared by all figures. */
  readonly forms: readonly FormId[];
}

/** Shapes with much room inside, on which a texture shows well: squarish or round, no thin parts. */
const ROOMY: readonly FormId[] = ['circle', 'square', 'hexagon', 'oval', 'oblong', 'heart'];

const CONTENTS: Readonly<Record<ContentId, Content>> = {
  colours: { attributes: ['colour'], forms: ['circle'] },
  shapes: { attributes: ['form'], forms: SHAPES },
  sizes: { attributes: ['size'], forms: SHAPES },
  directions: { attributes: ['turn'], forms: TURNABLE },
  capitals: { attributes: ['form'], forms: CAPITALS },
  'small-letters': { attributes: ['form'], forms: SMALL_LETTERS },
  numerals: { attributes: ['form'], forms: NUMERALS },
  signs: { attributes: ['form'], forms: SIGNS },
  'dot-quantities': { attributes: ['count'], forms: ['dots'] },
  textures: { attributes: ['fill'], forms: ROOMY },
  pictures: { attributes: ['form'], forms: PICTURES },
  'shapes-and-colours': { attributes: ['form', 'colour'], forms: SHAPES },
  'shapes-and-sizes': { attributes: ['form', 'size'], forms: SHAPES },
  'colours-and-sizes': { attributes: ['colour', 'size'], forms: ['circle'] },
  'directions-and-colours': { attributes: ['turn', 'colour'], forms: TURNABLE },
  'shapes-colours-and-sizes': { attributes: ['form', 'colour', 'size'], forms: SHAPES },
  'cyrillic-capitals': { attributes: ['form'], forms: SCRIPT_LETTERS['cyrillic-capitals'] },
  'cyrillic-small': { attributes: ['form'], forms: SCRIPT_LETTERS['cyrillic-small'] },
  'greek-capitals': { attributes: ['form'], forms: SCRIPT_LETTERS['greek-capitals'] },
  'greek-small': { attributes: ['form'], forms: SCRIPT_LETTERS['greek-small'] },
  'devanagari-letters': { attributes: ['form'], forms: SCRIPT_LETTERS['devanagari-letters'] },
  'arabic-letters': { attributes: ['form'], forms: SCRIPT_LETTERS['arabic-letters'] },
  'spanish-capitals': { attributes: ['form'], forms: SPANISH_CAPITALS },
  'spanish-small': { attributes: ['form'], forms: SPANISH_SMALL_LETTERS },
  'devanagari-varnamala': { attributes: ['form'], forms: SCRIPT_LETTERS['devanagari-varnamala'] },
  'devanagari-numerals': { attributes: ['form'], forms: SCRIPT_NUMERALS['devanagari-numerals'] },
  'arabic-letters-with-hamza': {
    attributes: ['form'],
    forms: SCRIPT_LETTERS['arabic-letters-with-hamza'],
  },
  'arabic-indic-numerals': {
    attributes: ['form'],
    forms: SCRIPT_NUMERALS['arabic-indic-numerals'],
  },
};

/** One, two or three attributes, the one that the content is named after first. */
export function attributesOf(content: ContentId): readonly Attribute[] {
  return CONTENTS[content].attributes;
}

/**
 * The forms that the figures of a content take: all it draws from, or those of which all share one. Of pictures, those
 * that are always there and those of `withPictures`.
 */
export function formsOf(content: ContentId): readonly FormId[] {
  return content === 'pictures' ? picturesInForce(PICTURES) : CONTENTS[content].forms;
}

/** Whether the figures of a content are letters or numerals, which are read. */
export function isOfCharacters(content: ContentId): boolean {
  return CONTENTS[content].forms.every((form) => isLetter(form) || isNumeral(form));
}

/** Tells the forms of a content, and all that is measured of them, from any others. */
export function formsKey(content: string): string {
  return content === 'pictures' ? content + picturesKey() : content;
}

/** How many sizes one form is printed in at most, the next always `SIZE_RATIO_FLOOR` or more bigger. */
export const MOST_SIZES = 5;

/** How many directions: up, down, left and right. */
export const MOST_DIRECTIONS = 4;

/** How many directions without a left-right mirror image among them: up, down and one side. */
export const MOST_UNMIRRORED_DIRECTIONS = 3;

/** Textures that look alike from afar, of which a task holds one: both run up and down from side to side. */
export const TEXTURES_MIXED_UP: readonly Texture[] = ['zigzag', 'waves'];

/**
 * How many values of an attribute a task of the content can hold, every two fairly different; 0 where the
 * content does not look at the attribute. In grey print each colour carries its mark, which tells it apart.
 */
export function mostValues(content: ContentId, attribute: Attribute, stock: ColourStock): number {
  if (!attributesOf(content).includes(attribute)) return 0;
  switch (attribute) {
    case 'colour':
      return mostFairColours('colour', coloursOf(stock));
    case 'form':
      return mostFormsOf(content);
    case 'size':
      return MOST_SIZES;
    case 'turn':
      return MOST_DIRECTIONS;
    case 'count':
      return MOST_DOTS;
    case 'fill':
      return TEXTURES.length - TEXTURES_MIXED_UP.length + 1;
  }
}

const mostKnown = new Map<string, number>();

function mostFormsOf(content: ContentId): number {
  const key = formsKey(content);
  const most = mostKnown.get(key) ?? mostForms(formsOf(content));
  mostKnown.set(key, most);
  return most;
}

/** What figures can be drawn from: the colours of a sheet and, where it is about a name, its letters. */
export interface FigureStock extends ColourStock {
  /** Letters that a content of letters takes before others; absent: all alike. */
  readonly letters?: string;
}

/** Figures that differ in one, two or three attributes and share all else. */
export interface Space {
  /** What all figures share. */
  readonly base: Figure;
  readonly axes: readonly Axis[];
}

/** The looks that one attribute takes, every two fairly different, in random order. */
export interface Axis {
  readonly attribute: Attribute;
  readonly values: readonly Partial<Figure>[];
}

/** The figure with the value numbered `indices[k]` on each axis k; a defect where an axis lacks it. */
export function figureAt({ base, axes }: Space, indices: readonly number[]): Figure {
  const values = axes.map(({ attribute, values }, axis) => {
    const value = values[indices[axis] ?? -1];
    if (value) return value;
    const got = indices[axis] ?? 'none';
    throw new Error(`contents › ${attribute}: expected 0 to ${values.length - 1}, got ${got}`);
  });
  return Object.assign({}, base, ...values);
}
