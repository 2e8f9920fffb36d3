// What the tests of the Record screen have in common: a sheet made elsewhere, a child, a code written down.
import type { Locator, Page } from 'playwright-core';
import { DEFAULT_PAGE, makeSheet } from '../../src/sheets/index.ts';

/** The code of a sheet that no browser has shown: odd one out, step 4, three tasks. */
export function codeOfElsewhere(seed = 20): string {
  const made = makeSheet({
    activity: 'odd-one-out',
    step: 4,
    values: {},
    seed,
    tasks: 3,
    page: DEFAULT_PAGE,
    print: 'colour',
  });
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
