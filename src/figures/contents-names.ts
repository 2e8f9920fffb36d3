// What a content is called in plain words.
import type { ContentId } from './contents.ts';
import { CONTENT_WORDS_EN } from './contents-words-en.ts';
import type { FigureLanguage } from './names.ts';

const WORDS = { en: CONTENT_WORDS_EN } as const satisfies Readonly<
  Record<FigureLanguage, Readonly<Record<ContentId, string>>>
>;

/** Such as "colours", "capital letters", "shapes in colours". */
export function contentName(content: ContentId, language: FigureLanguage = 'en'): string {
  return WORDS[language][content];
}
