// What the tests of the Record screen have in common: a sheet made elsewhere, a child, a code written down.
import type { Locator, Page } from 'playwright-core';
import type { ActivityId } from '../../src/activities/index.ts';
import type { Day, ResultEntry } from '../../src/records/index.ts';
import { DEFAULT_PAGE, makeSheet } from '../../src/sheets/index.ts';
import { keptEntries } from './kept-entries.ts';

/** The code of a sheet that no browser has shown: odd one out, step 4, three tasks. */
export function codeOfElsewhere(seed = 20): string {
  return codeOfSheet('odd-one-out', 4, { seed, tasks: 3 });
}

/** The code of a sheet of an activity. */
export function codeOfSheet(
  activity: ActivityId,
  step: number,
  some: { readonly seed?: number; readonly tasks?: number } = {},
): string {
  const page = DEFAULT_PAGE;
  const made = makeSheet({ activity, step, values: {}, seed: 20, page, print: 'colour', ...some });
  if (!made.ok) throw new Error(JSON.stringify(made.refusals));
  return made.value.code;
}

export async function addChild(page: Page, nickname: string): Promise<void> {
  await page.getByRole('button', { name: 'Add a child' }).click();
  await page.getByRole('textbox', { name: 'Nickname' }).fill(nickname);
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await page.getByText(`${nickname} is saved.`).waitFor();
}

export function codeField(page: Page): Locator {
  return page.getByRole('textbox', { name: 'Code printed on the sheet' });
}

/** Writes the code, and waits until the sheet lies there. */
export async function writeCode(page: Page, code: string): Promise<void> {
  await codeField(page).fill(code);
  await page.getByText('Odd one out, step 4: 3 tasks.').waitFor();
}

/** Records the whole sheet with one tap. */
export async function recordAll(page: Page, code: string, outcome: string): Promise<void> {
  await writeCode(page, code);
  await page.getByRole('radio', { name: outcome, exact: true }).click();
  await page.getByRole('button', { name: 'Save the record' }).click();
  await page.getByText(/^Saved for /).waitFor();
}

/** The list of what is recorded, the newest first. */
export function entriesOf(page: Page): Locator {
  return page.getByRole('listitem');
}

/** One outcome of a task, from 1. */
export function outcomeChip(page: Page, task: number, name: string): Locator {
  return page
    .getByRole('radiogroup', { name: `Task ${task}` })
    .getByRole('radio', { name: new RegExp(`^(✓ )?${name}$`) });
}

/** What is kept of results, in the order of their ids. */
export async function keptResults(page: Page): Promise<readonly ResultEntry[]> {
  return (await keptEntries(page)).filter((entry) => entry.kind === 'result');
}

/** The day so many days from today, in the calendar of this place. */
export function dayFromToday(days: number): Day {
  const day = new Date();
  day.setDate(day.getDate() + days);
  const twoDigits = (number: number) => String(number).padStart(2, '0');
  return `${day.getFullYear()}-${twoDigits(day.getMonth() + 1)}-${twoDigits(day.getDate())}`;
}
