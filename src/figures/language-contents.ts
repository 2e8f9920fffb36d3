// Which contents of letters and numerals belong to a language: these are offered first where it is spoken.
import { CONTENT_IDS, type ContentId } from './contents.ts';

/** By the first part of a BCP 47 tag; a language that is not listed has the Latin ones. */
const OWN: Readonly<Record<string, readonly ContentId[]>> = {
  es: ['spanish-capitals', 'spanish-small', 'numerals'],
  hi: ['devanagari-varnamala', 'devanagari-letters', 'devanagari-numerals', 'numerals'],
  ar: ['arabic-letters', 'arabic-letters-with-hamza', 'arabic-indic-numerals', 'numerals'],
};

const LATIN: readonly ContentId[] = ['capitals', 'small-letters', 'numerals'];

/** The contents of letters and numerals of a language, the one that is taught first before the others. */
export function contentsOfLanguage(tag: string): readonly ContentId[] {
  return OWN[tag.split('-')[0] ?? tag] ?? LATIN;
}

/** The contents with those of letters and numerals of the language before all others of letters and numerals. */
export function offeredIn<T extends string>(tag: string, contents: readonly T[]): readonly T[] {
  const own = contentsOfLanguage(tag).flatMap((id) => contents.filter((each) => each === id));
  const written = contents.filter(isWritten);
  const queue = [...own, ...written.filter((each) => !own.includes(each))];
  return contents.map((each) => (isWritten(each) ? (queue.shift() ?? each) : each));
}

/** Letters and numerals of every script. */
function isWritten(content: string): boolean {
  return (
    CONTENT_IDS.some((id) => id === content) &&
    /(capitals|small|small-letters|letters|varnamala|letters-with-hamza|numerals)$/.test(content)
  );
}
