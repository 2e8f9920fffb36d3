// The language of a worker, which says what the screen is told and sets what is printed.
import type { Language } from '../../languages/index.ts';
import { speakIn } from '../speaking/language-now.ts';
import { loadScriptsOfLanguage } from './script-fonts.ts';

/**
 * Fetches the words of the language and the letters that set them. Where either cannot be fetched the language before
 * goes on, since an answer in that is better than none.
 */
export async function printIn(language: Language): Promise<void> {
  try {
    // Letters first: no page is to be set in words whose letters are not there.
    await loadScriptsOfLanguage(language);
    await speakIn(language);
  } catch {
    return;
  }
}
