// What is still to be said, whatever the language: the key of a message and what stands in its places.

/**
 * What stands in a place of a message: a number or a text that is the same in every language, a figure, a content or a
 * colour by its name, or a list: with the language's own last word (`red, blue and green`), or with commas alone. With a content comes its id as well, as `{contentId}` beside `{content}`.
 */
export type ToldValue =
  | string
  | number
  | { readonly figure: object }
  | { readonly content: string }
  | { readonly colour: string }
  | { readonly list: readonly (string | number)[] }
  | { readonly commas: readonly (string | number | Told)[] };

/** A message: the space that says it, its key there, and its places. */
export interface Told {
  readonly space: string;
  readonly key: string;
  readonly values?: Readonly<Record<string, ToldValue>>;
}

export function told(
  space: string,
  key: string,
  values?: Readonly<Record<string, ToldValue>>,
): Told {
  return values === undefined ? { space, key } : { space, key, values };
}

const SAYS = 'says: ';

/** The message as the fault of a schema, which holds text alone: the fault of a value that is not what it tells. */
export function saying(expected: Told): string {
  return SAYS + JSON.stringify(expected);
}

/** The message that a fault of `saying` names. */
export function saidIn(message: string): Told | undefined {
  return message.startsWith(SAYS) ? JSON.parse(message.slice(SAYS.length)) : undefined;
}
