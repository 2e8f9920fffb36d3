// Words of a part of the app, said in the language of the moment.
import {
  hasPlaces,
  inEachLanguage,
  type Language,
  type Messages,
  type Say,
  sayIn,
} from '../../languages/index.ts';
import { languageNow } from './language-now.ts';

/** Messages of a name without dots and without places to fill, by that name. */
export type Plain<M> = {
  readonly [K in keyof M & string as K extends `${string}.${string}`
    ? never
    : M[K] extends `${string}{${string}`
      ? never
      : K]: string;
};

/** Messages of `prefix.NAME` without places to fill, by that name. */
export type Under<M, P extends string> = {
  readonly [K in keyof M & string as K extends `${P}.${infer Name}`
    ? Name extends `${string}.${string}`
      ? never
      : M[K] extends `${string}{${string}`
        ? never
        : Name
    : never]: string;
};

export interface Telling<M extends Messages> {
  readonly say: Say<M>;
  readonly plain: Plain<M>;
  readonly under: <const P extends string>(prefix: P) => Under<M, P>;
  readonly language: Language;
}

/**
 * What `build` makes of the messages of `space`, always in the present language: each of its members is looked up anew
 * whenever it is read. So read them while drawing, and keep no copies.
 */
export function spoken<const M extends Messages, W extends object>(
  space: string,
  messages: M,
  build: (telling: Telling<M>) => W,
): W {
  const built = inEachLanguage((language) => build(tellingIn(language, space, messages)));
  return new Proxy({} as W, {
    get: (_, name) => Reflect.get(built[languageNow()], name),
    has: (_, name) => Reflect.has(built[languageNow()], name),
    ownKeys: () => Reflect.ownKeys(built[languageNow()]),
    getOwnPropertyDescriptor: (_, name) =>
      Reflect.getOwnPropertyDescriptor(built[languageNow()], name),
  });
}

function tellingIn<M extends Messages>(language: Language, space: string, messages: M): Telling<M> {
  const say: Say<M> = sayIn<M>(language, space, messages);
  const plainNames = Object.entries(messages).flatMap(([key, message]) =>
    hasPlaces(message) ? [] : [key],
  );
  const under = (prefix: string) => {
    const names = plainNames.flatMap((key) =>
      key.startsWith(prefix) && !key.includes('.', prefix.length) ? [key.slice(prefix.length)] : [],
    );
    return Object.fromEntries(names.map((name) => [name, say(`${prefix}${name}`)]));
  };
  return {
    say,
    language,
    plain: under('') as Plain<M>,
    under: <const P extends string>(prefix: P) => under(`${prefix}.`) as Under<M, P>,
  };
}
