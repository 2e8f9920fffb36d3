// The places of the app in a language, with a child of many records.
import type { Page } from 'playwright-core';
import { hashOf, type PlaceName } from '../../src/web/place-names.ts';
import type { App, OpenOptions } from './app.ts';
import { CHILD, redForOrange, TODAY, weeksOfRecords } from './growth-records.ts';
import { putEntries } from './kept-entries.ts';

/** What shows that a screen is there with all that it is told by workers. */
const SIGNS: Readonly<Record<PlaceName, string>> = {
  today: '.today-day[aria-busy="false"] .day-things',
  make: '.sheet svg',
  week: '.week-bar',
  record: '.results .entry-sheet',
  growth: '.course-plot',
  supplies: '.stickers',
};

export async function openInLanguage(
  app: App,
  language: string,
  place: PlaceName,
  options: OpenOptions = {},
): Promise<Page> {
  const page = await app.open('record', { ...options, waitFor: 'record' });
  await page.clock.setFixedTime(new Date(`${TODAY}T09:00`));
  await putEntries(page, [CHILD, ...weeksOfRecords(), ...redForOrange()]);
  await page.evaluate(
    ([child, tag]) => {
      localStorage.setItem('samewise.child.real', child ?? '');
      localStorage.setItem('samewise.language', tag ?? '');
    },
    [CHILD.kind === 'child' ? CHILD.child : '', language],
  );
  await page.goto(`${app.address()}${hashOf(place)}`);
  await page.reload();
  await placeThere(page, place);
  return page;
}

/** Waits until the place is there with all that it is told by workers. */
export function placeThere(page: Page, place: PlaceName): Promise<void> {
  return page.locator(SIGNS[place]).first().waitFor();
}
