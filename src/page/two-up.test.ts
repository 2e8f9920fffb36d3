// Two pages on one: which come together, and that nothing but A5 is taken.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { testSeed } from '../../tests/seed.ts';
import { cutAndStack, type Page, pageSize, printedPaperOf, twoUp } from './index.ts';

const seed = testSeed('two-up');

const pageOf = (
  title: string,
  paper: 'A4' | 'A5',
  orientation: 'portrait' | 'landscape',
): Page => ({
  ...pageSize(paper, orientation),
  title,
  nodes: [],
});

test('after the cut, the first pile laid on the second is all pages in order', () => {
  fc.assert(
    fc.property(fc.array(fc.nat()), (items) => {
      const sheets = cutAndStack(items);
      const piles = [...sheets.map(([first]) => first), ...sheets.map(([, second]) => second)];
      expect(piles.slice(0, items.length)).toEqual(items);
      expect(piles.length - items.length).toBe(items.length % 2);
    }),
    { seed },
  );
});

test('only the last page of an odd number has no second', () => {
  expect(cutAndStack([1, 2, 3])).toEqual([
    [1, 3],
    [2, undefined],
  ]);
  expect(cutAndStack([1])).toEqual([[1, undefined]]);
  expect(cutAndStack([])).toEqual([]);
});

test('A5 lies sideways on upright A4, and upright on A4 that lies sideways', () => {
  const over = twoUp(pageOf('a', 'A5', 'landscape'), pageOf('b', 'A5', 'landscape'));
  expect([over.widthMm, over.heightMm, over.title]).toEqual([210, 297, 'a · b']);
  const beside = twoUp(pageOf('a', 'A5', 'portrait'), undefined);
  expect([beside.widthMm, beside.heightMm, beside.title]).toEqual([297, 210, 'a']);
});

test('a page of another paper, or two that lie differently, are a defect', () => {
  const a5 = pageOf('a', 'A5', 'portrait');
  expect(() => twoUp(pageOf('a', 'A4', 'portrait'), undefined)).toThrow('expected A5');
  expect(() => twoUp(a5, pageOf('b', 'A5', 'landscape'))).toThrow('b: expected A5');
});

test('only A5 goes into the printer as another paper', () => {
  expect((['A3', 'A4', 'A5', 'Letter'] as const).map(printedPaperOf)).toEqual([
    'A3',
    'A4',
    'A4',
    'Letter',
  ]);
});
