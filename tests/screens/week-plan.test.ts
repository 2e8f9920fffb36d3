// Planning a week: for one child or several, kept at once, varied, taken back, and carried on.
import { expect, test } from 'vitest';
import { SKILLS } from '../../src/activities/index.ts';
import { addDays } from '../../src/plan/index.ts';
import type { PlannedSheet } from '../../src/records/index.ts';
import { DEFAULT_PAGE, makeSheet, packOfCodes, packPages } from '../../src/sheets/index.ts';
import { planEntry, resultEntry } from '../record-entries.ts';
import { startApp } from './app.ts';
import { pagesIn, pdfOf } from './files.ts';
import {
  again,
  dayOf,
  keptPlan,
  MONDAY,
  NAMES,
  namesIn,
  openWeek,
  plansKept,
  planWeek,
  rowOf,
  said,
  skillOf,
  TUESDAY,
  weekOf,
} from './week-parts.ts';

const app = startApp();

function planned(seed: number, activity: 'shadows' | 'odd-one-out' = 'shadows'): PlannedSheet {
  const made = makeSheet({
    activity,
    step: 1,
    values: {},
    seed,
    tasks: 2,
    page: DEFAULT_PAGE,
    print: 'colour',
  });
  if (!made.ok) throw new Error(JSON.stringify(made.refusals));
  return { code: made.value.code, why: 'fits' };
}

test('a week is planned for one child: varied, every skill, and still there in the next visit', async () => {
  const page = await openWeek(app);
  await page.getByText('Nothing is planned for this week yet.').waitFor();
  await planWeek(page);
  const week = await weekOf(page, 'Fern');
  expect(week).toHaveLength(5);
  const names = week.flat();
  expect(week.every((day) => day.length >= 2)).toBe(true);
  expect(names.filter((name, place) => name === names[place - 1])).toEqual([]);
  expect(new Set(names.map(skillOf))).toEqual(new Set(SKILLS));
  expect(await plansKept(page)).toBe(5);
  await again(page);
  expect(await page.getByText('Nothing is planned for this week yet.').count()).toBe(0);
  expect(await weekOf(page, 'Fern')).toEqual(week);
});

test('why a sheet is in the plan is told when it is asked for', async () => {
  const page = await openWeek(app);
  await planWeek(page);
  const name = page.locator('.slip-name').first();
  const sheet = (await name.textContent()) ?? '';
  await name.click();
  const card = page.getByRole('dialog', { name: sheet });
  await card
    .getByText(/^The first for “.*”, on the easy side, to see where Fern stands\.$/)
    .waitFor();
  await card.getByText('Lay out:').waitFor();
  await page.keyboard.press('Escape');
  await card.waitFor({ state: 'hidden' });
});

test('one Undo takes the whole week back, and one brings it again', async () => {
  const page = await openWeek(app);
  await planWeek(page);
  const week = await weekOf(page, 'Fern');
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await said(page, /^Taken back\.$/).waitFor();
  await page.getByText('Nothing is planned for this week yet.').waitFor();
  await page.getByRole('button', { name: 'Bring it back' }).click();
  expect(await weekOf(page, 'Fern')).toEqual(week);
});

test('three children have plans of their own, and the week goes onto paper as often as it is planned', async () => {
  const page = await openWeek(app, { names: NAMES });
  await page.getByRole('button', { name: 'All children' }).click();
  await planWeek(page);
  await said(page, /^Planned for Fern, Wren and Moss: \d+ sheets\.$/).waitFor();
  const kept = await Promise.all(
    [1, 2, 3].map((child) =>
      Promise.all([0, 1, 2, 3, 4].map((day) => keptPlan(page, child, addDays(MONDAY, day)))),
    ),
  );
  const codes = kept.flat(2);
  expect(new Set(codes).size).toBe(codes.length);
  for (const nickname of NAMES) {
    expect((await weekOf(page, nickname)).flat().length).toBeGreaterThanOrEqual(10);
  }
  await page.getByText(`: ${codes.length} sheets not done yet.`).waitFor();
  const pdf = await pdfOf(page);
  expect(pdf.name).toBe('3-children-week-of-2026-03-09.pdf');
  const pack = packOfCodes(codes);
  if (!pack.ok) throw new Error(JSON.stringify(pack.refusals));
  expect(pagesIn(pdf.bytes)).toBe([...packPages(pack.value).pages].length);
});

test('one day goes onto paper alone, without what is done', async () => {
  const sheets = [planned(1), planned(2, 'odd-one-out')];
  const [done, open] = sheets.map(({ code }) => code);
  const page = await openWeek(app, {
    entries: [
      planEntry(11, 1, { sheets }),
      planEntry(12, 1, { day: TUESDAY, sheets: [planned(3)] }),
      resultEntry(13, 1, { code: done ?? '' }),
    ],
  });
  await dayOf(page, 'Fern', 0).getByText('done', { exact: true }).waitFor();
  await page.getByRole('button', { name: /Which days$/ }).click();
  await page.getByRole('option', { name: 'Monday 9 March' }).click();
  await page.getByText(': 1 sheet not done yet.').waitFor();
  const pdf = await pdfOf(page);
  expect(pdf.name).toBe('Fern-2026-03-09.pdf');
  const pack = packOfCodes([open ?? '']);
  if (!pack.ok) throw new Error(JSON.stringify(pack.refusals));
  expect(pagesIn(pdf.bytes)).toBe([...packPages(pack.value).pages].length);
});

test('days that are over stay as they were, and what was not done moves on', async () => {
  const missed = planned(1);
  const page = await openWeek(app, {
    entries: [planEntry(11, 1, { sheets: [missed] })],
    today: TUESDAY,
  });
  const monday = dayOf(page, 'Fern', 0);
  await monday.getByText('not done', { exact: true }).waitFor();
  await monday.getByText('moves on to today').waitFor();
  expect(await namesIn(dayOf(page, 'Fern', 1))).toEqual(['Shadows']);
  await planWeek(page);
  expect(await keptPlan(page, 1, MONDAY)).toEqual([missed.code]);
  expect((await keptPlan(page, 1, TUESDAY))[0]).toBe(missed.code);
  await page.clock.setFixedTime(new Date('2026-03-11T09:00'));
  await again(page);
  await dayOf(page, 'Fern', 1).getByText('not done', { exact: true }).first().waitFor();
  await dayOf(page, 'Fern', 0).getByText('moves on to today').waitFor();
  expect((await namesIn(dayOf(page, 'Fern', 2)))[0]).toBe('Shadows');
});

test('what does not move on by itself is put on today with one press', async () => {
  const page = await openWeek(app, {
    entries: [
      planEntry(11, 1, { sheets: [planned(1), planned(2), planned(3)] }),
      planEntry(12, 1, { day: TUESDAY, sheets: [], at: Date.parse('2026-03-10T08:00') }),
    ],
    today: TUESDAY,
  });
  const monday = dayOf(page, 'Fern', 0);
  const move = monday.getByRole('button', { name: 'Move to today' });
  await move.first().waitFor();
  expect(await move.count()).toBe(3);
  await move.nth(1).click();
  await said(page, /^Shadows is on Tuesday now\.$/).waitFor();
  expect(await keptPlan(page, 1, TUESDAY)).toEqual([planned(2).code]);
  expect(await keptPlan(page, 1, MONDAY)).toHaveLength(3);
  await page.waitForFunction(() => document.querySelectorAll('.slip-do').length === 2);
});

test('planned anew, what is done stays, and the wish for a skill is followed', async () => {
  const done = planned(1);
  const page = await openWeek(app, {
    entries: [planEntry(11, 1, { sheets: [done] }), resultEntry(12, 1, { code: done.code })],
  });
  await dayOf(page, 'Fern', 0).getByText('done', { exact: true }).waitFor();
  const times = async () =>
    (await weekOf(page, 'Fern')).flat().filter((name) => skillOf(name) === 'memory').length;
  await planWeek(page);
  const before = await times();
  expect((await weekOf(page, 'Fern'))[0]?.[0]).toBe('Shadows');
  await page.getByRole('button', { name: /^For Fern, Monday to Friday/ }).click();
  await page.getByRole('button', { name: 'remembering' }).click();
  await planWeek(page);
  expect(await times()).toBeGreaterThan(before);
  expect(await keptPlan(page, 1, MONDAY)).toContain(done.code);
});

test('only the days wished for are planned, and the wish is remembered', async () => {
  const page = await openWeek(app);
  for (const day of ['Tuesday', 'Thursday', 'Friday']) {
    await page.locator('.chip', { hasText: day }).click();
  }
  await page.getByRole('button', { name: 'For Fern, Monday, Wednesday, about' }).waitFor();
  await planWeek(page);
  await again(page);
  expect(await weekOf(page, 'Fern')).toHaveLength(2);
  expect(await page.locator('thead .day-name').allTextContents()).toEqual(['Monday', 'Wednesday']);
  expect(await plansKept(page)).toBe(2);
});

test('at the weekend it is the week after that is planned, and one can look back', async () => {
  const page = await openWeek(app, { today: '2026-03-14' });
  await page.getByRole('heading', { name: 'Week of 16 March 2026' }).waitFor();
  await page.getByRole('button', { name: 'Week before' }).click();
  await page.getByText('None of these days is left in this week.').waitFor();
  await page.getByRole('button', { name: 'Back to this week' }).click();
  await planWeek(page);
  expect(await keptPlan(page, 1, '2026-03-16')).not.toEqual([]);
  const slips = rowOf(page, 'Fern').locator('.slip');
  await expect.poll(() => slips.count()).toBeGreaterThanOrEqual(10);
});

test('a child without a plan is planned for beside others, whose plans stay', async () => {
  const page = await openWeek(app, { names: NAMES });
  await planWeek(page);
  const fern = await weekOf(page, 'Fern');
  await page.getByRole('button', { name: /^For Fern, Monday/ }).click();
  await page.getByRole('button', { name: 'Wren', exact: true }).click();
  await page.getByRole('button', { name: 'Plan the week for Wren' }).click();
  await said(page, /^Planned for Wren: /).waitFor();
  expect(await weekOf(page, 'Fern')).toEqual(fern);
  expect((await weekOf(page, 'Wren')).flat().length).toBeGreaterThanOrEqual(10);
});

test('where there is no child one is told how to begin', async () => {
  const page = await app.open('week', { waitFor: 'child' });
  await page.getByText('No child yet. A nickname is enough to begin.').waitFor();
  expect(await page.getByRole('button', { name: 'Plan the week' }).count()).toBe(0);
});
