// The language of what is printed; the command line itself speaks English alone.
import { LANGUAGES, type Language, loadCatalogue } from '../languages/index.ts';
import { choiceOf } from './option-values.ts';
import { loadScriptsFor } from './script-fonts.ts';

/** As it is typed. */
export interface LanguageOption {
  readonly language?: string;
}

/** English where nothing was asked for; refuses a language that there is not. */
export function languageOf({ language = 'en' }: LanguageOption): Language {
  return choiceOf(language, '--language', LANGUAGES);
}

/** Makes ready the words of the language, and the letters of these and of further `words` that are printed. */
export async function readyFor(language: Language, words = ''): Promise<void> {
  await Promise.all([loadCatalogue(language), loadScriptsFor(language, words)]);
}
