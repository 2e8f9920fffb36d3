// The languages that Samewise speaks.

/** BCP 47 tags. A language is added here and with its catalogue in `catalogues.ts`. */
export const LANGUAGES = ['en', 'es', 'hi', 'ar'] as const;
export type Language = (typeof LANGUAGES)[number];

export function isLanguage(tag: unknown): tag is Language {
  return LANGUAGES.some((language) => language === tag);
}
