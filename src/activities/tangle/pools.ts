// The outlines that each content draws from: any of them can stand beside any other without being found in it.
import {
  type FormId,
  formsKey,
  formsOf,
  isLetter,
  isNumeral,
  isOwnPicture,
  TURNABLE,
} from '../../figures/index.ts';
import { withOwn } from './generate-own.ts';
import type { TangleContent } from './task.ts';

const SHAPES: readonly FormId[] = [
  'diamond',
  'heart',
  'star',
  'oblong',
  'pentagon',
  'oval',
  'crescent',
  'square',
  'triangle',
  'leaf',
  'arrow',
];

/**
 * Chosen so that no two are look-alikes, no line crosses itself, and no outline has more than about 0.6 of its
 * line along the line of another, wherever it is laid: no numeral of a 3 and an 8, no P of a P and an R.
 */
const POOLS: Readonly<Record<Exclude<TangleContent, 'directions'>, readonly FormId[]>> = {
  shapes: SHAPES,
  'shapes-and-colours': SHAPES,
  pictures: [
    ...'tree car elephant chair cow dog umbrella giraffe tractor shirt plane frog pig carrot ice-cream'.split(
      ' ',
    ),
    ...'key kite rocket banana bee balloon teapot crown rabbit teddy bed train cat maple-leaf'.split(
      ' ',
    ),
    ...'fir-tree sailing-boat clover tulip owl'.split(' '),
  ].map((name): FormId => `picture-${name}`),
  capitals: [...'UISZAPC'].map((letter): FormId => `capital-${letter}`),
  'small-letters': [...'azpmsvj'].map((letter): FormId => `small-${letter}`),
  numerals: [...'04725'].map((numeral): FormId => `numeral-${numeral}`),
  'cyrillic-capitals': [...'ФЗЦЁЯА'].map(letterForm),
  'cyrillic-small': [...'ъшясзд'].map(letterForm),
  'greek-capitals': [...'ΠΞΥΒΑΩΝΚ'].map(letterForm),
  'greek-small': [...'πρξχγωδφ'].map(letterForm),
};

/** Up, down and one side: left and right are not told apart in one task. */
export const TURN_SETS: readonly (readonly number[])[] = [
  [0, 90, 180],
  [0, 180, 270],
];

/** Shapes of which nothing is found in themselves turned. */
export const TURNED: readonly FormId[] = TURNABLE.filter((shape) => shape !== 'triangle');

const withOwnKnown = new Map<string, readonly FormId[]>();

/** Of pictures, those that can lie beside each other, a family's own of `withPictures` among them or alone. */
export function poolOf(content: Exclude<TangleContent, 'directions'>): readonly FormId[] {
  if (content !== 'pictures' || formsKey(content) === content) return POOLS[content];
  const key = formsKey(content);
  const forms = formsOf(content);
  const always = POOLS.pictures.filter((form) => forms.includes(form));
  const pool = withOwnKnown.get(key) ?? withOwn(always, forms.filter(isOwnPicture));
  withOwnKnown.set(key, pool);
  return pool;
}

/**
 * Of letters and numerals no more: their thick lines run alike in so many places that with more of them a further
 * one is nearly always found, unless they are drawn far apart.
 */
const MOST_CHARACTERS = 5;

/** How many outlines a task of the content can show and offer in all. */
export function mostOutlines(content: TangleContent): number {
  if (content === 'directions') return Math.min(...TURN_SETS.map((set) => set.length));
  const forms = poolOf(content);
  const areCharacters = forms.every((form) => isLetter(form) || isNumeral(form));
  return areCharacters ? Math.min(forms.length, MOST_CHARACTERS) : forms.length;
}

function letterForm(character: string): FormId {
  return `letter-${character}`;
}
