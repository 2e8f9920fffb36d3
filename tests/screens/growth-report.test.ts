// The report on paper: one or two pages that hold the nickname, the notes only where wanted, and any name.
import { execFileSync } from 'node:child_process';
import { beforeAll, expect, test } from 'vitest';
import type { Entry } from '../../src/records/index.ts';
import { childEntry } from '../record-entries.ts';
import { startApp } from './app.ts';
import { infoOf, pagesIn, pdfOf } from './files.ts';
import { CHILD, openGrowth, redForOrange, weeksOfRecords } from './growth-records.ts';

const app = startApp();
const NOTE = 'Laughed at the snail.';
let results: readonly Entry[] = [];
beforeAll(() => {
  results = [...weeksOfRecords(), ...redForOrange()];
});

/** The words of a PDF with single spaces. */
function wordsIn(pdf: Uint8Array): string {
  const text = execFileSync('pdftotext', ['-', '-'], { input: pdf, encoding: 'utf8' });
  return text.replaceAll(/\s+/g, ' ');
}

test('it is a PDF of one or two pages with the nickname, the pairs and the cautions, and no note', async () => {
  const page = await openGrowth(app, [CHILD, ...results]);
  const { name, bytes } = await pdfOf(page);
  expect(name).toBe('Fern-2026-10-25.pdf');
  expect([1, 2]).toContain(pagesIn(bytes));
  const words = wordsIn(bytes);
  for (const said of [
    'How Fern is getting on',
    'orange with red',
    'This is play and practice, not a test.',
    'Signature',
  ]) {
    expect(words).toContain(said);
  }
  expect(words).not.toContain(NOTE);
});

test('with the notes it holds them, and on Letter it is on Letter', async () => {
  const page = await openGrowth(app, [CHILD, ...results]);
  await page.getByText('without your notes').click();
  await page.getByText('Look through the notes').waitFor();
  await page.getByRole('button', { name: /Paper$/ }).click();
  await page.getByRole('option', { name: 'Letter' }).click();
  const { bytes } = await pdfOf(page);
  expect(wordsIn(bytes)).toContain(NOTE);
  expect(infoOf(bytes)).toContain('612 x 792 pts (letter)');
});

test('a name in letters that the font lacks is left as a line to write on, and said to be', async () => {
  const named = childEntry(1, 1, { nickname: 'გვიმრა' });
  const page = await openGrowth(app, [named, ...results.slice(0, 4)]);
  await page.getByRole('heading', { name: 'How გვიმრა is getting on' }).waitFor();
  const { bytes } = await pdfOf(page);
  expect(wordsIn(bytes)).toMatch(/How _+ is getting on/);
  expect(wordsIn(bytes)).toContain('letters are missing');
});

test('a name in another script is printed whole', async () => {
  const named = childEntry(1, 1, { nickname: 'Папороть' });
  const page = await openGrowth(app, [named, ...results.slice(0, 4)]);
  await page.getByRole('heading', { name: 'How Папороть is getting on' }).waitFor();
  const { bytes } = await pdfOf(page);
  expect(wordsIn(bytes)).toContain('How Папороть is getting on');
  expect(wordsIn(bytes)).not.toContain('letters are missing');
});

test('it is printed by the browser from drawn pages', async () => {
  const page = await openGrowth(app, [CHILD, ...results.slice(0, 4)]);
  await page.evaluate(() => {
    window.print = () => {
      document.title = `printed ${document.querySelectorAll('#printed svg').length}`;
    };
  });
  await page.getByRole('button', { name: 'Print', exact: true }).click();
  await page.waitForFunction(() => /^printed [12]$/.test(document.title));
});
