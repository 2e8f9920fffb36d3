// The one place that says in which language the core is asked to speak and print.
import type { Language } from '../../languages/index.ts';

/** English until all that the core says is messages; from then on the present language, `languageNow()`. */
export function coreLanguage(): Language {
  return 'en';
}
