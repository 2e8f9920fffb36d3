// A pack file brings its own pictures along: on a device that keeps none of them its sheets are made, printed, recorded.
import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { makePack, packFileText, readRecipe } from '../../src/sheets/index.ts';
import { codeOf, PHONE, startApp } from './app.ts';
import { faultsOf } from './faults.ts';
import { addChild, codeField, keptResults } from './record-parts.ts';

const app = startApp();

const OUTLINE = 'M-400 -100L0 -450L400 -100L400 400L-400 400Z';
const HOUSE = { name: 'house', outline: OUTLINE, parts: [['#d05020', OUTLINE]] };

/** The text of a pack file whose two sheets show the house, and their codes. */
function packWithHouse() {
  const recipe = readRecipe({
    format: 'samewise.recipe',
    version: 1,
    pictures: [HOUSE],
    parts: [{ activity: 'find-the-same', step: 3, sheets: 2, values: { content: 'pictures' } }],
  });
  if (!recipe.ok) throw new Error(JSON.stringify(recipe.refusals));
  const pack = makePack({ ...recipe.value, seed: 8 });
  if (!pack.ok) throw new Error(JSON.stringify(pack.refusals));
  return { text: packFileText(pack.value), codes: pack.value.sheets.map(({ code }) => code) };
}

async function openFile(page: Page, text: string): Promise<void> {
  await page
    .locator('.pack-file input[type="file"]')
    .setInputFiles({ name: 'pack.json', mimeType: 'application/json', buffer: Buffer.from(text) });
}

test('a sheet of the file lies on the table, is printed and filed again; the refusal without it says what helps', async () => {
  const { text, codes } = packWithHouse();
  const page = await app.open('activity=by-key');
  await openFile(page, text);
  await page.getByRole('button', { name: /^Sheet 2: / }).click();
  await page.waitForFunction(
    (code) => document.querySelector('output.code')?.textContent === code,
    codes[1],
  );
  expect(await page.locator('.sheet svg path[fill="#d05020"]').count()).toBeGreaterThan(0);
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Get the PDF' }).click();
  const bytes = await readFile(await (await saving).path());
  expect(bytes.subarray(0, 5).toString()).toBe('%PDF-');
  const filing = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save the pack file' }).click();
  const filed = JSON.parse(await readFile(await (await filing).path(), 'utf8'));
  expect(filed).toMatchObject({ pictures: [HOUSE], sheets: [{ code: codes[1] }] });
  // It is not kept: the family's own pictures are what the family took.
  await page.reload();
  await page.getByText('not kept on this device. Nothing is lost').first().waitFor();
  await openFile(page, text);
  // The sheet that is asked for by the address lies there at once.
  await page.waitForFunction(
    (code) => document.querySelector('output.code')?.textContent === code,
    codes[1],
  );
  expect(await page.locator('.objection:visible').count()).toBe(0);
  await page.getByRole('button', { name: /^Sheet 1: / }).click();
  await page.waitForFunction(
    (code) => document.querySelector('output.code')?.textContent === code,
    codes[0],
  );
});

test('a sheet of the file is recorded on a device that keeps none of its pictures, and none come in', async () => {
  const { text, codes } = packWithHouse();
  const page = await app.open('record', { waitFor: 'record', viewport: PHONE });
  await addChild(page, 'Fern');
  await openFile(page, text);
  await page.getByRole('button', { name: /^Sheet 2: / }).waitFor();
  expect(await faultsOf(page)).toEqual([]);
  await page.getByRole('button', { name: /^Sheet 2: / }).click();
  await page.locator('.target').first().click();
  expect(await codeField(page).inputValue()).toBe(codes[1]);
  await page.getByRole('button', { name: 'Save the record' }).click();
  await page.getByText(/^Saved for Fern/).waitFor();
  expect(await keptResults(page)).toMatchObject([{ code: codes[1] }]);
});

test('a file with a picture that is none is refused with its place, and nothing changes', async () => {
  const { text } = packWithHouse();
  const page = await app.open('activity=by-key&seed=5');
  const code = await codeOf(page);
  await openFile(page, text.replaceAll(OUTLINE, 'M0 0Z'));
  await page.locator('.pack-file .objection', { hasText: 'pictures' }).waitFor();
  expect(await codeOf(page)).toBe(code);
});
