// The messages of each language but English, whose messages stand beside what says them. A catalogue is fetched when its
// language is first spoken, so that nobody carries the words of languages that are not read.
import { LANGUAGES, type Language } from './language.ts';

/** Messages by the name of what says them, then by key, in ICU MessageFormat. */
export type Catalogue = Readonly<Record<string, Readonly<Record<string, string>>>>;

type Fetched = () => Promise<{ readonly default: Catalogue }>;

/** How each catalogue is fetched. */
const CATALOGUES: Readonly<Record<Exclude<Language, 'en'>, Fetched>> = {
  es: () => import('./es.json'),
  hi: () => import('./hi.json'),
  ar: () => import('./ar.json'),
};

const registered = new Map<Language, Catalogue>([['en', {}]]);

/** From now on the language is spoken from this catalogue; what was already asked for in it stays as it was said. */
export function registerCatalogue(language: Language, catalogue: Catalogue): void {
  registered.set(language, catalogue);
}

/** Fetches the catalogue of a language unless it is there. Await it before anything is said in that language. */
export async function loadCatalogue(language: Language): Promise<void> {
  if (registered.has(language)) return;
  const fetched: Readonly<Record<string, Fetched>> = CATALOGUES;
  const fetch = fetched[language];
  if (fetch === undefined) throw new Error(`${language}: expected a way to fetch its catalogue`);
  registerCatalogue(language, (await fetch()).default);
}

/** Those whose catalogues are there: what was said in another language, and when, is not known here. */
export function loadedLanguages(): readonly Language[] {
  return LANGUAGES.filter((language) => registered.has(language));
}

/** For programs that may speak any language at any time. */
export async function loadAllCatalogues(): Promise<void> {
  await Promise.all(LANGUAGES.map(loadCatalogue));
}

/** Throws where the catalogue was not loaded, since all it says would be English for as long as the program runs. */
export function catalogueOf(language: Language): Catalogue {
  const catalogue = registered.get(language);
  if (catalogue === undefined) throw new Error(`${language}: its catalogue is not loaded`);
  return catalogue;
}
