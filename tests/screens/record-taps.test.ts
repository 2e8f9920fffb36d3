// What was chosen is tapped on the picture of the sheet: by mouse, by touch, by keyboard, at any size.
import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { DESKTOP, type OpenOptions, PHONE, startApp } from './app.ts';
import { faultsOf, WCAG } from './faults.ts';
import {
  addChild,
  codeField,
  codeOfElsewhere,
  codeOfSheet,
  entriesOf,
  keptResults,
  outcomeChip,
} from './record-parts.ts';

const app = startApp();
const ODD = codeOfElsewhere();
const KEY = codeOfSheet('by-key', 2);
const CROWDED = codeOfSheet('odd-one-out', 13);

async function openSheet(code: string, options: OpenOptions = {}): Promise<Page> {
  const page = await app.open('record', { waitFor: 'record', ...options });
  await addChild(page, 'Fern');
  await codeField(page).fill(code);
  await page.locator('.target').first().waitFor();
  return page;
}

/** The wrong choices of a task, from 1. */
function wrongIn(page: Page, task: number): Locator {
  return page.getByRole('toolbar', { name: `Task ${task}` }).locator('.target[aria-pressed]');
}

function rightIn(page: Page, task: number): Locator {
  return page
    .getByRole('toolbar', { name: `Task ${task}` })
    .getByRole('button', { name: /right$/ });
}

async function save(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Save the record' }).click();
  await page.getByText(/^Saved for Fern/).waitFor();
}

test('a wrong figure is noted with its mark and name, and a right one says that the task was right', async () => {
  const page = await openSheet(ODD);
  const wrong = wrongIn(page, 2).first();
  const name = ((await wrong.getAttribute('aria-label')) ?? '').replace(/^Task 2: /, '');
  await wrong.click();
  expect(await wrong.getAttribute('aria-pressed')).toBe('true');
  expect(await outcomeChip(page, 2, 'not yet').isChecked()).toBe(true);
  await page.getByText(`Task 2: not yet; chosen instead: ${name}.`).waitFor();
  await rightIn(page, 1).click();
  expect(await outcomeChip(page, 1, 'right').isChecked()).toBe(true);
  await page.getByText('Task 1: right.').waitFor();
  await save(page);
  const [kept] = await keptResults(page);
  expect(kept?.tasks.map(({ outcome }) => outcome)).toEqual(['right', 'not-yet', 'not-tried']);
  const [noted] = kept?.tasks[1]?.instead ?? [];
  expect(name.startsWith(noted?.label ?? '?')).toBe(true);
  expect(noted?.place).toBeTypeOf('number');
  await entriesOf(page).getByText(`task 2: ${noted?.label} instead`).waitFor();
});

test('what was noted is taken back on the picture, or beside the task', async () => {
  const page = await openSheet(ODD);
  const wrong = wrongIn(page, 1).first();
  await wrong.click();
  await wrong.click();
  expect(await outcomeChip(page, 1, 'not yet').isChecked()).toBe(false);
  await page.getByText('Task 1: open.').waitFor();
  await outcomeChip(page, 1, 'right with help').click();
  await wrong.click();
  expect(await outcomeChip(page, 1, 'right with help').isChecked()).toBe(true);
  await page.getByRole('button', { name: /^Task 1: take back/ }).click();
  expect(await wrong.getAttribute('aria-pressed')).toBe('false');
  expect(await outcomeChip(page, 1, 'right with help').isChecked()).toBe(true);
});

test('of a figure of a key it is asked what it was taken for', async () => {
  const page = await openSheet(KEY);
  const figure = page.locator('.target').first();
  const before = await figure.getAttribute('aria-label');
  await figure.click();
  await page.getByRole('menu').getByText('It was taken for').waitFor();
  // What opens over the page lies outside its landmarks, which only the advice beyond WCAG minds.
  expect(await faultsOf(page, WCAG)).toEqual([]);
  const choice = page.getByRole('menuitemradio').first();
  const label = (await choice.textContent()) ?? '';
  await choice.click();
  await page.getByRole('menu').waitFor({ state: 'detached' });
  expect(await figure.getAttribute('aria-label')).toBe(`${before}, noted: ${label}`);
  await page.getByRole('button', { name: new RegExp(`taken for ${label}”$`) }).waitFor();
  await save(page);
  const [kept] = await keptResults(page);
  expect(kept?.tasks[0]).toEqual({ outcome: 'not-yet', instead: [{ place: 0, label }] });
});

test('with the keyboard alone: one stop for each task, and arrows from figure to figure', async () => {
  const page = await openSheet(ODD);
  await page.getByRole('button', { name: 'Open a pack file' }).focus();
  const focused = () => page.evaluate(() => document.activeElement?.getAttribute('aria-label'));
  const stops: (string | null | undefined)[] = [];
  for (let stop = 0; stop < 3; stop++) {
    await page.keyboard.press('Tab');
    stops.push(await focused());
  }
  expect(stops.map((name) => name?.slice(0, 6))).toEqual(['Task 1', 'Task 2', 'Task 3']);
  const first = wrongIn(page, 3).first();
  for (let step = 0; step < 5; step++) {
    if (await first.evaluate((figure) => figure === document.activeElement)) break;
    await page.keyboard.press('ArrowRight');
  }
  await page.keyboard.press('Space');
  expect(await first.getAttribute('aria-pressed')).toBe('true');
  expect(await outcomeChip(page, 3, 'not yet').isChecked()).toBe(true);
});

test('by touch on a small phone, every figure is big enough and lies over its own', async () => {
  const page = await openSheet(CROWDED, { viewport: PHONE, hasTouch: true, isMobile: true });
  for (const target of await page.locator('.target').all()) {
    const box = await target.boundingBox();
    const name = (await target.getAttribute('aria-label')) ?? '';
    expect(Math.min(box?.width ?? 0, box?.height ?? 0), name).toBeGreaterThanOrEqual(24);
  }
  const wrong = wrongIn(page, 1).last();
  await wrong.tap();
  expect(await wrong.getAttribute('aria-pressed')).toBe('true');
  const before = await wrong.boundingBox();
  await page.getByRole('button', { name: 'Bigger' }).tap();
  await page.getByRole('button', { name: 'Whole page' }).waitFor();
  const bigger = await wrong.boundingBox();
  expect(bigger?.width ?? 0).toBeGreaterThan(1.4 * (before?.width ?? 0));
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(PHONE.width);
  await wrong.tap();
  expect(await wrong.getAttribute('aria-pressed')).toBe('false');
});

test('every figure that can be tapped is where it is drawn, clipped textures too', async () => {
  const page = await openSheet(ODD);
  const [shown, drawn] = await atRest(page);
  expect(shown).toHaveLength(drawn?.length ?? 0);
  shown?.forEach(([x = 0, y = 0], place) => {
    const [drawnX = 0, drawnY = 0] = drawn?.[place] ?? [];
    expect(Math.hypot(x - drawnX, y - drawnY)).toBeLessThan(4);
  });
});

/** The middles of what can be tapped and of what is drawn in the first task, once two looks at them agree. */
async function atRest(page: Page) {
  let before = await middlesOf(page);
  await expect
    .poll(async () => {
      const now = await middlesOf(page);
      const isAtRest = JSON.stringify(now) === JSON.stringify(before);
      before = now;
      return isAtRest;
    })
    .toBe(true);
  return before;
}

function middlesOf(page: Page) {
  return page.evaluate(() => {
    const middle = (element: Element) => {
      const { x, y, width, height } = element.getBoundingClientRect();
      return [Math.round(x + width / 2), Math.round(y + height / 2)];
    };
    const task = document.querySelector('.sheet [data-role="task"]');
    const marks = Array.from(task?.querySelectorAll('[data-mark]') ?? []);
    const bar = document.querySelector('.task-targets');
    return [Array.from(bar?.querySelectorAll('.target') ?? []).map(middle), marks.map(middle)];
  });
}

test('a sheet on which nothing can be tapped has no targets and is recorded as before', async () => {
  const page = await app.open('record', { waitFor: 'record' });
  await addChild(page, 'Fern');
  await codeField(page).fill(codeOfSheet('copy-pattern', 3));
  await page.getByText(/^Copy the pattern, step 3/).waitFor();
  await page.getByRole('radio', { name: 'All right' }).click();
  expect(await page.locator('.target').count()).toBe(0);
  expect(await page.getByRole('button', { name: 'Bigger' }).count()).toBe(0);
  await save(page);
});

test.each([
  ['dark', DESKTOP],
  ['light', PHONE],
] as const)(
  'in %s surroundings at %o a tapped sheet has no fault',
  async (colorScheme, viewport) => {
    const page = await openSheet(ODD, { colorScheme, viewport });
    await wrongIn(page, 1).first().click();
    await rightIn(page, 2).click();
    // Where Save lies in its own place, and not over what is scrolled by.
    const toTheEnd = () => page.evaluate(() => window.scrollTo(0, document.body.scrollHeight));
    await toTheEnd();
    expect(await faultsOf(page)).toEqual([]);
    await page.getByRole('button', { name: 'Bigger' }).click();
    await toTheEnd();
    expect(await faultsOf(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(viewport.width);
  },
);
