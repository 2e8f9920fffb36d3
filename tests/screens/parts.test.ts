// The parts that the screens about children share: choosing a child, trying out, asking the planner, pressing by codes.
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import type { ActivityId } from '../../src/activities/index.ts';
import { DEFAULT_PAGE, makeSheet, packOfCodes, packPages } from '../../src/sheets/index.ts';
import { DESKTOP, PHONE, startApp } from './app.ts';
import { faultsOf, WCAG } from './faults.ts';
import { pagesIn, pdfOf } from './files.ts';
import { keptEntries } from './kept-entries.ts';
import { buildParts } from './parts-page.ts';

const app = startApp({ build: buildParts });
const CODES = [codeOf('in-every-box', 1), codeOf('by-key', 2), codeOf('mirror-half', 3)];
const NAMES = ['Fern', 'Wren', 'Lark', 'Heath', 'Rowan', 'Sorrel'];

function codeOf(activity: ActivityId, seed: number): string {
  const page =
    activity === 'by-key' ? ({ ...DEFAULT_PAGE, paper: 'Letter' } as const) : DEFAULT_PAGE;
  const made = makeSheet({ activity, step: 1, values: {}, seed, tasks: 1, page, print: 'colour' });
  if (!made.ok) throw new Error(JSON.stringify(made.refusals));
  return made.value.code;
}

function openParts(codes: readonly string[] = [], options: Parameters<typeof app.open>[1] = {}) {
  const asked = codes.length === 0 ? '' : `codes=${codes.join(',')}&name=Fern 2026-03-09`;
  return app.open(asked, { ...options, waitFor: 'child' });
}

async function add(page: Page, ...nicknames: readonly string[]): Promise<void> {
  for (const nickname of nicknames) {
    await page.getByRole('textbox', { name: 'Nickname' }).fill(nickname);
    await page.getByRole('button', { name: 'Add', exact: true }).click();
    await page.locator('.child-choice').getByText(nickname).first().waitFor();
  }
}

test('without a child there is one sentence, a way to Record, and a demo group to try', async () => {
  const page = await openParts();
  await page.getByText('No child yet. A nickname is enough to begin.').waitFor();
  const link = page.getByRole('link', { name: 'Add a child in Record' });
  expect(await link.getAttribute('href')).toBe('#record');
  await page.getByRole('button', { name: 'Try with a demo group' }).click();
  await page.getByText('These children are invented').waitFor();
  await page.getByRole('radio', { name: 'Moss' }).waitFor();
  await add(page, 'Wren');
  expect((await keptEntries(page)).map(({ kind, demo }) => [kind, demo])).toEqual([
    ['child', true],
    ['plan', true],
    ['child', true],
  ]);
  await page.reload();
  await page.getByRole('radio', { name: 'Wren' }).waitFor();
  expect(await page.getByRole('radio', { name: 'Wren' }).isChecked()).toBe(true);
  await page.getByRole('button', { name: 'Back to my own' }).click();
  await page.getByText('No child yet.').waitFor();
  await add(page, 'Fern');
  expect(await page.getByRole('button', { name: 'Try with a demo group' }).count()).toBe(0);
});

test('a few children are chosen with a tap, more from a list, and the choice is kept', async () => {
  const page = await openParts();
  await add(page, ...NAMES.slice(0, 5));
  expect(await page.getByRole('radio').count()).toBe(5);
  await page.getByRole('radio', { name: 'Lark' }).click();
  expect(await page.getByRole('radio', { name: 'Lark' }).isChecked()).toBe(true);
  await add(page, ...NAMES.slice(5));
  expect(await page.getByRole('radio').count()).toBe(0);
  const chosen = page.getByRole('button', { name: /Child$/ });
  expect(await chosen.textContent()).toBe('Sorrel');
  await chosen.press('Enter');
  await page.getByRole('option', { name: 'Wren' }).waitFor();
  expect(await page.getByRole('option').allTextContents()).toEqual(NAMES);
  await page.getByRole('option', { name: 'Wren' }).click();
  await page.reload();
  await chosen.waitFor();
  expect(await chosen.textContent()).toBe('Wren');
});

test('the planner starts with the first question, knows a sheet by its code and refuses what is none', async () => {
  const page = await openParts(CODES);
  expect(page.workers()).toHaveLength(0);
  await page.getByRole('button', { name: 'Look' }).click();
  await page.getByText('in-every-box, 1 tasks').waitFor();
  expect(page.workers()).toHaveLength(1);
  const other = await openParts(['none']);
  await other.getByRole('button', { name: 'Look' }).click();
  await other.locator('output', { hasText: 'sheet code' }).waitFor();
});

test('sheets of three activities become one PDF by their codes, with answers and the adult’s page', async () => {
  const page = await openParts([...CODES, CODES[0] ?? '']);
  const pdf = await pdfOf(page);
  expect(pdf.name).toBe('Fern-2026-03-09.pdf');
  const pack = packOfCodes([...CODES, CODES[0] ?? '']);
  if (!pack.ok) throw new Error(JSON.stringify(pack.refusals));
  const titles = [...packPages(pack.value).pages].map(({ title }) => title);
  // Two pages for the adult, each sheet as often as it is listed, and the answers of A4, Letter and A4 again.
  expect(titles).toHaveLength(2 + 4 + 3);
  expect(pagesIn(pdf.bytes)).toBe(titles.length);
  await page.getByText('Saved as Fern-2026-03-09.pdf.').waitFor();
});

test('the same sheets go to the browser’s own printing, each on its paper', async () => {
  const page = await openParts(CODES);
  await page.evaluate(() => {
    window.print = () => document.body.setAttribute('data-printing', 'yes');
  });
  const print = page.getByRole('button', { name: 'Print', exact: true });
  expect(await print.getAttribute('class')).toContain('next');
  await print.click();
  await page.locator('body[data-printing]').waitFor();
  expect(await page.locator('.letter-upright').count()).toBe(2);
  const printed = await page.pdf({ preferCSSPageSize: true });
  expect(pagesIn(printed)).toBe(2 + 3 + 3);
});

test('a code that cannot be read is told in its own sentence, and nothing is saved', async () => {
  const [first = '', second = ''] = CODES;
  const wrong = `${second.slice(0, -1)}${second.endsWith('2') ? '3' : '2'}`;
  const page = await openParts([first, wrong]);
  await page.getByRole('button', { name: 'Get the PDF' }).click();
  await page.getByText(`"${wrong}" has a wrong, missing or extra character`).waitFor();
  expect(await page.locator('.outcome').textContent()).toMatch(/^Sheet 2 › sheet code: /);
  expect(await page.getByRole('button', { name: 'Get the PDF' }).isEnabled()).toBe(true);
});

test.each([
  ['light', PHONE],
  ['dark', DESKTOP],
] as const)(
  'in %s surroundings at %o the choice of a child has no fault and fits',
  async (colorScheme, viewport) => {
    const page = await openParts(CODES, { colorScheme, viewport });
    expect(await faultsOf(page)).toEqual([]);
    await add(page, ...NAMES.slice(0, 5));
    expect(await faultsOf(page)).toEqual([]);
    await add(page, ...NAMES.slice(5));
    expect(await faultsOf(page)).toEqual([]);
    const chosen = page.getByRole('button', { name: /Child$/ });
    const box = await chosen.boundingBox();
    expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(24);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(viewport.width);
    await chosen.click();
    await page.getByRole('listbox').waitFor();
    expect(await faultsOf(page, WCAG)).toEqual([]);
  },
);
