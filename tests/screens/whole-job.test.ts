// The job from end to end: a parent's by the keys alone, a teacher's with a group.
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { drawn, drawnAnew, startApp } from './app.ts';
import { tabTo } from './by-keys.ts';
import { bytesOf, pagesIn, pdfOf, textOf } from './files.ts';
import { keptEntries } from './kept-entries.ts';
import { addChild, codeField } from './record-parts.ts';

const app = startApp();

/** What is printed at the foot of each sheet. */
const CODE = /\b[0-9A-Z]{4}(?:-[0-9A-Z]{2,4}){2,}\b/;

const firstCodeIn = (text: string) => text.match(CODE)?.[0] ?? '';

/** Goes to another place of the app by its link among the places. */
async function goByKeys(page: Page, place: string): Promise<void> {
  await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
  await page.locator('body').press('Home');
  await tabTo(page, new RegExp(`^${place}$`));
  await page.keyboard.press('Enter');
}

test('a parent makes a sheet, prints it, records it and sees it in Growth, by the keys alone', async () => {
  const page = await app.open('seed=7');
  const before = await drawn(page);
  await tabTo(page, /Tasks on a sheet/);
  await page.keyboard.type('2');
  await page.keyboard.press('Enter');
  await drawnAnew(page, before);
  await tabTo(page, /Get the PDF/);
  const saving = page.waitForEvent('download');
  await page.keyboard.press('Enter');
  const code = firstCodeIn(textOf(await bytesOf(await saving)));
  await goByKeys(page, 'Record');
  await page.getByRole('button', { name: 'Add a child' }).waitFor();
  await tabTo(page, /Add a child/);
  await page.keyboard.press('Enter');
  await page.getByRole('textbox', { name: 'Nickname' }).waitFor();
  await page.keyboard.type('Fern');
  await page.keyboard.press('Enter');
  await page.getByText('Fern is saved.').waitFor();
  await tabTo(page, /Code printed on the sheet/);
  await page.keyboard.insertText(code);
  await page.getByRole('radio', { name: 'All right' }).waitFor();
  await tabTo(page, /All right|Right|With help|Not yet/);
  await page.keyboard.press('Space');
  await tabTo(page, /Save the record/);
  await page.keyboard.press('Enter');
  await page.getByText(/^Saved for Fern/).waitFor();
  const [result] = (await keptEntries(page)).filter((entry) => entry.kind === 'result');
  expect(result).toMatchObject({ code });
  await goByKeys(page, 'Growth');
  await page.getByText(/^1 sheet on 1 day/).waitFor();
});

test('a teacher prints a pack for a group, marks one child’s sheet from its code, and sees that child’s growth', async () => {
  const page = await app.open('activity=odd-one-out&step=4&sheets=2&seed=3');
  await page.getByRole('button', { name: 'For a group' }).click();
  await page.getByRole('textbox', { name: 'Names, one a line' }).fill('Wren\nMoss\nFern');
  const { bytes } = await pdfOf(page);
  expect(pagesIn(bytes)).toBeGreaterThan(9);
  const text = textOf(bytes);
  const ofMoss = text.split('\f').find((each) => each.includes('Moss') && CODE.test(each)) ?? '';
  const code = firstCodeIn(ofMoss);
  await page.getByRole('link', { name: 'Record', exact: true }).click();
  await addChild(page, 'Moss');
  await codeField(page).fill(code);
  await page.getByRole('radio', { name: 'All right' }).click();
  await page.getByRole('button', { name: 'Save the record' }).click();
  await page.getByText(/^Saved for Moss, odd one out, step 4/i).waitFor();
  await page.getByRole('link', { name: 'Growth', exact: true }).click();
  await page.getByText(/^1 sheet on 1 day/).waitFor();
});
