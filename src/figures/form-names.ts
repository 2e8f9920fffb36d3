// The names of all forms: shapes, signs, letters, numerals, pictures and dot quantities.
import pictureTable from './pictures.generated.json' with { type: 'json' };
import { SCRIPTS, type ScriptPool } from './script-letters.ts';

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
/** A Latin letter, or with `letter-` one of another script. */
export type Letter = `capital-${string}` | `small-${string}` | `letter-${string}`;
export type Numeral = `numeral-${string}`;
export type Picture = `picture-${string}`;
export type FormId = Shape | Sign | Letter | Numeral | Picture | 'dots';

export const CAPITALS: readonly Letter[] = ALPHABET.map(
  (letter): Letter => `capital-${letter.toUpperCase()}`,
);
export const SMALL_LETTERS: readonly Letter[] = ALPHABET.map((letter): Letter => `small-${letter}`);
export const NUMERALS: readonly Numeral[] = [...'0123456789'].map(
  (numeral): Numeral => `numeral-${numeral}`,
);

/** The letters of the other scripts, by pool. */
export const SCRIPT_LETTERS = Object.fromEntries(
  Object.entries(SCRIPTS).map(([pool, characters]) => [
    pool,
    [...characters].map((character): Letter => `letter-${character}`),
  ]),
) as unknown as Readonly<Record<ScriptPool, readonly Letter[]>>;

export const PICTURES: readonly Picture[] = Object.keys(pictureTable.pictures).map(
  (picture): Picture => `picture-${picture}`,
);

/** Every form there is, in a fixed order. */
export const FORMS: readonly FormId[] = [
  ...SHAPES,
  ...SIGNS,
  ...CAPITALS,
  ...SMALL_LETTERS,
  ...NUMERALS,
  ...Object.values(SCRIPT_LETTERS).flat(),
  ...PICTURES,
  'dots',
];

export function isShape(form: FormId): form is Shape {
  return (SHAPES as readonly string[]).includes(form);
}

export function isSign(form: FormId): form is Sign {
  return (SIGNS as readonly string[]).includes(form);
}

export function isLetter(form: FormId): form is Letter {
  return ['capital-', 'small-', 'letter-'].some((start) => form.startsWith(start));
}

export function isNumeral(form: FormId): form is Numeral {
  return form.startsWith('numeral-');
}

export function isPicture(form: FormId): form is Picture {
  return form.startsWith('picture-');
}
