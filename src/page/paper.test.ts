// Papers: turning them, and the margins that are kept.
import { expect, test } from 'vitest';
import { MARGIN_MM, ORIENTATIONS, PAPER_NAMES, pageSize, printArea } from './index.ts';

test('a landscape page is the portrait page lying down', () => {
  for (const paper of PAPER_NAMES) {
    const upright = pageSize(paper, 'portrait');
    expect(pageSize(paper, 'landscape')).toEqual({
      widthMm: upright.heightMm,
      heightMm: upright.widthMm,
    });
    expect(upright.heightMm).toBeGreaterThan(upright.widthMm);
  }
});

test('the area for printing keeps the same margin, at least 10 mm, on all four sides', () => {
  expect(MARGIN_MM).toBeGreaterThanOrEqual(10);
  for (const paper of PAPER_NAMES) {
    for (const orientation of ORIENTATIONS) {
      const { widthMm, heightMm } = pageSize(paper, orientation);
      const { left, top, width, height } = printArea(paper, orientation);
      const margins = [left, top, widthMm - left - width, heightMm - top - height];
      for (const margin of margins) expect(margin).toBeCloseTo(MARGIN_MM, 9);
    }
  }
});
