// Make, about the letters of a name: written, of a child in the records, of each child of a group, and none that can be drawn.
import { expect, test } from 'vitest';
import { readCode } from '../../src/sheets/index.ts';
import { PHONE, startApp } from './app.ts';
import { pagesIn, pdfOf } from './files.ts';
import { addChild } from './record-parts.ts';

const app = startApp();
const LETTERS = 'activity=find-the-same&step=1&with.content=capitals&seed=4&sheets=2';
const FIELD = 'About the letters of a name';

function lettersOfCode(code: string): string | undefined {
  const read = readCode(code);
  if (!read.ok) throw new Error(JSON.stringify(read.refusals));
  return read.value.letters;
}

test('a name that is written makes sheets about its letters, and is in no address', async () => {
  const page = await app.open(LETTERS);
  await page.getByLabel(FIELD).fill('Zoë Wren');
  await page.getByText(/Letters of the name on this sheet/).waitFor();
  await page.getByText(/drawn without the mark/).waitFor();
  const address = page.url();
  expect(new URLSearchParams(address.split('#')[1]).get('letters')).toBe('ENORWZË');
  expect(address.toLowerCase()).not.toMatch(/zo|wren/);
  const code = await page.locator('output.code').textContent();
  expect(lettersOfCode(code ?? '')).toBe('ENORWZ');
  await page.reload();
  await page.locator('.sheet svg').waitFor();
  await page.getByText(/Letters of the name on this sheet/).waitFor();
});

test('a name that cannot be drawn says so and leaves the sheets as they are', async () => {
  const page = await app.open(LETTERS, { viewport: PHONE });
  await page.getByLabel(FIELD).fill('🙂');
  await page.getByText(/None of these letters is among the capital letters/).waitFor();
  await page.locator('.sheet svg').waitFor();
  expect(await page.evaluate(() => document.body.scrollWidth <= innerWidth)).toBe(true);
});

test('a name is asked for only where letters are chosen', async () => {
  const page = await app.open('activity=find-the-same&step=1&seed=4');
  expect(await page.getByLabel(FIELD).count()).toBe(0);
});

test('a child of the records is one tap', async () => {
  const page = await app.open('record', { waitFor: 'record' });
  await addChild(page, 'Fern');
  await page.goto(`${app.address()}#${LETTERS}`);
  await page.locator('.sheet svg').waitFor();
  await page.getByRole('radio', { name: 'Fern' }).click();
  await page.getByText('Letters of the name on this sheet').waitFor();
  expect(await page.getByLabel(FIELD).inputValue()).toBe('Fern');
});

test('each child of a group gets the letters of its own name', async () => {
  const page = await app.open(LETTERS);
  await page.getByRole('button', { name: 'For a group' }).click();
  await page.getByLabel('Names, one a line').fill('Wren\nMoss');
  await page.getByRole('radio', { name: 'each child’s own name' }).click();
  expect(page.url()).toContain('ownLetters=yes');
  const { bytes } = await pdfOf(page);
  expect(pagesIn(bytes)).toBeGreaterThan(4);
});
