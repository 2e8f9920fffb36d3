// What the name of a saved pack promises: it says what is in it, and no file system minds it.
import { expect, test } from 'vitest';
import { FIRST_ENTRIES } from '../recipe/entries.ts';
import { fileName } from './file-name.ts';

test('a pack of a recipe is named by what it was made from', () => {
  const entries = { ...FIRST_ENTRIES, seed: 418, step: 3 };
  expect(fileName({ entries }, 'pdf')).toBe('in-every-box-step-3-10-sheets-A4-418.pdf');
  expect(fileName({ entries: { ...entries, sheets: 1 } }, 'pdf')).toContain('-1-sheet-');
});

test.each([
  ['Fern 2026-03-09', 'Fern-2026-03-09.pdf'],
  ['Łąka, week of 9 March', 'Łąka-week-of-9-March.pdf'],
  ['../a/b\\c:d*?"<>|', 'a-b-c-d.pdf'],
  ['.hidden', 'hidden.pdf'],
  ['…', 'sheets.pdf'],
  ['', 'sheets.pdf'],
  ['x'.repeat(300), `${'x'.repeat(60)}.pdf`],
])('sheets named “%s” are saved as “%s”', (name, saved) => {
  expect(fileName({ codes: [], name }, 'pdf')).toBe(saved);
});
