// The pack as a file and on paper, from the browser.
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { writePdf } from '../../src/press/index.ts';
import { makePack, packPages, readRecipe } from '../../src/sheets/index.ts';
import { startApp } from './app.ts';
import { infoOf, pagesIn, pdfOf } from './files.ts';

const app = startApp();
const FONTS = new URL('../../assets/fonts/', import.meta.url);

async function pdfFromNode(): Promise<{ readonly bytes: Buffer; readonly pages: number }> {
  const recipe = readRecipe({
    format: 'samewise.recipe',
    version: 1,
    page: { paper: 'Letter', orientation: 'portrait' },
    parts: [{ activity: 'in-every-box', step: 5, sheets: 6 }],
  });
  if (!recipe.ok) throw new Error(JSON.stringify(recipe.refusals));
  const pack = makePack({ ...recipe.value, seed: 99 });
  if (!pack.ok) throw new Error(JSON.stringify(pack.refusals));
  const fonts = {
    regular: new Uint8Array(readFileSync(new URL('Andika-Regular.ttf', FONTS))),
    bold: new Uint8Array(readFileSync(new URL('Andika-Bold.ttf', FONTS))),
  };
  const chunks: Uint8Array[] = [];
  const pages = packPages(pack.value);
  await writePdf(pages, fonts, (chunk) => chunks.push(chunk));
  return { bytes: Buffer.concat(chunks), pages: [...pages.pages].length };
}

test('the browser writes the same bytes as Node', async () => {
  const page = await app.open('activity=in-every-box&step=5&sheets=6&seed=99&paper=Letter');
  const { bytes } = await pdfOf(page);
  const expected = await pdfFromNode();
  expect(pagesIn(bytes)).toBe(expected.pages);
  expect(bytes.equals(expected.bytes)).toBe(true);
  // US Letter: 8.5 by 11 inches of 72 points.
  expect(infoOf(bytes)).toContain('612 x 792 pts');
});

test('a long pack tells how far it is, and can be stopped', async () => {
  const page = await app.open('step=5&sheets=2000&seed=3');
  await page.getByRole('button', { name: 'Get the PDF' }).click();
  await page.getByRole('progressbar', { name: /of 2000$/ }).waitFor();
  await page.getByRole('button', { name: 'Cancel' }).click();
  await page.getByText('Stopped. Nothing was saved.').waitFor();
  expect(await page.getByRole('button', { name: 'Get the PDF' }).isEnabled()).toBe(true);
});

test('printing lays out every page of the pack at its true size', async () => {
  const page = await app.open('activity=in-every-box&step=5&sheets=6&seed=99&paper=Letter');
  await page.evaluate(() => {
    window.print = () => document.body.setAttribute('data-printing', 'yes');
  });
  await page.getByRole('button', { name: 'Print', exact: true }).click();
  await page.locator('body[data-printing]').waitFor();
  const printed = await page.pdf({ preferCSSPageSize: true });
  expect(pagesIn(printed)).toBe((await pdfFromNode()).pages);
  expect(infoOf(printed)).toContain('612 x 792 pts');
});

test('the browser’s own print command prints the page on the table', async () => {
  const page = await app.open('step=5&sheets=6&seed=99');
  const printed = await page.pdf({ preferCSSPageSize: true });
  expect(pagesIn(printed)).toBe(1);
});
