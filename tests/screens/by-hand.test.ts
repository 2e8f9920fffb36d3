// Half-made and by hand in the app: chosen in plain words, shown page by page, and in the PDF.
import { expect, test } from 'vitest';
import { drawn, drawnAnew, PHONE, startApp } from './app.ts';
import { pagesIn, pdfOf } from './files.ts';

const app = startApp();
const RECIPE = 'activity=in-every-box&step=8&seed=5&sheets=2';

test('half-made is one tap; the page on the table has circles for stickers', async () => {
  const page = await app.open(RECIPE);
  const before = await drawn(page);
  await page.getByRole('radio', { name: 'half-made' }).click();
  const after = await drawnAnew(page, before);
  expect(after).toContain('empty circle for a');
  expect(page.url()).toContain('made=half-made');
});

test('by hand: every page of the guide is turned, then the next sheet, and all come in the PDF', async () => {
  const page = await app.open(`${RECIPE}&made=by-hand`);
  let before = await drawn(page);
  expect(before).toContain('How it will look');
  const next = page.getByRole('button', { name: 'Next page of the guide' });
  let leaves = 1;
  while (await next.isEnabled()) {
    await next.click();
    before = await drawnAnew(page, before);
    leaves += 1;
  }
  expect(leaves).toBeGreaterThan(1);
  expect(before).toContain('Answers');
  await page.getByRole('button', { name: 'Next sheet' }).click();
  expect(await drawnAnew(page, before)).toContain('How it will look');
  const { bytes } = await pdfOf(page);
  // The adult's page and both guides; the answers stand on the guides.
  expect(pagesIn(bytes)).toBeGreaterThanOrEqual(1 + 2 * leaves);
});

test('the quickest layout is offered by hand alone, makes one task a page, and is kept by a reload', async () => {
  const page = await app.open('activity=in-every-box&step=1&seed=5&sheets=1');
  expect(await page.getByRole('radio', { name: 'the quickest by hand' }).count()).toBe(0);
  let before = await drawn(page);
  await page.getByRole('radio', { name: 'made by hand' }).click();
  before = await drawnAnew(page, before);
  await page.getByRole('radio', { name: 'the quickest by hand' }).click();
  before = await drawnAnew(page, before);
  expect(before).toContain('Fold the page');
  await page.reload();
  expect(await drawn(page)).toBe(before);
});

test('on a phone nothing is wider than the screen', async () => {
  const page = await app.open(`${RECIPE}&made=by-hand`, { viewport: PHONE });
  await drawn(page);
  const wide = await page.evaluate(() => document.documentElement.scrollWidth);
  expect(wide).toBeLessThanOrEqual(PHONE.width);
});
