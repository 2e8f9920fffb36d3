// What the tests of the Week screen have in common: children in the records, a day that stands still, the plan as it is read.
import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import { ACTIVITY_IDS, activityOf, type Skill } from '../../src/activities/index.ts';
import { type Entry, viewOf } from '../../src/records/index.ts';
import { capital } from '../../src/web/words.ts';
import { childEntry, idAt } from '../record-entries.ts';
import type { App, OpenOptions } from './app.ts';
import { keptEntries, putEntries } from './kept-entries.ts';

/** A Monday, and the days after it. */
export const MONDAY = '2026-03-09';
export const TUESDAY = '2026-03-10';

export const NAMES = ['Fern', 'Wren', 'Moss'];

export interface WeekOptions extends OpenOptions {
  readonly names?: readonly string[];
  /** Entries beside those of the children. */
  readonly entries?: readonly Entry[];
  readonly today?: string;
}

/** The Week screen on a day, with children of the numbers 1 upward, of whom the first is chosen. */
export async function openWeek(app: App, options: WeekOptions = {}): Promise<Page> {
  const { names = ['Fern'], entries = [], today = MONDAY, ...others } = options;
  const page = await app.open('week', { ...others, waitFor: 'child' });
  await page.clock.setFixedTime(new Date(`${today}T09:00`));
  const born = { birthMonth: '2021-09' };
  const children = names.map((nickname, at) => childEntry(at + 1, at + 1, { nickname, ...born }));
  await putEntries(page, [...children, ...entries]);
  await page.evaluate((id) => localStorage.setItem('samewise.child.real', id), idAt(1));
  await again(page);
  return page;
}

/** Opens the screen once more, as in another visit. */
export async function again(page: Page): Promise<void> {
  await page.reload();
  await page.locator('.week-bar').waitFor();
}

/** Plans the week, and waits until that is kept and said. */
export async function planWeek(page: Page): Promise<void> {
  const before = await plansKept(page);
  await page.getByRole('button', { name: /^Plan (the week|anew)/ }).click();
  await expect.poll(() => plansKept(page), { timeout: 60_000 }).toBeGreaterThan(before);
  await said(page, /^Planned for /).waitFor();
}

/** How many plans are among the entries, in force or not. */
export async function plansKept(page: Page): Promise<number> {
  return (await keptEntries(page)).filter(({ kind }) => kind === 'plan').length;
}

/** What was said to be done. */
export function said(page: Page, text: RegExp): Locator {
  return page.locator('.message > span').filter({ hasText: text });
}

/** The row of a child in the table. */
export function rowOf(page: Page, nickname: string): Locator {
  return page.locator('tbody tr').filter({ has: page.getByRole('rowheader', { name: nickname }) });
}

/** A day in the row of a child, 0 being the first in view. */
export function dayOf(page: Page, nickname: string, day: number): Locator {
  return rowOf(page, nickname).locator('td').nth(day);
}

export function namesIn(day: Locator): Promise<readonly string[]> {
  return day.locator('.slip-name').allTextContents();
}

/** The names of the sheets of a child, day by day, once they are there. */
export async function weekOf(
  page: Page,
  nickname: string,
): Promise<readonly (readonly string[])[]> {
  await rowOf(page, nickname).locator('.slip').first().waitFor();
  const days = await rowOf(page, nickname).locator('td').all();
  return Promise.all(days.map(namesIn));
}

const SKILLS = new Map<string, Skill>(
  ACTIVITY_IDS.map((id) => {
    const { words, skill } = activityOf(id);
    return [capital(words.en.name), skill];
  }),
);

/** The skill of a sheet by its name on the screen. */
export function skillOf(name: string): Skill | undefined {
  return SKILLS.get(name);
}

/** The codes that are kept as planned for a child's day. */
export async function keptPlan(page: Page, child: number, day: string): Promise<readonly string[]> {
  const view = viewOf(await keptEntries(page));
  return (
    view.plans
      .get(idAt(child))
      ?.get(day)
      ?.sheets.map(({ code }) => code) ?? []
  );
}
