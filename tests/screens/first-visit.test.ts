// What a person finds who opens the app for the first time.
import { expect, test } from 'vitest';
import { choiceOf, drawn, drawnAnew, startApp } from './app.ts';
import { pagesIn, pdfOf } from './files.ts';

const app = startApp();

test('a first visit shows a page and its proof without any click', async () => {
  const page = await app.open();
  expect(await page.locator('.sheet [data-role="task"]').count()).toBeGreaterThan(0);
  await page.getByText('has exactly one answer').waitFor();
  await page.getByText(/^Step 1 of \d+/).waitFor();
});

test('one click from the first visit gives a PDF of all its pages', async () => {
  const page = await app.open();
  const pdf = await pdfOf(page);
  expect(pdf.bytes.subarray(0, 5).toString('latin1')).toBe('%PDF-');
  // The adult's page, ten sheets, and at least one page of answers.
  expect(pagesIn(pdf.bytes)).toBeGreaterThan(11);
});

test('three clicks choose an age and give the PDF', async () => {
  const page = await app.open();
  const before = await drawn(page);
  await choiceOf(page, 'Age of the child').click();
  await page.getByRole('option', { name: 'four' }).click();
  await drawnAnew(page, before);
  const pdf = await pdfOf(page);
  expect(pdf.name).toMatch(/^in-every-box-step-\d+-10-sheets-A4-\d+\.pdf$/);
});

test('a reload keeps the sheet, of the first visit and of those after it', async () => {
  const page = await app.open();
  const first = await drawn(page);
  await page.reload();
  expect(await drawn(page)).toBe(first);
  await page.getByRole('button', { name: 'Another like this' }).click();
  const second = await drawnAnew(page, first);
  await page.reload();
  expect(await drawn(page)).toBe(second);
});
