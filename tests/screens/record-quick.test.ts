// A sheet of today is recorded with three taps: picked, all right, saved.
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { planEntry, resultEntry } from '../record-entries.ts';
import { startApp } from './app.ts';
import { keptEntries, putEntries } from './kept-entries.ts';
import {
  addChild,
  codeField,
  codeOfElsewhere,
  codeOfSheet,
  dayFromToday,
  entriesOf,
  keptResults,
} from './record-parts.ts';

const app = startApp();
const [FIRST, SECOND, THIRD, FOURTH] = [20, 21, 22, 23].map(codeOfElsewhere);
const SHEET = 'Odd one out, step 4';

/** The Record screen of a child with plans and results, by days from today. */
async function openPlanned(
  plans: Readonly<Record<number, readonly (string | undefined)[]>>,
  done: Readonly<Record<string, number>> = {},
): Promise<Page> {
  const page = await app.open('record', { waitFor: 'record' });
  await addChild(page, 'Fern');
  const [fern] = await keptEntries(page);
  if (fern?.kind !== 'child') throw new Error('expected a child');
  const { child } = fern;
  const planned = Object.entries(plans).map(([days, codes], place) => ({
    ...planEntry(place + 1, 1, {
      day: dayFromToday(Number(days)),
      sheets: codes.map((code = '') => ({ code, why: 'nearest' as const })),
    }),
    child,
  }));
  const results = Object.entries(done).map(([code, days], place) => ({
    ...resultEntry(place + 50, 1, { code, day: dayFromToday(days) }),
    child,
  }));
  await putEntries(page, [...planned, ...results]);
  await page.reload();
  await page.getByText('Today’s sheets').waitFor();
  return page;
}

function picksOf(page: Page, label: string) {
  return page.getByRole('radiogroup', { name: label }).getByRole('radio');
}

async function recordCounting(page: Page): Promise<number> {
  await page.evaluate(() => {
    const counted = { taps: 0 };
    Object.assign(window, { counted });
    window.addEventListener('pointerdown', () => (counted.taps += 1), true);
  });
  await picksOf(page, 'Today’s sheets').first().click();
  await page.getByRole('radio', { name: 'All right' }).click();
  await page.getByRole('button', { name: 'Save the record' }).click();
  await page.getByText(/^Saved for Fern/).waitFor();
  return page.evaluate(() => (window as unknown as { counted: { taps: number } }).counted.taps);
}

test('a sheet planned for today is recorded as a whole with three taps', async () => {
  const page = await openPlanned({ 0: [FIRST, SECOND] });
  expect(await recordCounting(page)).toBe(3);
  const [kept] = await keptResults(page);
  expect(kept).toMatchObject({ code: FIRST, day: dayFromToday(0) });
  expect(kept?.tasks.map(({ outcome }) => outcome)).toEqual(['right', 'right', 'right']);
});

test('where nothing is planned, what is suggested for today is there to be picked', async () => {
  const page = await app.open('record', { waitFor: 'record' });
  await addChild(page, 'Fern');
  await picksOf(page, 'Today’s sheets').first().waitFor();
  expect(await picksOf(page, 'Today’s sheets').count()).toBeGreaterThanOrEqual(2);
  expect(await recordCounting(page)).toBe(3);
  await picksOf(page, 'Today’s sheets')
    .filter({ hasText: /: recorded$/ })
    .waitFor();
});

test('what was done is marked in words, and of the last days only what was not done is there', async () => {
  const page = await openPlanned(
    { 0: [FIRST, SECOND], [-1]: [THIRD, FIRST], [-3]: [FOURTH], [-9]: [codeOfElsewhere(24)] },
    { [FIRST ?? '']: 0, [FOURTH ?? '']: -2 },
  );
  await picksOf(page, 'Today’s sheets')
    .filter({ hasText: /: recorded$/ })
    .waitFor();
  const texts = await picksOf(page, 'Today’s sheets').allTextContents();
  expect(texts).toEqual([`${SHEET}: recorded`, SHEET]);
  const earlier = picksOf(page, 'Of the last days, not recorded yet');
  expect(await earlier.allTextContents()).toEqual([SHEET]);
  await earlier.click();
  await page.getByText(`${SHEET}: 3 tasks.`).waitFor();
  expect(await codeField(page).inputValue()).toBe(THIRD);
});

test('a day for which nothing is planned has nothing to pick', async () => {
  const page = await app.open('record', { waitFor: 'record' });
  await addChild(page, 'Fern');
  const [fern] = await keptEntries(page);
  const plan = planEntry(1, 1, { day: dayFromToday(0), sheets: [] });
  await putEntries(page, [{ ...plan, child: fern?.kind === 'child' ? fern.child : '' }]);
  await page.reload();
  await codeField(page).waitFor();
  expect(await page.getByText('Today’s sheets').count()).toBe(0);
});

test('after picking the focus is at the outcomes, and Save is in view on a phone', async () => {
  const page = await openPlanned({ 0: [FIRST] });
  await page.setViewportSize({ width: 360, height: 740 });
  await picksOf(page, 'Today’s sheets').click();
  await page.waitForFunction(() => document.activeElement?.textContent === 'All right');
  for (const name of ['All right', 'Save the record']) {
    const box = await page.getByText(name, { exact: true }).boundingBox();
    expect(box?.y ?? -1, name).toBeGreaterThanOrEqual(0);
    expect((box?.y ?? 0) + (box?.height ?? 740), name).toBeLessThanOrEqual(740);
  }
});

test('a code that is typed keeps the focus where it is typed', async () => {
  const page = await openPlanned({ 0: [FIRST] });
  await codeField(page).fill(SECOND ?? '');
  await page.getByText(`${SHEET}: 3 tasks.`).waitFor();
  expect(await codeField(page).evaluate((field) => field === document.activeElement)).toBe(true);
});

test('an address with a code brings its sheet, and the code leaves the address', async () => {
  const page = await openPlanned({ 0: [FIRST] });
  await page.goto(`${app.address()}#record?code=${SECOND}`);
  await page.getByText(`${SHEET}: 3 tasks.`).waitFor();
  await page.waitForFunction(() => document.activeElement?.textContent === 'All right');
  expect(await page.evaluate(() => location.hash)).toBe('#record');
  await page.getByRole('link', { name: 'Make' }).click();
  await page.evaluate((code) => location.assign(`#record?code=${code}`), FIRST);
  await page.getByText(`${SHEET}: 3 tasks.`).waitFor();
  expect(await codeField(page).inputValue()).toBe(FIRST);
  expect(await page.evaluate(() => location.hash)).toBe('#record');
});

test('what was noted is left when another child is chosen, and the focus stays at the names', async () => {
  const page = await openPlanned({ 0: [codeOfSheet('copy-pattern', 3)] });
  await addChild(page, 'Wren');
  await page.getByRole('radio', { name: 'Fern' }).click();
  await picksOf(page, 'Today’s sheets').click();
  await page.getByRole('radio', { name: 'All right' }).click();
  await page.getByRole('radio', { name: 'Wren' }).click();
  await page.getByRole('heading', { name: 'Record a sheet for Wren' }).waitFor();
  expect(await page.getByRole('radio', { name: 'All right' }).isChecked()).toBe(false);
  expect(await page.locator('.child-choice :focus').count()).toBe(1);
  expect(await entriesOf(page).count()).toBe(0);
});
