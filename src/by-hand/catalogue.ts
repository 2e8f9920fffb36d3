// The words of guides and half-made sheets, by language.
import type { Language } from '../activities/index.ts';
import type { ByHandWords } from './words.ts';
import { ENGLISH } from './words-en.ts';

const WORDS: Readonly<Record<Language, ByHandWords>> = { en: ENGLISH };

export function byHandWords(language: Language): ByHandWords {
  return WORDS[language];
}
