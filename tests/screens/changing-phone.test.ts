// A figure is changed on a small phone, by touch and by mouse, on a plain sheet and on one of a group's.
import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { codeOf, PHONE, startApp } from './app.ts';

const app = startApp();
const RECIPE = 'activity=in-every-box&step=6&sheets=2&seed=3';

const WAYS = [
  { way: 'touch', options: { hasTouch: true, isMobile: true }, press: (at: Locator) => at.tap() },
  { way: 'mouse', options: {}, press: (at: Locator) => at.click() },
] as const;

/** Gives the figure at a place another colour; whether the sheet and its drawing then are others. */
async function recolour(page: Page, place: number, press: (at: Locator) => Promise<void>) {
  const target = page.locator('.change-target').nth(place);
  const [code, was] = [await codeOf(page), await target.getAttribute('aria-label')];
  await press(target);
  const offer = page.locator('.change-offer[aria-pressed="false"][aria-label^="Colour: "]').last();
  const colour = (await offer.getAttribute('aria-label'))?.replace('Colour: ', '');
  expect(was).not.toContain(`: ${colour} `);
  await press(offer);
  await page.waitForFunction(
    (old) => document.querySelector('output.code')?.textContent !== old,
    code,
  );
  expect(await target.getAttribute('aria-label')).toContain(`: ${colour} `);
}

test.for(WAYS)('on a phone a figure is changed by $way', async ({ options, press }) => {
  const page = await app.open(RECIPE, { ...options, viewport: PHONE });
  await press(page.getByRole('button', { name: 'Change this page' }));
  await recolour(page, 1, press);
  await recolour(page, 20, press);
});

test.for(WAYS)('on a phone a figure of a group’s sheet is changed by $way', async (given) => {
  const { options, press } = given;
  const page = await app.open(RECIPE, { ...options, viewport: PHONE });
  await press(page.getByRole('button', { name: 'For a group' }));
  await page
    .getByRole('textbox', { name: 'Names, one a line' })
    .fill('Wren\nMoss+1\nAlder\nClover');
  await page.getByText('Wren, 1 of 4').waitFor();
  await press(page.getByRole('button', { name: 'Next child' }));
  await page.getByText('Moss, 2 of 4').waitFor();
  await press(page.getByRole('button', { name: 'Change this page' }));
  await recolour(page, 1, press);
  await recolour(page, 20, press);
});
