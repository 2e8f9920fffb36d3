// What the tests of the Today screen have in common: a child with a day, and what stands on the screen and in the records.
import type { Locator, Page } from 'playwright-core';
import { type PlanEntry, viewOf } from '../../src/records/index.ts';
import type { App } from './app.ts';
import { keptEntries } from './kept-entries.ts';
import { addChild } from './record-parts.ts';

/** Today with the new child Fern, once all its sheets lie there. */
export async function openToday(app: App, options: Parameters<App['open']>[1] = {}): Promise<Page> {
  const page = await app.open('record', { ...options, waitFor: 'record' });
  await addChild(page, 'Fern');
  await page.getByRole('link', { name: 'Today' }).click();
  await laidOut(page);
  return page;
}

/** Waits until the plan is there and each of its sheets is drawn. */
export async function laidOut(page: Page): Promise<void> {
  await page.locator('.day[aria-busy="false"] .day-label').first().waitFor();
  await page.waitForFunction(
    () =>
      document.querySelectorAll('.day-label').length ===
        document.querySelectorAll('.day-sheet .sheet svg').length &&
      document.querySelector('.day-sheet [aria-busy="true"], .day-sheet[aria-busy="true"]') ===
        null,
  );
}

/** The place of a sheet of the day, the first being 0. */
export function sheetAt(page: Page, place: number): Locator {
  return page.locator('.day-sheets > li').nth(place);
}

/** The codes of the sheets that are not done, in order, as their ways to Record have them. */
export async function codesOf(page: Page): Promise<readonly string[]> {
  const links = page.getByRole('link', { name: /^Record how it went/ });
  const addresses = await links.evaluateAll((all) => all.map((link) => link.getAttribute('href')));
  return addresses.map((address) => address?.replace('#record?code=', '') ?? '');
}

export async function namesOf(page: Page): Promise<readonly string[]> {
  return page.locator('.day-sheet h3').allTextContents();
}

/** Chooses a change for a sheet, and waits until it is told and the day has it. */
export async function change(page: Page, place: number, name: string): Promise<string> {
  await sheetAt(page, place)
    .getByRole('button', { name: /^Change/ })
    .click();
  await page.getByRole('menuitem', { name, exact: true }).click();
  await page.locator('.message:focus').waitFor();
  await laidOut(page);
  return (await page.locator('.message > span').textContent()) ?? '';
}

export async function undo(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await page.getByText('Taken back.').waitFor();
  await laidOut(page);
}

/** The plans of Fern that stand in the records, by their days. */
export async function plansOf(page: Page): Promise<ReadonlyMap<string, PlanEntry>> {
  const view = viewOf(await keptEntries(page));
  return view.plans.get(view.children[0]?.id ?? '') ?? new Map();
}

/** The sheets of a plan as codes. */
export function codesIn(plan: PlanEntry | undefined): readonly string[] {
  return plan?.sheets.map(({ code }) => code) ?? [];
}
