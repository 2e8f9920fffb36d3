// The names of all forms: shapes, signs, letters, numerals and dot quantities.

export const SHAPES = [
  'circle',
  'oval',
  'square',
  'oblong',
  'triangle',
  'diamond',
  'heart',
  'star',
  'crescent',
  'cross',
  'arrow',
  'drop',
  'half-circle',
  'pentagon',
  'hexagon',
  'leaf',
] as const;

/** What a child can draw inside a figure. */
export const SIGNS = [
  'sign-dot',
  'sign-upright-line',
  'sign-level-line',
  'sign-ring',
  'sign-plus',
  'sign-oblique-cross',
  'sign-wave',
  'sign-tick',
  'sign-square',
  'sign-triangle',
] as const;

const ALPHABET = [...'abcdefghijklmnopqrstuvwxyz'] as const;

export type Shape = (typeof SHAPES)[number];
export type Sign = (typeof SIGNS)[number];
export type Letter = `capital-${string}` | `small-${string}`;
export type Numeral = `numeral-${string}`;
export type FormId = Shape | Sign | Letter | Numeral | 'dots';

export const CAPITALS: readonly Letter[] = ALPHABET.map(
  (letter): Letter => `capital-${letter.toUpperCase()}`,
);
export const SMALL_LETTERS: readonly Letter[] = ALPHABET.map((letter): Letter => `small-${letter}`);
export const NUMERALS: readonly Numeral[] = [...'0123456789'].map(
  (numeral): Numeral => `numeral-${numeral}`,
);

/** Every form there is, in a fixed order. */
export const FORMS: readonly FormId[] = [
  ...SHAPES,
  ...SIGNS,
  ...CAPITALS,
  ...SMALL_LETTERS,
  ...NUMERALS,
  'dots',
];

export function isShape(form: FormId): form is Shape {
  return (SHAPES as readonly string[]).includes(form);
}

export function isSign(form: FormId): form is Sign {
  return (SIGNS as readonly string[]).includes(form);
}

export function isLetter(form: FormId): form is Letter {
  return form.startsWith('capital-') || form.startsWith('small-');
}

export function isNumeral(form: FormId): form is Numeral {
  return form.startsWith('numeral-');
}
