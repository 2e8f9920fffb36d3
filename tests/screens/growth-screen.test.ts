// Growth on the screen: nothing where nothing is known, each skill with its course, what is mixed up, and no fault.
import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import type { Entry } from '../../src/records/index.ts';
import { DESKTOP, PHONE, startApp } from './app.ts';
import { faultsOf } from './faults.ts';
import { CHILD, openGrowth, redForOrange, UNREADABLE, weeksOfRecords } from './growth-records.ts';

const app = startApp();
const MOST_STOPS = 40;
let weeks: readonly Entry[] = [];
let entries: readonly Entry[] = [];
beforeAll(() => {
  weeks = weeksOfRecords();
  entries = [CHILD, ...weeks, ...redForOrange(), UNREADABLE];
});

const table = (page: Page, name: string | RegExp) => page.getByRole('table', { name });

test('without a child it leads to one', async () => {
  const page = await app.open('growth', { waitFor: 'child' });
  await page.getByRole('link', { name: 'Add a child in Record' }).click();
  await page.getByRole('button', { name: 'Add a child' }).waitFor();
});

test('of a child without records it says so, and shows neither a course nor a report', async () => {
  const page = await openGrowth(app, [CHILD]);
  await page.getByText('Nothing is recorded of Fern yet.').waitFor();
  await page.getByText('This is play and practice, not a test.').waitFor();
  expect(await page.getByRole('img').count()).toBe(0);
  expect(await page.getByRole('button', { name: 'Print' }).count()).toBe(0);
});

test('skills that were met have steps and a course in words, the others one line', async () => {
  const page = await openGrowth(app, [CHILD, ...weeks.slice(0, 2)]);
  const skills = page.locator('.skill');
  expect(await skills.count()).toBe(6);
  const unmet = await page.getByText('No sheet of this skill is recorded yet.').count();
  expect(await skills.filter({ hasText: /step\s\d+ of\s\d+/ }).count()).toBe(6 - unmet);
  expect(unmet).toBeGreaterThan(0);
});

test('the head says how much is known, and the course of each skill is told in a sentence', async () => {
  const page = await openGrowth(app, entries);
  await page
    .getByText(/^112 sheets on 24 days, from 7 September 2026 to 23 October 2026\./)
    .waitFor();
  await page.getByText('One record has a code that this version cannot read.').waitFor();
  const charts = await page.getByRole('img').all();
  expect(charts).toHaveLength(6);
  for (const chart of charts) {
    expect(await chart.getAttribute('aria-label')).toMatch(
      /from 7 September 2026 to 25 October 2026, in steps of .+: step\s\d+ fitted at first, step\s\d+ of\s\d+ fits now/,
    );
  }
});

test('the course is there as a table, opened without a mouse', async () => {
  const page = await openGrowth(app, entries);
  const fold = page.getByRole('button', { name: 'Show as table: telling apart' });
  await fold.focus();
  await page.keyboard.press('Enter');
  const rows = table(page, /^Telling apart, week by week/).getByRole('row');
  // Seven weeks under one row of headings.
  expect(await rows.count()).toBe(8);
  await rows.last().getByRole('rowheader', { name: '25 October 2026' }).waitFor();
});

test('pairs are counted, marked in words where they are more than chance, and seldom ones folded', async () => {
  const page = await openGrowth(app, entries);
  const often = table(page, 'Pairs that were mixed up').getByRole('row', {
    name: 'orange with red',
  });
  expect(await often.textContent()).toMatch(
    /\d+ times out of \d+ chances.*more often than by chance/,
  );
  const fold = page.getByRole('button', { name: /pairs? (was|were) mixed up once or twice$/ });
  const seldom = table(page, /mixed up once or twice$/);
  expect(await seldom.isVisible()).toBe(false);
  await fold.click();
  await seldom.waitFor();
});

test('where two colours are mixed up it says so calmly, and where nothing was noted how to note it', async () => {
  const page = await openGrowth(app, entries);
  const watch = page.getByRole('region', { name: 'Worth a look' });
  expect(await watch.textContent()).toContain('it says nothing about the eyes');
  const calm = await openGrowth(app, [CHILD, ...weeks]);
  await calm.getByText('Nothing was noted in the last half year.').waitFor();
  expect(await calm.getByRole('region', { name: 'Worth a look' }).count()).toBe(0);
});

test('all of it is reached without a mouse, and what has the focus shows it', async () => {
  const page = await openGrowth(app, entries);
  const reached: string[] = [];
  for (let stop = 0; stop < MOST_STOPS; stop++) {
    await page.keyboard.press('Tab');
    const { name, ring } = await page.evaluate(focused);
    expect(ring, name).toBeGreaterThanOrEqual(2);
    reached.push(name);
    if (name === 'Get the PDF') break;
  }
  const found = reached.join('; ');
  for (const name of ['Fern', 'Show as table: patterns and order', 'once or twice', 'Your notes'])
    expect(found).toContain(name);
  expect(found).toMatch(/Print; Get the PDF$/);
});

/** Name of what has the focus, and the width in px of the ring round it. */
function focused(): { readonly name: string; readonly ring: number } {
  const element = document.activeElement ?? document.body;
  const { outlineStyle, outlineWidth } = getComputedStyle(element.closest('.switch') ?? element);
  return {
    name: element.getAttribute('aria-label') ?? element.textContent ?? '',
    ring: outlineStyle === 'none' ? 0 : Number.parseFloat(outlineWidth),
  };
}

describe.each([
  ['light', DESKTOP],
  ['dark', DESKTOP],
  ['light', PHONE],
  ['dark', PHONE],
] as const)('in %s surroundings at %o', (colorScheme, viewport) => {
  test('it has no fault and nothing sticks out, with everything unfolded', async () => {
    const page = await openGrowth(app, entries, { colorScheme, viewport });
    for (const fold of await page.locator('.fold').all()) await fold.click();
    await table(page, /^Remembering, week by week/).waitFor();
    expect(await faultsOf(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(viewport.width);
  });
});
