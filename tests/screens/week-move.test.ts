// Moving sheets in the week: with the mouse, with the keyboard, from the card of a sheet; each kept, each taken back.
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import type { ActivityId } from '../../src/activities/index.ts';
import type { Entry, PlannedSheet } from '../../src/records/index.ts';
import { DEFAULT_PAGE, makeSheet } from '../../src/sheets/index.ts';
import { planEntry } from '../record-entries.ts';
import { PHONE, startApp } from './app.ts';
import {
  again,
  dayOf,
  keptPlan,
  MONDAY,
  namesIn,
  openWeek,
  planWeek,
  said,
  TUESDAY,
  weekOf,
} from './week-parts.ts';

const app = startApp();

function planned(activity: ActivityId): PlannedSheet {
  const made = makeSheet({
    activity,
    step: 1,
    values: {},
    seed: 5,
    tasks: 2,
    page: DEFAULT_PAGE,
    print: 'colour',
  });
  if (!made.ok) throw new Error(JSON.stringify(made.refusals));
  return { code: made.value.code, why: 'fits' };
}

const PLANS: readonly Entry[] = [
  planEntry(11, 1, { sheets: ['shadows', 'tangle', 'odd-one-out'].map(asPlanned) }),
  planEntry(12, 1, { day: TUESDAY, sheets: ['by-key', 'size-order'].map(asPlanned) }),
];

function asPlanned(activity: string): PlannedSheet {
  return planned(activity as ActivityId);
}

const BEFORE = [
  ['Shadows', 'Tangle', 'Odd one out'],
  ['By key', 'Smallest to biggest'],
];

async function openPlanned(options: Parameters<typeof openWeek>[1] = {}): Promise<Page> {
  const page = await openWeek(app, { entries: PLANS, ...options });
  await page.locator('.slip').first().waitFor();
  return page;
}

const slip = (page: Page, name: string) => page.getByRole('row', { name, exact: true });
const twoDays = async (page: Page) => (await weekOf(page, 'Fern')).slice(0, 2);

/** What a reader hears of the place that a dragged sheet would be dropped at. */
function dropPlace(page: Page): Promise<string> {
  return page.evaluate(() => {
    const place = document.activeElement;
    if (place?.getAttribute('aria-roledescription') !== 'drop indicator') return '';
    const ids = place.getAttribute('aria-labelledby')?.split(' ') ?? [place.id];
    const words = ids.map((id) => document.getElementById(id)?.getAttribute('aria-label'));
    return words.join(' ');
  });
}

/** Opens the card of a sheet and presses one of its buttons. */
async function press(page: Page, sheet: string, button: string): Promise<void> {
  await page.locator('.slip-name', { hasText: sheet }).click();
  await page.getByRole('button', { name: button }).click();
}

async function undone(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await said(page, /^Taken back\.$/).waitFor();
  await expect.poll(() => twoDays(page)).toEqual(BEFORE);
}

test('a sheet is dragged to another day with the mouse, that is kept, and taken back', async () => {
  const page = await openPlanned();
  expect(await twoDays(page)).toEqual(BEFORE);
  await slip(page, 'Tangle').dragTo(slip(page, 'Smallest to biggest'), {
    sourcePosition: { x: 60, y: 40 },
    targetPosition: { x: 60, y: 4 },
  });
  await said(page, /^Tangle is on Tuesday now\.$/).waitFor();
  const after = [
    ['Shadows', 'Odd one out'],
    ['By key', 'Tangle', 'Smallest to biggest'],
  ];
  expect(await twoDays(page)).toEqual(after);
  expect((await keptPlan(page, 1, TUESDAY))[1]).toBe(planned('tangle').code);
  await undone(page);
  await page.getByRole('button', { name: 'Bring it back' }).click();
  await expect.poll(() => twoDays(page)).toEqual(after);
  await again(page);
  expect(await twoDays(page)).toEqual(after);
});

test('a sheet is dragged to a day without any', async () => {
  const page = await openPlanned();
  await slip(page, 'By key').dragTo(dayOf(page, 'Fern', 3).getByRole('grid'), {
    sourcePosition: { x: 60, y: 40 },
  });
  await said(page, /^By key is on Thursday now\.$/).waitFor();
  expect(await namesIn(dayOf(page, 'Fern', 3))).toEqual(['By key']);
});

test('a sheet is dragged with the keyboard alone, that is kept, and taken back', async () => {
  const page = await openPlanned();
  await slip(page, 'Tangle').focus();
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('ArrowRight');
  expect(await page.evaluate(() => document.activeElement?.className)).toBe('grip');
  await page.keyboard.press('Enter');
  await expect.poll(() => dropPlace(page)).toBe('Insert between Tangle and Odd one out');
  await page.keyboard.press('Tab');
  await expect.poll(() => dropPlace(page)).toBe('Drop on Fern, Tuesday 10 March');
  await page.keyboard.press('ArrowDown');
  await expect.poll(() => dropPlace(page)).toBe('Insert before By key');
  await page.keyboard.press('Enter');
  await said(page, /^Tangle is on Tuesday now\.$/).waitFor();
  expect((await weekOf(page, 'Fern'))[1]).toEqual(['Tangle', 'By key', 'Smallest to biggest']);
  expect((await keptPlan(page, 1, TUESDAY))[0]).toBe(planned('tangle').code);
  await undone(page);
});

test('from its card a sheet goes to another day, comes earlier or later, and is taken out', async () => {
  const page = await openPlanned();
  await press(page, 'Tangle', 'Move to Tuesday');
  await said(page, /^Tangle is on Tuesday now\.$/).waitFor();
  expect((await twoDays(page))[1]).toEqual(['By key', 'Smallest to biggest', 'Tangle']);
  await press(page, 'Tangle', 'Earlier');
  await said(page, /^Tangle comes as number 2/).waitFor();
  expect((await twoDays(page))[1]).toEqual(['By key', 'Tangle', 'Smallest to biggest']);
  await press(page, 'By key', 'Later');
  await said(page, /^By key comes as number 2/).waitFor();
  expect((await twoDays(page))[1]).toEqual(['Tangle', 'By key', 'Smallest to biggest']);
  await press(page, 'Tangle', 'Take out');
  await said(page, /^Tangle is taken out of Tuesday\.$/).waitFor();
  expect(await twoDays(page)).toEqual([
    ['Shadows', 'Odd one out'],
    ['By key', 'Smallest to biggest'],
  ]);
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await expect.poll(async () => (await twoDays(page))[1]).toHaveLength(3);
});

test('the same activity twice in a row is let be, and said beside it', async () => {
  const page = await openWeek(app, {
    entries: [
      planEntry(11, 1, { sheets: [asPlanned('shadows'), asPlanned('tangle')] }),
      planEntry(12, 1, { day: TUESDAY, sheets: [{ ...asPlanned('tangle'), code: other() }] }),
    ],
  });
  const note = page.getByText('the same activity as just before');
  await dayOf(page, 'Fern', 1).getByText('the same activity as just before').waitFor();
  expect(await note.count()).toBe(1);
  await dayOf(page, 'Fern', 0).locator('.slip-name', { hasText: 'Tangle' }).click();
  await page.getByRole('button', { name: 'Earlier' }).click();
  await note.waitFor({ state: 'detached' });
});

/** Another sheet of the same activity as `planned('tangle')`. */
function other(): string {
  const made = makeSheet({
    activity: 'tangle',
    step: 1,
    values: {},
    seed: 6,
    tasks: 2,
    page: DEFAULT_PAGE,
    print: 'colour',
  });
  if (!made.ok) throw new Error(JSON.stringify(made.refusals));
  return made.value.code;
}

test('on a phone a sheet is moved from its card, one child at a time', async () => {
  const page = await openPlanned({
    names: ['Fern', 'Wren', 'Moss'],
    viewport: PHONE,
    hasTouch: true,
    isMobile: true,
  });
  const tuesday = page.getByRole('region', { name: 'Tuesday 10 March' });
  await page.locator('.slip-name', { hasText: 'Tangle' }).tap();
  await page.getByRole('button', { name: 'Move to Tuesday' }).tap();
  await said(page, /^Tangle is on Tuesday now\.$/).waitFor();
  expect(await namesIn(tuesday)).toEqual(['By key', 'Smallest to biggest', 'Tangle']);
  await page.getByRole('button', { name: /^For Fern, Monday/ }).tap();
  await page.getByRole('button', { name: 'Wren', exact: true }).tap();
  await page.getByRole('button', { name: 'Next child' }).tap();
  await tuesday.getByText('Nothing planned').waitFor();
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(PHONE.width);
});

test('where nothing can be kept that is said, and what was planned and moved is kept once it can', async () => {
  const page = await openWeek(app);
  await page.evaluate(() => {
    const { add } = IDBObjectStore.prototype;
    document.addEventListener('room', () => {
      IDBObjectStore.prototype.add = add;
    });
    IDBObjectStore.prototype.add = () => {
      throw new DOMException('no room', 'QuotaExceededError');
    };
  });
  await page.getByRole('button', { name: 'Plan the week' }).click();
  const fault = page.getByRole('alert').filter({ hasText: 'could not be kept yet' });
  await fault.waitFor({ timeout: 30_000 });
  const week = await weekOf(page, 'Fern');
  const [first = ''] = week[0] ?? [];
  await dayOf(page, 'Fern', 0).locator('.slip-name').first().click();
  await page.getByRole('button', { name: 'Move to Friday' }).click();
  await expect.poll(async () => (await weekOf(page, 'Fern'))[4]).toContain(first);
  await fault.waitFor();
  expect(await keptPlan(page, 1, MONDAY)).toEqual([]);
  await page.evaluate(() => document.dispatchEvent(new Event('room')));
  const moved = await weekOf(page, 'Fern');
  await page.getByRole('button', { name: 'Try again' }).click();
  await said(page, / is on Friday now\.$/).waitFor();
  await again(page);
  expect(await weekOf(page, 'Fern')).toEqual(moved);
});

test('a plan that is being made for many can be stopped, and nothing of it is kept', async () => {
  const names = Array.from({ length: 30 }, (_, at) => `Fern ${at + 1}`);
  const page = await openWeek(app, { names });
  await page.getByRole('button', { name: 'All children' }).click();
  await page.getByRole('button', { name: 'Plan the week' }).click();
  await page.getByText(/^Planning for Fern \d+, \d+ of 30 …$/).waitFor();
  await page.getByRole('button', { name: 'Stop' }).click();
  await page.getByRole('button', { name: 'Plan the week' }).waitFor();
  await page.getByText('Nothing is planned for this week yet.').waitFor();
  await page.getByRole('button', { name: 'Only Fern 1', exact: true }).click();
  await planWeek(page);
  expect(await keptPlan(page, 2, MONDAY)).toEqual([]);
});
