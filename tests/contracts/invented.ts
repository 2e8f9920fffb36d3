// A language for contracts, in place of all but English: every message of the core in letters that no English word has. Stands in
// for the modules of `src/languages` that name the languages and hold their catalogues.
import type { Language } from '../../src/languages/index.ts';
import { inOtherLetters } from '../other-letters.ts';

/** A tag with the plural forms of English, so that its messages can be made from the English ones. */
const OTHER = 'de';

export const LANGUAGES = ['en', OTHER];

/** As the types of the program know it. */
export const INVENTED = OTHER as Language;

export function isLanguage(tag: unknown): boolean {
  return tag === 'en' || tag === OTHER;
}

const CATALOGUES: Readonly<Record<string, unknown>> = { [OTHER]: inOtherLetters() };

export function catalogueOf(language: string): unknown {
  return CATALOGUES[language] ?? {};
}
