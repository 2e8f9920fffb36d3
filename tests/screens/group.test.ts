// A pack for a group from the app: names, one PDF or one for each child, and nothing of it in the address.
import { readFileSync } from 'node:fs';
import { unzipSync } from 'fflate';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { PHONE, startApp } from './app.ts';
import { faultsOf } from './faults.ts';
import { pagesIn, pdfOf, textOf } from './files.ts';

const app = startApp();
const RECIPE = 'activity=odd-one-out&step=4&sheets=2&seed=3';

async function withNames(names: string, options = {}): Promise<Page> {
  const page = await app.open(RECIPE, options);
  await page.getByRole('button', { name: 'For a group' }).click();
  await page.getByRole('textbox', { name: 'Names, one a line' }).fill(names);
  return page;
}

test('each child gets sheets of its own with its name, and there is one table for marking', async () => {
  const page = await withNames('Wren\nMoss+1\nZoë Żółć');
  const { name, bytes } = await pdfOf(page);
  expect(name).toBe('odd-one-out-step-4-2-sheets-group-A4-3.pdf');
  const text = textOf(bytes);
  for (const child of ['Wren', 'Moss', 'Zoë Żółć']) {
    // Twice on the sheets, twice with the answers, once in the table.
    expect(text.split(child).length - 1).toBe(5);
  }
  expect(text).toContain('The group');
  expect(new URL(page.url()).hash).not.toContain('Wren');
});

test('a file for each child comes in one ZIP, and names are there again after a reload', async () => {
  const page = await withNames('Wren\nFern');
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'One PDF each' }).click();
  const download = await saving;
  const files = unzipSync(new Uint8Array(readFileSync(await download.path())));
  expect(Object.keys(files)).toEqual(['1-Wren.pdf', '2-Fern.pdf']);
  for (const pdf of Object.values(files)) expect(pagesIn(pdf)).toBeGreaterThan(3);
  await page.reload();
  const names = page.getByRole('textbox', { name: 'Names, one a line' });
  expect(await names.inputValue()).toBe('Wren\nFern');
});

test('too many children and too long a name are told in a sentence, and nothing is lost', async () => {
  const many = Array.from({ length: 501 }, (_, number) => `c${number}`).join('\n');
  const page = await withNames(many);
  await page.locator('.group-fields .objection', { hasText: '500' }).waitFor();
  const names = page.getByRole('textbox', { name: 'Names, one a line' });
  expect(await names.inputValue()).toBe(many);
  await names.fill('x'.repeat(201));
  await page.locator('.group-fields .objection', { hasText: '200' }).waitFor();
  expect(await page.getByRole('button', { name: 'Get the PDF' }).isDisabled()).toBe(true);
});

test('too few equally hard sheets are told where the names stand, before anything is pressed', async () => {
  const page = await app.open(
    'activity=continue-row&step=1&with.content=colours&tasks=1&sheets=10&seed=3',
  );
  await page.getByRole('button', { name: 'For a group' }).click();
  const names = page.getByRole('textbox', { name: 'Names, one a line' });
  const objection = page.locator('.group-fields .objection');
  await names.fill(Array.from({ length: 12 }, (_, number) => `Child ${number}`).join('\n'));
  await objection.filter({ hasText: 'different sheets of equal difficulty' }).waitFor();
  expect(await objection.textContent()).toContain('Ask for fewer sheets');
  expect(await names.getAttribute('aria-invalid')).toBe('true');
  await names.fill('Wren\nMoss');
  await expect.poll(() => objection.count()).toBe(0);
});

test('on a phone the names have no fault and nothing runs over the edge', async () => {
  const page = await withNames('Wren\nFern', { viewport: PHONE });
  expect(await faultsOf(page)).toEqual([]);
  const width = await page.evaluate(() => document.documentElement.scrollWidth);
  expect(width).toBeLessThanOrEqual(PHONE.width);
});
