// The messages of each language but English, whose messages stand beside what says them.
import type { Language } from './language.ts';

/** Messages by the name of what says them, then by key, in ICU MessageFormat. */
export type Catalogue = Readonly<Record<string, Readonly<Record<string, string>>>>;

export const CATALOGUES: Readonly<Record<Exclude<Language, 'en'>, Catalogue>> = {};
