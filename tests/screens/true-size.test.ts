// A printer that does not keep true size: it is found with a printed ruler, and made up for on this device alone.
import { execFileSync } from 'node:child_process';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { DESKTOP, PHONE, startApp } from './app.ts';
import { faultsOf } from './faults.ts';
import { infoOf, pagesIn, pdfOf } from './files.ts';

const app = startApp();
const RECIPE = 'activity=odd-one-out&step=4&sheets=3&seed=3';
const MEASURED = 'The 50 mm line measures, in mm';

async function withFold(recipe = RECIPE, options = {}): Promise<Page> {
  const page = await app.open(recipe, options);
  await page.getByRole('button', { name: 'Is it true size?' }).click();
  return page;
}

async function check(page: Page, measured: string): Promise<void> {
  await page.getByRole('textbox', { name: MEASURED }).fill(measured);
  await page.getByRole('button', { name: 'Check', exact: true }).click();
}

interface Printed {
  readonly pdf: Buffer;
  /** Lengths of the check lines in mm, as they are drawn for the printer. */
  readonly linesMm: readonly number[];
}

/** What the browser would print; it clears away what it laid out as soon as that is done. */
async function printed(page: Page, button: string): Promise<Printed> {
  await page.evaluate(() => {
    document.body.removeAttribute('data-printing');
    window.print = () => document.body.setAttribute('data-printing', 'yes');
  });
  await page.getByRole('button', { name: button, exact: true }).click();
  await page.locator('body[data-printing]').waitFor();
  const outlines = await page
    .locator('#printed [data-role="check-line"] > path:first-child')
    .evaluateAll((paths) => paths.map((path) => path.getAttribute('d') ?? ''));
  return {
    pdf: await page.pdf({ preferCSSPageSize: true }),
    linesMm: outlines.map(lengthOf),
  };
}

/** Of a line that begins anywhere and goes straight across or down. */
function lengthOf(outline: string): number {
  const [, across = '', down = ''] = /l(-?[\d.]+) ?(-?[\d.]+)/.exec(outline) ?? [];
  return Math.hypot(Number(across), Number(down));
}

const textOf = (pdf: Uint8Array) =>
  execFileSync('pdftotext', ['-layout', '-', '-'], { input: pdf, encoding: 'utf8' });

test('the page with the two lines is saved and printed, on the paper of the sheets', async () => {
  const page = await withFold(`${RECIPE}&paper=Letter`);
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Two lines as a PDF' }).click();
  expect((await saving).suggestedFilename()).toBe('check-your-printer.pdf');
  const { pdf, linesMm } = await printed(page, 'Print the two lines');
  expect(pagesIn(pdf)).toBe(1);
  expect(infoOf(pdf)).toContain('612 x 792 pts');
  expect(linesMm).toEqual([50, 50]);
});

test('what is off is first to be printed at 100 %, then can be made up for until that is stopped', async () => {
  const page = await withFold();
  const before = (await pdfOf(page)).bytes;
  await check(page, '48,5');
  await page.getByText('First print the page once more').waitFor();
  await page.getByRole('button', { name: 'Make up for 48.5 mm from now on' }).click();
  await page.getByText('every PDF and print from this browser makes up').waitFor();
  expect((await pdfOf(page)).bytes.equals(before)).toBe(false);
  await page.reload();
  await page.getByText('every PDF and print from this browser makes up').waitFor();
  const corrected = await printed(page, 'Print');
  expect(infoOf(corrected.pdf)).toMatch(/59[45]\.\d+ x 841\.\d+ pts/);
  expect(corrected.linesMm).toHaveLength(1);
  expect(corrected.linesMm[0]).toBeCloseTo((50 * 50) / 48.5, 1);
  // The page to measure stays as it is, or a second measure would be of another thing than the first.
  expect((await printed(page, 'Print the two lines')).linesMm).toEqual([50, 50]);
  await page.getByRole('button', { name: 'Stop making up for it' }).click();
  await page.getByText('Pages are printed as they are again.').waitFor();
  expect((await pdfOf(page)).bytes.equals(before)).toBe(true);
});

test('the first sheets that are saved or printed come with a nudge to measure them, the next do not', async () => {
  const page = await app.open(RECIPE);
  const nudge = page.getByText('Lay a ruler along the 50\u00a0mm line on the adult’s page.');
  await pdfOf(page);
  await page.getByText(/If it is off, “Is it true size\?” puts it right/).waitFor();
  await printed(page, 'Print');
  await nudge.waitFor({ state: 'detached' });
  const other = await app.open(RECIPE);
  await printed(other, 'Print');
  await other.getByText('First print from this browser?').waitFor();
});

test('true size needs nothing; what is too far off, or no number, is told in a sentence', async () => {
  const page = await withFold();
  await check(page, '50.4');
  await page.getByText('There is nothing to put right.').waitFor();
  for (const [measured, sentence] of [
    ['44', 'only 45 to 55 mm can'],
    ['45.5', 'on A4, at least 46 mm can be put right'],
    ['fifty', 'such as 48.5, got "fifty"'],
  ] as const) {
    await check(page, measured);
    await page.locator('.objection', { hasText: sentence }).waitFor();
    expect(await page.getByRole('button', { name: /^Make up/ }).count()).toBe(0);
  }
});

test('a measure that A3 cannot be corrected for is told when A3 is to be printed, and nothing is saved', async () => {
  const page = await withFold();
  await check(page, '46.5');
  await page.getByRole('button', { name: /^Make up/ }).click();
  await page.getByText('every PDF and print from this browser makes up').waitFor();
  await page.goto(`${app.address()}#${RECIPE}&paper=A3`);
  await page.reload();
  await page.locator('.sheet svg').waitFor();
  await page.getByRole('button', { name: 'Get the PDF' }).click();
  await page.locator('.outcome', { hasText: 'on A3, at least 47.2 mm can be put right' }).waitFor();
});

test('A3 is printed on A3, and two A5 come on one A4 with the same words as on pages of their own', async () => {
  const large = await app.open(`${RECIPE}&paper=A3&orientation=landscape`);
  const sizes = execFileSync('pdfinfo', ['-l', '9', '-'], {
    input: (await printed(large, 'Print')).pdf,
    encoding: 'utf8',
  });
  expect(sizes).toMatch(/119[01]\.\d+ x 841\.\d+ pts/);
  const small = await app.open('activity=odd-one-out&step=1&sheets=3&seed=3&paper=A5');
  const { bytes } = await pdfOf(small);
  // The adult's page, two sheets and one, the answers.
  expect(pagesIn(bytes)).toBe(4);
  expect(textOf(bytes).split('Which one does not belong?').length - 1).toBeGreaterThanOrEqual(3);
});

test.each([PHONE, DESKTOP])(
  'at %j the fold has no fault and nothing runs over the edge',
  async (viewport) => {
    const page = await withFold(RECIPE, { viewport });
    await check(page, '48.5');
    await page.getByText('First print the page once more').waitFor();
    expect(await faultsOf(page)).toEqual([]);
    const width = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(width).toBeLessThanOrEqual(viewport.width);
  },
);
