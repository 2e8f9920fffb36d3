// The letters of scripts other than Latin: which there are, by pool, and their outlines.
import type { Path } from '../base/index.ts';
import { pathFromText } from './path-text.ts';
import table from './script-letters.generated.json' with { type: 'json' };

/** Pools that were there when the first sheet codes were printed. */
export type FirstPool = keyof typeof table.pools;
export type NumeralPool = 'devanagari-numerals' | 'arabic-indic-numerals';
export type ScriptPool = FirstPool | Exclude<keyof typeof table.later, NumeralPool>;

export const FIRST_SCRIPTS: Readonly<Record<FirstPool, string>> = table.pools;

const { 'devanagari-numerals': devanagari, 'arabic-indic-numerals': arabicIndic } = table.later;

/** The characters of each pool of letters, in the order of their alphabet. */
export const SCRIPTS: Readonly<Record<ScriptPool, string>> = {
  ...table.pools,
  'devanagari-varnamala': table.later['devanagari-varnamala'],
  'arabic-letters-with-hamza': table.later['arabic-letters-with-hamza'],
};

/** The numerals 0 to 9 of other scripts. */
export const NUMERAL_SCRIPTS: Readonly<Record<NumeralPool, string>> = {
  'devanagari-numerals': devanagari,
  'arabic-indic-numerals': arabicIndic,
};

const LETTERS: Readonly<Record<string, string>> = table.letters;

/**
 * The outline of a letter that stands alone, in a cell of side 1 about (0, 0), one scale for each script;
 * fill it with the rule `nonzero`. None where no pool holds the character.
 */
export function scriptOutline(character: string): Path | undefined {
  const outline = Object.hasOwn(LETTERS, character) ? LETTERS[character] : undefined;
  return outline === undefined ? undefined : pathFromText(outline, table.units, table.units);
}
