// What is to be cut out: chosen by chips in Make, kept in the address, shown on the table and printed behind its sheet.
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { codeOf, DESKTOP, drawn, PHONE, startApp } from './app.ts';
import { pagesIn } from './files.ts';

const app = startApp();
const RECIPE = 'activity=one-of-each&step=3&sheets=1&seed=5';

test.each([PHONE, DESKTOP])(
  'pieces are chosen, shown and let go of again, $width px wide',
  async (viewport) => {
    const page = await app.open(RECIPE, { viewport });
    const [before, code] = [await drawn(page), await codeOf(page)];
    await page.getByRole('button', { name: 'More choices' }).click();
    const chips = page.getByLabel('To cut out', { exact: true });
    await chips.getByRole('button', { name: 'pieces to cut' }).click();
    expect(new URL(page.url()).hash).toContain('toCut=pieces');
    const view = page.getByRole('radio', { name: 'To cut' });
    await view.click();
    await page
      .locator(`.sheet svg title:text("Pieces for sheet ${code}")`)
      .waitFor({ state: 'attached' });
    expect(await codeOf(page)).toBe(code);
    await chips.getByRole('button', { name: 'pieces to cut' }).press('Space');
    await view.waitFor({ state: 'detached' });
    expect(page.url()).not.toContain('toCut');
    expect(await drawn(page)).toBe(before);
  },
);

test('what a sheet cannot have is said in words, and the rest of the pack is made all the same', async () => {
  const page = await app.open('activity=odd-one-out&step=3&sheets=1&seed=5&toCut=pieces,cards');
  await page.getByText('on this sheet no figure goes into an empty place').waitFor();
  await page.getByRole('radio', { name: 'To cut' }).waitFor();
});

test('a choice that there is not is refused by name', async () => {
  const page = await app.open(`${RECIPE}&toCut=boxes`, { waitFor: 'objection' });
  await page.getByText('"boxes"').first().waitFor();
});

test('the PDF has the page of pieces between the sheet and its answers', async () => {
  const page = await app.open(`${RECIPE}&toCut=pieces`);
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: /PDF/ }).first().click();
  expect(pagesIn(readFileSync(await (await coming).path()))).toBe(4);
});

test('pages to cut are offered for printed sheets alone, and come back with them', async () => {
  const page = await app.open(`${RECIPE}&toCut=pieces&made=half-made`);
  await page.getByRole('button', { name: 'More choices' }).click();
  const chip = page.getByRole('button', { name: 'pieces to cut' });
  expect(await chip.isDisabled()).toBe(true);
  await page.getByText('Only printed sheets have pages to cut').waitFor();
  expect(await page.getByRole('radio', { name: 'To cut' }).count()).toBe(0);
  await page.getByRole('radio', { name: 'printed', exact: true }).click();
  await page.getByRole('radio', { name: 'To cut' }).waitFor();
  expect(await chip.isEnabled()).toBe(true);
});

test('more choices stand under what they are about', async () => {
  const page = await app.open(RECIPE);
  await page.getByRole('button', { name: 'More choices' }).click();
  const headings = await page.locator('.more h3').allTextContents();
  expect(headings).toEqual(['What is asked', 'The page', 'What you have']);
});
