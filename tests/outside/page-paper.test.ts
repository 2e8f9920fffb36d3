// Paper sizes as published: ISO 216 for A4, 8.5 × 11 inches for Letter, and what both papers share.
import { expect, test } from 'vitest';
import { PAPERS, printArea } from '../../src/page/index.ts';

test('A4 is the sheet of ISO 216: 1/16 m² in the proportion 1 : √2, in whole millimetres', () => {
  const area = 1e6 / 16;
  expect(PAPERS.A4).toEqual({
    widthMm: Math.round(Math.sqrt(area / Math.SQRT2)),
    heightMm: Math.round(Math.sqrt(area * Math.SQRT2)),
  });
  // The table of ISO 216 itself.
  expect(PAPERS.A4).toEqual({ widthMm: 210, heightMm: 297 });
});

test('Letter is 8.5 × 11 inches of 25.4 mm', () => {
  expect(PAPERS.Letter.widthMm).toBeCloseTo(8.5 * 25.4, 9);
  expect(PAPERS.Letter.heightMm).toBeCloseTo(11 * 25.4, 9);
});

test('what is printed keeps clear of the edge by more than papers may be cut wrong (ISO 216: 2 mm)', () => {
  for (const paper of ['A4', 'Letter'] as const) {
    expect(printArea(paper, 'portrait').left).toBeGreaterThan(2 + 6.4);
  }
});
