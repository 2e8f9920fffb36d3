// The words of the command line, by language.
import type { Language } from '../activities/index.ts';
import { ENGLISH } from './shell-en.ts';
import type { ShellWords } from './shell-words.ts';

const WORDS: Readonly<Record<Language, ShellWords>> = { en: ENGLISH };

export function shellWords(language: Language): ShellWords {
  return WORDS[language];
}
