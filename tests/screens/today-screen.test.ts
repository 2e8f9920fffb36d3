// Today for everybody: wishes that are remembered, the keyboard alone, no fault by day and night, nothing sticking out.
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { DESKTOP, PHONE, startApp } from './app.ts';
import { faultsOf, WCAG } from './faults.ts';
import { change, codesOf, laidOut, openToday, sheetAt } from './today-parts.ts';

const app = startApp();
const MOST_STOPS = 60;

/** Presses Tab until what has the focus is named as wanted; fails if it never comes. */
async function tabTo(page: Page, name: RegExp, key = 'Tab'): Promise<void> {
  for (let stop = 0; stop < MOST_STOPS; stop++) {
    await page.keyboard.press(key);
    const focused = await page.evaluate(
      () =>
        document.activeElement?.getAttribute('aria-label') ??
        document.activeElement?.textContent ??
        '',
    );
    if (name.test(focused)) return;
  }
  throw new Error(`${name} was not reached by ${key}`);
}

const chip = (page: Page, name: string) => page.locator('.wishes .chip', { hasText: name });

test('wishes shape the plan at once, are remembered, and a kept plan stands before them', async () => {
  const page = await openToday(app);
  await page.getByRole('button', { name: 'Wishes for plans' }).click();
  await chip(page, '5 minutes').first().click();
  await chip(page, 'US Letter').click();
  for (const name of ['stickers', 'crayons', 'scissors', 'glue']) await chip(page, name).click();
  await laidOut(page);
  await page.locator('.paper').first().waitFor();
  const sheets = await codesOf(page);
  // Two of the usual length, or three short ones.
  expect([2, 3]).toContain(sheets.length);
  await page.reload();
  await laidOut(page);
  expect(await codesOf(page)).toEqual(sheets);
  const ratios = await page
    .locator('.day-sheet .paper')
    .evaluateAll((all) => all.map((paper) => paper.clientHeight / paper.clientWidth));
  for (const ratio of ratios) expect(ratio).toBeCloseTo(279.4 / 215.9, 1);
  const things = (await page.locator('.lay-out li').allTextContents()).join();
  expect(things).toMatch(/^(a pencil|nothing: the child points)$/);
  await page.getByRole('button', { name: 'Wishes for plans' }).click();
  const chosen = page.locator('.wishes .chip[data-selected]');
  expect(await chosen.allTextContents()).toEqual(['5 minutes', 'US Letter', 'colour', 'a pencil']);
  expect(await page.getByText('This plan is kept').count()).toBe(0);
  await change(page, 0, 'Give it later');
  const kept = await codesOf(page);
  await page.getByText('This plan is kept').waitFor();
  await chip(page, '20 minutes').click();
  await laidOut(page);
  expect(await codesOf(page)).toEqual(kept);
  await page.getByRole('button', { name: 'Another plan for today' }).click();
  await page.locator('.message:focus').waitFor();
  await laidOut(page);
  expect((await codesOf(page)).length).toBeGreaterThan(2);
});

test('the keyboard alone changes a sheet, takes that back, and gets the PDF', async () => {
  const page = await openToday(app);
  const codes = await codesOf(page);
  await tabTo(page, /^Change: /);
  await page.keyboard.press('Enter');
  await page.getByRole('menu').waitFor();
  await page.keyboard.press('Enter');
  await page.locator('.message:focus').waitFor();
  await laidOut(page);
  expect((await codesOf(page))[0]).not.toBe(codes[0]);
  await tabTo(page, /^Undo$/);
  await page.keyboard.press('Enter');
  await page.getByText('Taken back.').waitFor();
  await laidOut(page);
  expect(await codesOf(page)).toEqual(codes);
  // Back at the same sheet: its change is one stop before what was said.
  await tabTo(page, /^Change: /, 'Shift+Tab');
  expect(
    await sheetAt(page, 0)
      .getByRole('button', { name: /^Change/ })
      .evaluate((button) => button === document.activeElement),
  ).toBe(true);
  await tabTo(page, /^Get the PDF$/);
  const saving = page.waitForEvent('download');
  await page.keyboard.press('Enter');
  expect((await saving).suggestedFilename()).toMatch(/^Fern-.+\.pdf$/);
});

test.each([
  ['light', DESKTOP],
  ['dark', DESKTOP],
  ['light', PHONE],
  ['dark', PHONE],
] as const)(
  'in %s surroundings at %o Today has no fault and fits',
  async (colorScheme, viewport) => {
    const page = await openToday(app, { colorScheme, viewport });
    const fits = async () =>
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(viewport.width);
    expect(await faultsOf(page)).toEqual([]);
    await fits();
    await change(page, 1, 'Something else');
    await page.getByRole('button', { name: 'Wishes for plans' }).click();
    await chip(page, 'US Letter').waitFor();
    expect(await faultsOf(page)).toEqual([]);
    await fits();
    for (const target of await page.locator('main button:visible, main a:visible').all()) {
      const box = await target.boundingBox();
      const name = (await target.textContent()) ?? '';
      expect(Math.min(box?.width ?? 0, box?.height ?? 0), name).toBeGreaterThanOrEqual(24);
    }
    await sheetAt(page, 0)
      .getByRole('button', { name: /^Change/ })
      .click();
    await page.getByRole('menu').waitFor();
    expect(await faultsOf(page, WCAG)).toEqual([]);
  },
);
