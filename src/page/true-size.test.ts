// Making up for a printer: what may be asked for, and that nothing leaves the paper.
import { expect, test } from 'vitest';
import { transformPoint } from '../base/index.ts';
import {
  corrected,
  isTrueSize,
  leastMeasureMm,
  MARGIN_MM,
  measureRefusals,
  ORIENTATIONS,
  PAPER_NAMES,
  pageSize,
  readMeasure,
} from './index.ts';

test.each([
  ['48.5', 48.5],
  ['48,5', 48.5],
  [' 52 ', 52],
  ['48.5 mm', 48.5],
  ['45', 45],
  ['55.0', 55],
])('a measure may be written %s', (text, measuredMm) => {
  expect(readMeasure(text, 'here')).toEqual({ ok: true, value: measuredMm });
});

test.each(['', 'x', '48.55', '4.8.5', '-48', '1e1', '48.', '.5', '48½'])(
  '%j is no measure, and the refusal says what is one',
  (text) => {
    expect(readMeasure(text, 'here')).toMatchObject({
      ok: false,
      refusals: [{ code: 'wrong-type', at: 'here', got: text }],
    });
  },
);

test('what is mostly blanks is read in one go: a million of them are refused', () => {
  // Looked for from each blank anew, what ends a measure took hours here.
  const text = `4${' '.repeat(1_000_000)}8`;
  expect(readMeasure(text, 'here')).toMatchObject({ ok: false, refusals: [{ at: 'here' }] });
});

test.each([44.9, 55.1, 0, 500])('%d mm is too far off to be put right', (measuredMm) => {
  expect(readMeasure(String(measuredMm), 'here')).toEqual({
    ok: false,
    refusals: [{ code: 'not-correctable', at: 'here', got: measuredMm, least: 45, most: 55 }],
  });
});

test('within half a millimetre a line is true', () => {
  expect([49.4, 49.5, 50, 50.5, 50.6].map(isTrueSize)).toEqual([false, true, true, true, false]);
});

test('the smallest measure is the first tenth at which the margin still lies on the paper', () => {
  for (const paper of PAPER_NAMES) {
    const { heightMm } = pageSize(paper, 'portrait');
    /** How far from the top edge the margin of the corrected page lies. */
    const edgeMm = (measuredMm: number) =>
      heightMm / 2 - ((heightMm / 2 - MARGIN_MM) * 50) / measuredMm;
    const least = leastMeasureMm(paper);
    expect(edgeMm(least), paper).toBeGreaterThanOrEqual(-1e-9);
    if (least > 45) expect(edgeMm(least - 0.1), paper).toBeLessThan(0);
  }
  expect(PAPER_NAMES.map(leastMeasureMm)).toEqual([46, 45.8, 47.2, 45]);
});

test('of several papers, the one that cannot be corrected is named', () => {
  expect(measureRefusals(['A4', 'A3'], 47, 'here')).toEqual([
    { code: 'not-correctable', at: 'here', got: 47, least: 47.2, most: 55, paper: 'A3' },
  ]);
  expect(measureRefusals(['A4', 'A3'], 47.2, 'here')).toEqual([]);
});

test('a corrected page keeps its size and its middle, and is scaled by 50 / measured', () => {
  for (const orientation of ORIENTATIONS) {
    const page = { ...pageSize('A4', orientation), title: 'a', nodes: [] };
    const changed = corrected(page, 48);
    expect([changed.widthMm, changed.heightMm]).toEqual([page.widthMm, page.heightMm]);
    const [group] = changed.nodes;
    const transform = group?.kind === 'group' ? group.transform : undefined;
    if (!transform) throw new Error('a corrected page is scaled');
    const middle = transformPoint(transform, page.widthMm / 2, page.heightMm / 2);
    expect(middle.x).toBeCloseTo(page.widthMm / 2, 9);
    expect(middle.y).toBeCloseTo(page.heightMm / 2, 9);
    expect(transform[0]).toBeCloseTo(50 / 48, 9);
  }
});

test('without a measure, and for exactly 50 mm, a page is the same page', () => {
  const page = { ...pageSize('A4', 'portrait'), title: 'a', nodes: [] };
  expect(corrected(page, undefined)).toBe(page);
  expect(corrected(page, 50)).toBe(page);
});
