// Saying a message in a language: ICU MessageFormat (Unicode), with the plural rules of CLDR.
import { IntlMessageFormat } from 'intl-messageformat';
import { catalogueOf } from './catalogues.ts';
import { LANGUAGES, type Language } from './language.ts';

/** English messages by key, the pattern of all others: `steps.1`, `say.which`. */
export type Messages = Readonly<Record<string, string>>;

/** A message as it is written or, as the built app has it where there are places to fill, once it is parsed. */
type Message = ConstructorParameters<typeof IntlMessageFormat>[0];

/** Whether there are places to be filled in a message. */
export function hasPlaces(
  message: Message,
): message is Exclude<Message, string> | `${string}{${string}` {
  return typeof message !== 'string' || message.includes('{');
}

/** What stands in a message's places; numbers choose its plural forms. */
export type Values = Readonly<Record<string, string | number>>;

/** What stands behind `P` and a dot in the keys of messages: of `note.calm` and `note.tired`, `calm` and `tired`. */
export type KeyUnder<M extends Messages, P extends string> = keyof M extends infer K
  ? K extends `${P}.${infer Name}`
    ? Name
    : never
  : never;

/** The message of a key with its places filled. */
export interface Say<M extends Messages = Messages> {
  (key: keyof M & string, values?: Values): string;
  /** All messages of `prefix.1`, `prefix.2` and so on, in order. */
  readonly all: (prefix: string) => readonly string[];
  readonly has: (key: string) => boolean;
}

/** Digits are the same everywhere, whatever a platform holds usual for a language. */
const LATIN_DIGITS = '-u-nu-latn';

/**
 * What says the messages of `space` in a language. A message that the language's catalogue lacks is said in
 * English; a test keeps catalogues whole.
 */
export function sayIn<const M extends Messages>(
  language: Language,
  space: string,
  english: M,
): Say<M> {
  const own: Messages = catalogueOf(language)[space] ?? {};
  const known = new Map<string, IntlMessageFormat>();
  const formatOf = (key: string, message: Message, locale: Language) => {
    const before = known.get(key);
    if (before) return before;
    const format = new IntlMessageFormat(message, `${locale}${LATIN_DIGITS}`);
    known.set(key, format);
    return format;
  };
  const say = (key: keyof M & string, values: Values = {}): string => {
    const message: Message | undefined = own[key] ?? english[key];
    if (message === undefined) throw new Error(`${space}: no message ${key}`);
    if (!hasPlaces(message)) return message;
    const locale = own[key] === undefined ? 'en' : language;
    return String(formatOf(key, message, locale).format({ ...values }));
  };
  const has = (key: string) => Object.hasOwn(english, key);
  const all = (prefix: string) => {
    const messages: string[] = [];
    for (let number = 1; has(`${prefix}.${number}`); number++) {
      messages.push(say(`${prefix}.${number}`));
    }
    return messages;
  };
  return Object.assign(say, { all, has });
}

/** One of each language, made when it is first asked for. */
export function inEachLanguage<T>(make: (language: Language) => T): Readonly<Record<Language, T>> {
  const made = new Map<Language, T>();
  const all = {};
  for (const language of LANGUAGES) {
    Object.defineProperty(all, language, {
      enumerable: true,
      get: () => {
        const before = made.get(language);
        if (before !== undefined) return before;
        const now = make(language);
        made.set(language, now);
        return now;
      },
    });
  }
  return all as Readonly<Record<Language, T>>;
}
