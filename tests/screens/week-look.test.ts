// The Week screen wide and narrow, by day and by night: no fault that axe-core finds, nothing sticks out, many children fit.
import { describe, expect, test } from 'vitest';
import { DESKTOP, PHONE, startApp } from './app.ts';
import { faultsOf, WCAG } from './faults.ts';
import { again, NAMES, openWeek, planWeek, rowOf, said, TUESDAY } from './week-parts.ts';

const app = startApp();
const MANY = Array.from({ length: 30 }, (_, at) => `${NAMES[at % NAMES.length]} ${at + 1}`);

describe.each([
  ['light', DESKTOP],
  ['dark', DESKTOP],
  ['light', PHONE],
  ['dark', PHONE],
] as const)('in %s surroundings at %o', (colorScheme, viewport) => {
  test('it has no fault and fits: before planning, planned, with days that are over, with a card open', async () => {
    const page = await openWeek(app, { names: NAMES, colorScheme, viewport });
    const isFitting = async () => {
      expect(await faultsOf(page)).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(viewport.width);
    };
    await page.getByRole('button', { name: 'All children' }).click();
    await isFitting();
    await planWeek(page);
    await isFitting();
    await page.clock.setFixedTime(new Date(`${TUESDAY}T09:00`));
    await again(page);
    await page.getByText('not done', { exact: true }).first().waitFor();
    await isFitting();
    for (const target of await page.locator('main button:visible').all()) {
      const box = await target.boundingBox();
      const name = (await target.textContent()) ?? '';
      expect(Math.min(box?.width ?? 0, box?.height ?? 0), name).toBeGreaterThanOrEqual(24);
    }
    await page.locator('.slip-name').last().click();
    await page.getByRole('dialog').waitFor();
    expect(await faultsOf(page, WCAG)).toEqual([]);
  });
});

test('the browser’s own print command gives the whole plan dark on white, without what is pressed', async () => {
  const page = await openWeek(app, { names: NAMES, colorScheme: 'dark' });
  await page.getByRole('button', { name: 'All children' }).click();
  await planWeek(page);
  await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
  for (const button of await page.getByRole('button').all()) {
    expect(await button.getAttribute('class')).toBe('slip-name');
  }
  const cut = await page
    .locator('.calendar')
    .evaluate((calendar) => calendar.scrollHeight - calendar.clientHeight);
  expect(cut).toBeLessThanOrEqual(0);
  const ink = await page.locator('.week').evaluate((week) => getComputedStyle(week).color);
  expect(ink).toBe('rgb(20, 38, 42)');
});

test('from a phone the plan of all chosen children is printed, and then the child turned to is there again', async () => {
  const page = await openWeek(app, { names: NAMES, viewport: PHONE });
  await page.getByRole('button', { name: 'All children' }).click();
  await planWeek(page);
  await page.getByRole('button', { name: 'Next child' }).click();
  const printing = (event: string) =>
    page.evaluate((name) => window.dispatchEvent(new Event(name)), event);
  await printing('beforeprint');
  expect(await page.locator('.calendar tbody th').allTextContents()).toEqual([...NAMES]);
  await printing('afterprint');
  expect(await page.locator('.day-stack .pager').textContent()).toContain(NAMES[1]);
});

test('with thirty children the calendar scrolls inside, its head and the names stay, and a sheet is moved where one is', async () => {
  const page = await openWeek(app, { names: MANY, viewport: { width: 1024, height: 768 } });
  await page.getByRole('button', { name: 'All children' }).click();
  for (const day of ['Saturday', 'Sunday']) {
    await page.locator('.chip', { hasText: day }).click();
  }
  await planWeek(page);
  await rowOf(page, 'Moss 30').locator('.slip').first().waitFor();
  const calendar = page.locator('.calendar');
  await calendar.evaluate((place) => place.scrollTo(400, 3000));
  const frame = await calendar.boundingBox();
  const head = await page.locator('thead th').nth(3).boundingBox();
  const name = await page.getByRole('rowheader').nth(12).boundingBox();
  expect(Math.abs((head?.y ?? 0) - (frame?.y ?? 0))).toBeLessThanOrEqual(3);
  expect(name?.x).toBe(frame?.x);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(1024);
  await rowOf(page, 'Moss 12').locator('.slip-name').last().click();
  const moving = page.getByRole('button', { name: 'Move to today' });
  await moving.waitFor();
  const scrolled = () => calendar.evaluate((place) => [place.scrollLeft, place.scrollTop]);
  const before = await scrolled();
  await moving.click();
  await said(page, / is on Monday now\.$/).waitFor();
  expect(await scrolled()).toEqual(before);
});
