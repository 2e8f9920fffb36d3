// The language of the app as the screen sees it, and changing it while something may be half typed.
import { useLayoutEffect, useSyncExternalStore } from 'react';
import { directionOf, type Language, loadCatalogue } from '../../languages/index.ts';
import { remember } from '../children/remembered.ts';
import { nothingHolds } from '../offline/holds.ts';
import { keepForNext } from '../offline/kept.ts';
import { languageNow, onLanguage, speakIn } from './language-now.ts';

export function useLanguage(): Language {
  const language = useSyncExternalStore(onLanguage, languageNow);
  useLayoutEffect(() => {
    document.documentElement.lang = language;
    document.documentElement.dir = directionOf(language);
  }, [language]);
  return language;
}

/** Waits for what is being made or written. Where the catalogue cannot be fetched nothing changes; whether it could. */
export async function changeLanguage(language: Language): Promise<boolean> {
  try {
    await loadCatalogue(language);
  } catch {
    return false;
  }
  await nothingHolds();
  // The screen is drawn anew, since what it was told by workers is in the language before.
  keepForNext();
  await speakIn(language);
  remember('language', language);
  return true;
}
