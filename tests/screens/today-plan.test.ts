// What Today shows of a day, printing it, and how what was done or not done changes the day.
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { packOfCodes, packPages } from '../../src/sheets/index.ts';
import { childEntry, resultEntry } from '../record-entries.ts';
import { startApp } from './app.ts';
import { pagesIn, pdfOf } from './files.ts';
import { keptEntries, putEntries } from './kept-entries.ts';
import {
  change,
  codesIn,
  codesOf,
  laidOut,
  openToday,
  plansOf,
  sheetAt,
  undo,
} from './today-parts.ts';

const app = startApp();
const MORNING = new Date('2026-03-09T09:00');
const DAY_MS = 86_400_000;

/** Today as it is so many days after `MORNING`. */
async function daysLater(page: Page, days: number): Promise<void> {
  await page.clock.setFixedTime(MORNING.getTime() + days * DAY_MS);
  await page.reload();
  await laidOut(page);
}

/** Fern's first day, 9 March 2026. */
async function openOnMonday(): Promise<Page> {
  const page = await app.open('today', { waitFor: 'child' });
  await putEntries(page, [childEntry(1, 1, { nickname: 'Fern' })]);
  await daysLater(page, 0);
  return page;
}

/** Records the sheets for Fern past the screens. */
function record(page: Page, codes: readonly string[], day: string): Promise<void> {
  return putEntries(
    page,
    codes.map((code, place) => resultEntry(place + 2, 1, { code, day })),
  );
}

test('without a child Today leads to Record', async () => {
  const page = await app.open('today', { waitFor: 'child' });
  const link = page.getByRole('link', { name: 'Add a child in Record' });
  expect(await link.getAttribute('href')).toBe('#record');
  expect(await page.locator('.today-day').count()).toBe(0);
});

test('a new child has two to four sheets, each with its picture, a reason, a length and what to lay out', async () => {
  const page = await openToday(app);
  const sheets = await page.locator('.day-sheets > li').all();
  expect(sheets.length).toBeGreaterThanOrEqual(2);
  expect(sheets.length).toBeLessThanOrEqual(4);
  for (const sheet of sheets) {
    expect(await sheet.locator('.sheet svg [data-role="task"]').count()).toBeGreaterThan(0);
    const lines = await sheet.locator('.day-label > p').allTextContents();
    const label = lines.join('\n').replaceAll('\u00a0', ' ');
    expect(label).toMatch(/^with .+ · step \d+ of \d+$/m);
    expect(label).toMatch(/^The first for “.+”, on the easy side, to see where Fern stands\.$/m);
    expect(label).toMatch(/^about \d+\sminutes? · \d+ tasks?$/m);
    expect(label).toMatch(/^Lay out .+\.$/m);
  }
  const sum = await page.locator('.day-sum').textContent();
  expect(sum).toMatch(new RegExp(`^${sheets.length} sheets, about \\d+\\sminutes\\.$`));
  expect(await page.locator('.lay-out li').count()).toBeGreaterThan(0);
  // Nothing is kept by looking at a plan.
  expect(await plansOf(page)).toEqual(new Map());
});

test('an empty address opens Today once a child is remembered, with the same sheets', async () => {
  const page = await openToday(app);
  const codes = await codesOf(page);
  await page.goto('about:blank');
  await page.goto(app.address());
  await laidOut(page);
  expect(new URL(page.url()).hash).toBe('#today');
  expect(await codesOf(page)).toEqual(codes);
});

test('one tap gives all sheets as a PDF with answers and the adult’s page, and keeps the plan once', async () => {
  const page = await openOnMonday();
  const codes = await codesOf(page);
  const pack = packOfCodes(codes);
  if (!pack.ok) throw new Error(JSON.stringify(pack.refusals));
  const expected = [...packPages(pack.value).pages].length;
  const pdf = await pdfOf(page);
  expect(pdf.name).toBe('Fern-2026-03-09.pdf');
  expect(pagesIn(pdf.bytes)).toBe(expected);
  await laidOut(page);
  expect(codesIn((await plansOf(page)).get('2026-03-09'))).toEqual(codes);
  const { length } = await keptEntries(page);
  await page.evaluate(() => {
    window.print = () => document.body.setAttribute('data-printing', 'yes');
  });
  await page.getByRole('button', { name: 'Print', exact: true }).click();
  await page.locator('body[data-printing]').waitFor();
  expect(pagesIn(await page.pdf({ preferCSSPageSize: true }))).toBe(expected);
  expect(await keptEntries(page)).toHaveLength(length);
  expect(await codesOf(page)).toEqual(codes);
});

test('a recorded sheet is shown as done, is not printed, and nothing else changes', async () => {
  const page = await openOnMonday();
  const [first = '', ...rest] = await codesOf(page);
  await record(page, [first], '2026-03-09');
  await page.reload();
  await laidOut(page);
  const done = sheetAt(page, 0);
  expect(await done.locator('.day-done').textContent()).toBe('Done');
  const link = done.getByRole('link', { name: 'See it in Record' });
  expect(await link.getAttribute('href')).toBe('#record');
  expect(await done.getByRole('button').count()).toBe(0);
  expect(await codesOf(page)).toEqual(rest);
  await page.getByText(`${rest.length} of ${rest.length + 1} sheets left, about`).waitFor();
  const pack = packOfCodes(rest);
  if (!pack.ok) throw new Error(JSON.stringify(pack.refusals));
  expect(pagesIn((await pdfOf(page)).bytes)).toBe([...packPages(pack.value).pages].length);
  await record(page, [first, ...rest], '2026-03-09');
  await page.reload();
  await page.getByText('and all of it is done.').waitFor();
  expect(await page.getByRole('button', { name: 'Get the PDF' }).count()).toBe(0);
});

test('the way to Record carries the code of the sheet', async () => {
  const page = await openToday(app);
  const [code = ''] = await codesOf(page);
  await page
    .getByRole('link', { name: /^Record how it went/ })
    .first()
    .click();
  await page.getByRole('button', { name: 'Add a child' }).waitFor();
  await page.locator('.sheet svg').first().waitFor();
  expect(await page.getByRole('textbox', { name: 'Code printed on the sheet' }).inputValue()).toBe(
    code,
  );
  expect(await page.locator('nav a[aria-current="page"]').textContent()).toBe('Record');
});

test('what was printed and not done leads the next day; put off again, it leads the day after', async () => {
  const page = await openOnMonday();
  const [done = '', first = '', second = ''] = await codesOf(page);
  await pdfOf(page);
  await record(page, [done], '2026-03-09');
  await daysLater(page, 1);
  expect((await codesOf(page)).slice(0, 2)).toEqual([first, second]);
  await sheetAt(page, 0).getByText('Planned before, and not done yet.').waitFor();
  const tuesday = await codesOf(page);
  expect(await change(page, 0, 'Not today')).toMatch(
    / is put off again, and planned for tomorrow\.$/,
  );
  expect(await codesOf(page)).toEqual(tuesday.slice(1));
  expect(codesIn((await plansOf(page)).get('2026-03-11'))).toEqual([first]);
  await undo(page);
  expect(await codesOf(page)).toEqual(tuesday);
  expect((await plansOf(page)).has('2026-03-11')).toBe(false);
  await page.getByRole('button', { name: 'Bring it back' }).click();
  await page.getByText('It is back.').waitFor();
  await daysLater(page, 2);
  const wednesday = await codesOf(page);
  expect(wednesday.slice(0, 2)).toEqual([first, second]);
  expect(wednesday.length).toBeGreaterThanOrEqual(2);
});
