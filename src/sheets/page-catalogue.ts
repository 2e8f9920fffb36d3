// The words of the pages that go round the tasks, by language.
import type { Language } from '../activities/index.ts';
import type { PageWords } from './page-words.ts';
import { ENGLISH } from './page-words-en.ts';

const WORDS: Readonly<Record<Language, PageWords>> = { en: ENGLISH };

export function pageWords(language: Language): PageWords {
  return WORDS[language];
}
