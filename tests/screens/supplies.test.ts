// Counting what is in the house, and what recorded sheets take from it.
import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { DEFAULT_PAGE, makeSheet, packMaterials } from '../../src/sheets/index.ts';
import { DESKTOP, PHONE, startApp } from './app.ts';
import { faultsOf } from './faults.ts';
import { addChild, codeField } from './record-parts.ts';

const app = startApp();

/** A sheet that takes stickers, and what it takes. */
function stickerSheet() {
  const made = makeSheet({
    ...{ activity: 'in-every-box', step: 2, values: { response: 'sticker' }, seed: 4, tasks: 2 },
    page: DEFAULT_PAGE,
    print: 'colour',
  });
  if (!made.ok) throw new Error(JSON.stringify(made.refusals));
  const [sticker] = packMaterials([made.value]).stickers;
  if (!sticker) throw new Error('the sheet takes no stickers');
  return { code: made.value.code, sticker };
}

async function openSupplies(options = {}): Promise<Page> {
  const page = await app.open('record', { waitFor: 'record', ...options });
  await addChild(page, 'Fern');
  await page.getByRole('link', { name: 'Supplies' }).click();
  await page.getByText('Nothing is counted yet.').waitFor();
  return page;
}

function row(page: Page, number = 1): Locator {
  return page.getByRole('group', { name: `Stickers, row ${number}` });
}

async function countStickers(page: Page, colour: string, across: number, count: string) {
  await page.getByRole('button', { name: 'Add stickers' }).click();
  await row(page).getByLabel('Colour').selectOption(colour);
  await row(page).getByLabel('Across, in mm').fill(String(across));
  await row(page).getByLabel('How many').fill(count);
}

async function save(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Save the count' }).click();
  await page.getByText('The count is saved.').waitFor();
}

async function leftOf(page: Page): Promise<string> {
  await page.getByRole('link', { name: 'Supplies' }).click();
  await page.getByText(/^Counted on /).waitFor();
  return row(page).getByLabel('How many').inputValue();
}

test('a recorded sheet takes its stickers off the count, and taking the record back puts them back', async () => {
  const { code, sticker } = stickerSheet();
  const page = await openSupplies();
  await countStickers(page, sticker.colour, sticker.diameterMm, '50');
  await save(page);
  await page.getByRole('link', { name: 'Record' }).click();
  await codeField(page).fill(code);
  await page.getByRole('radio', { name: 'All right', exact: true }).click();
  await page.getByRole('button', { name: 'Save the record' }).click();
  await page.getByText(/^Saved for /).waitFor();
  await expect.poll(() => leftOf(page)).toBe(String(50 - sticker.count));
  await page.getByRole('link', { name: 'Record' }).click();
  await page.getByRole('button', { name: 'Undo' }).first().click();
  await page.getByText('Taken back.').waitFor();
  await expect.poll(() => leftOf(page)).toBe('50');
});

test('the count is there after a reload, and can be taken back', async () => {
  const page = await openSupplies();
  await countStickers(page, 'blue', 13, '7');
  await page.getByRole('button', { name: 'a glue stick' }).click();
  await save(page);
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await page.getByText('Nothing is counted yet.').waitFor();
  await page.getByRole('button', { name: 'Bring it back' }).click();
  await page.getByText(/^Counted on /).waitFor();
  await page.reload();
  await page.getByText(/^Counted on /).waitFor();
  expect(await row(page).getByLabel('How many').inputValue()).toBe('7');
  const glue = page.getByRole('button', { name: 'a glue stick' });
  expect(await glue.getAttribute('aria-pressed')).toBe('true');
});

test.each(['', '-1', '2.5', 'many'])(
  'a count of “%s” is told in a sentence, and stays',
  async (count) => {
    const page = await openSupplies();
    await countStickers(page, 'red', 15, count);
    await page.getByRole('button', { name: 'Save the count' }).click();
    await page.getByText(/^Row 1: write whole numbers/).waitFor();
    expect(await row(page).getByLabel('How many').inputValue()).toBe(count);
  },
);

test('Today plans nothing that is lacking once the house is counted', async () => {
  const page = await openSupplies();
  await save(page);
  await page.getByRole('link', { name: 'Today' }).click();
  await page.locator('.today-day[aria-busy="false"] .day-label').first().waitFor();
  const things = await page.locator('.lay-out li').allTextContents();
  expect(things).toEqual(['nothing: the child points']);
  expect(await page.getByText('By the last count of your supplies you lack').count()).toBe(0);
});

test.each([
  ['light', DESKTOP],
  ['dark', PHONE],
] as const)(
  'in %s surroundings at %o Supplies has no fault and fits',
  async (colorScheme, viewport) => {
    const page = await openSupplies({ colorScheme, viewport });
    await countStickers(page, 'green', 15, '30');
    expect(await faultsOf(page)).toEqual([]);
    const width = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(width).toBeLessThanOrEqual(viewport.width);
    if (process.env.SHOTS) {
      await page.screenshot({ path: `out/supplies-${viewport.width}.png`, fullPage: true });
    }
  },
);
