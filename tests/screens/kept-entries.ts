// Entries put into and read from the database of the app itself, past its screens.
import type { Page } from 'playwright-core';
import type { Entry } from '../../src/records/index.ts';

/** Puts the entries beside those that are there; the screen shows them after a reload. */
export async function putEntries(page: Page, entries: readonly Entry[]): Promise<void> {
  await page.evaluate(
    (entries) =>
      new Promise<void>((resolve, reject) => {
        const request = indexedDB.open('samewise-records');
        request.onerror = () => reject(request.error);
        request.onsuccess = () => {
          const transaction = request.result.transaction('entries', 'readwrite');
          for (const entry of entries) transaction.objectStore('entries').put(entry);
          transaction.oncomplete = () => {
            request.result.close();
            resolve();
          };
        };
      }),
    entries,
  );
}

export function keptEntries(page: Page): Promise<readonly Entry[]> {
  return page.evaluate(
    () =>
      new Promise<readonly Entry[]>((resolve, reject) => {
        const request = indexedDB.open('samewise-records');
        request.onerror = () => reject(request.error);
        request.onsuccess = () => {
          const all = request.result.transaction('entries').objectStore('entries').getAll();
          all.onsuccess = () => {
            request.result.close();
            resolve(all.result);
          };
        };
      }),
  );
}
