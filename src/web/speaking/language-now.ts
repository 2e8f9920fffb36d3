// The language that the app speaks at present: one for the page, and one for each worker, which is told with every order.
import { type Language, loadCatalogue } from '../../languages/index.ts';

let present: Language = 'en';
const tellings = new Set<() => void>();

export function languageNow(): Language {
  return present;
}

/** Fetches what the language needs and speaks it from then on. Where it cannot be fetched, nothing changes. */
export async function speakIn(language: Language): Promise<void> {
  // At once where it is spoken already, so that no question to a worker waits for it.
  if (language === present) return;
  await loadCatalogue(language);
  present = language;
  for (const tell of tellings) tell();
}

/** Calls after each change; the answer ends that. */
export function onLanguage(tell: () => void): () => void {
  tellings.add(tell);
  return () => tellings.delete(tell);
}
