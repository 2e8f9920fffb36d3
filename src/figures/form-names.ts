// The names of all forms: shapes, signs, letters, numerals, pictures and dot quantities.
import pictureTable from './pictures.generated.json' with { type: 'json' };
import {
  FIRST_SCRIPTS,
  NUMERAL_SCRIPTS,
  type NumeralPool,
  SCRIPTS,
  type ScriptPool,
} from './script-letters.ts';

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
  Object.entries(SCRIPTS).map(([pool, characters]) => [pool, lettersIn(characters)]),
) as unknown as Readonly<Record<ScriptPool, readonly Letter[]>>;

/** The Arabic-Indic nought is a dot, too small to be pointed at among the others. */
const MERE_DOT = '٠';

/** The numerals of the other scripts, by pool. */
export const SCRIPT_NUMERALS = Object.fromEntries(
  Object.entries(NUMERAL_SCRIPTS).map(([pool, characters]) => [
    pool,
    [...characters.replace(MERE_DOT, '')].map((character): Numeral => `numeral-${character}`),
  ]),
) as unknown as Readonly<Record<NumeralPool, readonly Numeral[]>>;

const AFTER_N = ALPHABET.indexOf('n') + 1;

/** The alphabet of Spanish: ñ is a letter after n; ch and ll are none since 2010 (Ortografía, Real Academia Española). */
export const SPANISH_CAPITALS: readonly Letter[] = spanish(CAPITALS, 'capital-Ñ');
export const SPANISH_SMALL_LETTERS: readonly Letter[] = spanish(SMALL_LETTERS, 'small-ñ');

function spanish(letters: readonly Letter[], own: Letter): readonly Letter[] {
  return [...letters.slice(0, AFTER_N), own, ...letters.slice(AFTER_N)];
}

function lettersIn(characters: string): readonly Letter[] {
  return [...characters].map((character): Letter => `letter-${character}`);
}

export const PICTURES: readonly Picture[] = Object.keys(pictureTable.pictures).map(
  (picture): Picture => `picture-${picture}`,
);

/** Forms in the order that sheet codes count them: what came later stands at the end. */
const FIRST_FORMS: readonly FormId[] = [
  ...SHAPES,
  ...SIGNS,
  ...CAPITALS,
  ...SMALL_LETTERS,
  ...NUMERALS,
  ...Object.values(FIRST_SCRIPTS).flatMap(lettersIn),
  ...PICTURES,
  'dots',
];

/** Every form there is, in a fixed order. */
export const FORMS: readonly FormId[] = [
  ...new Set([
    ...FIRST_FORMS,
    ...SPANISH_CAPITALS,
    ...SPANISH_SMALL_LETTERS,
    ...Object.values(SCRIPT_LETTERS).flat(),
    ...Object.values(SCRIPT_NUMERALS).flat(),
  ]),
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
