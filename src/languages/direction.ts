// Which way a language is written.

export type Direction = 'ltr' | 'rtl';

/** Scripts that are written from right to left (Unicode), of languages in use today. */
const RIGHT_TO_LEFT = ['Adlm', 'Arab', 'Hebr', 'Nkoo', 'Rohg', 'Syrc', 'Thaa'];

/** Which way paragraphs in a language run; `language` is a BCP 47 tag. */
export function directionOf(language: string): Direction {
  const { script = '' } = new Intl.Locale(language).maximize();
  return RIGHT_TO_LEFT.includes(script) ? 'rtl' : 'ltr';
}
