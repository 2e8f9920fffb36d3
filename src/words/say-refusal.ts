// What says the messages of refusals, and the lists in them.
import { inEachLanguage, type Language, type Say, sayIn } from '../languages/index.ts';
import { MESSAGES } from './messages-en.ts';

export type SayRefusal = Say<typeof MESSAGES>;

export const SAYS: Readonly<Record<Language, SayRefusal>> = inEachLanguage((language) =>
  sayIn(language, 'refusals', MESSAGES),
);

/** Such as `seed, parts`. */
export function inCommas(say: SayRefusal, texts: readonly string[]): string {
  const [first = '', ...others] = texts;
  return others.reduce((before, next) => say('choices.next', { before, next }), first);
}
