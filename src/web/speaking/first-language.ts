// The language that the app begins with.
import { isLanguage, LANGUAGES, type Language } from '../../languages/index.ts';
import { recall } from '../children/remembered.ts';

/** The one that was chosen here, else the first that the browser's settings ask for and the app speaks, else English. */
export function firstLanguage(): Language {
  const chosen = recall('language');
  return isLanguage(chosen) ? chosen : nearestLanguage(navigator.languages, LANGUAGES);
}

/** `pt` serves who asks for `pt-BR`, and the other way round. */
export function nearestLanguage<L extends string>(
  wanted: readonly string[],
  spoken: readonly L[],
): L | 'en' {
  for (const tag of wanted) {
    const near = spoken.find((each) => each === tag) ?? spoken.find((each) => isSame(each, tag));
    if (near !== undefined) return near;
  }
  return 'en';
}

function isSame(one: string, other: string): boolean {
  return one.split('-')[0]?.toLowerCase() === other.split('-')[0]?.toLowerCase();
}
