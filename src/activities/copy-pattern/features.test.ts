// What makes copying hard, told of models whose measures can be counted by hand.
import { expect, test } from 'vitest';
import type { Figure } from '../../figures/index.ts';
import { features } from './features.ts';
import type { Cells, Printed } from './task.ts';

const RED: Figure = { form: 'circle', colour: 'red' };
const BLUE: Figure = { form: 'circle', colour: 'blue' };
const EMPTY: Cells = Array.from({ length: 9 }, () => null);

function printedOf(marks: string, boxes: readonly Cells[] = [EMPTY]): Printed {
  const cells = [...marks.replaceAll(' ', '')].map((mark) =>
    mark === 'r' ? RED : mark === 'b' ? BLUE : null,
  );
  return { model: { rows: 3, columns: 3, cells }, boxes: boxes.map((own) => ({ cells: own })) };
}

test('elements, places, kinds and boxes are counted on the page', () => {
  const found = features(printedOf('rb. .r. ..b', [EMPTY, EMPTY]));
  expect(found.elements).toBeCloseTo(Math.log(4));
  expect(found.places).toBeCloseTo(Math.log(9));
  expect(found.kinds).toBeCloseTo(Math.log(2));
  expect(found.repeats).toBeCloseTo(Math.log(2));
});

test('a mirror line makes for none, a turn for half, neither for all of the asymmetry', () => {
  expect(features(printedOf('r.r .r. ...')).asymmetry).toBe(0);
  expect(features(printedOf('rr. ... .rr')).asymmetry).toBe(0.5);
  expect(features(printedOf('rr. ..r ...')).asymmetry).toBe(1);
});

test('elements that touch at a side or corner are one piece', () => {
  expect(features(printedOf('r.. .r. ..r')).apart).toBe(0);
  expect(features(printedOf('r.r ... r.r')).apart).toBeCloseTo(Math.log(4));
});

test('boxes that are begun are counted as a share', () => {
  const begun: Cells = [RED, ...EMPTY.slice(1)];
  expect(features(printedOf('rr. ... ...', [EMPTY, EMPTY])).begun).toBe(0);
  expect(features(printedOf('rr. ... ...', [begun, EMPTY])).begun).toBe(0.5);
});

test('slanted lines are counted as a share of the lines', () => {
  const level: Figure = { form: 'sign-level-line' };
  const rising: Figure = { form: 'sign-upright-line', turn: 45 };
  const cells = [level, null, null, null, rising, null];
  const found = features({
    model: { rows: 2, columns: 2, cells },
    boxes: [{ cells: cells.map(() => null) }],
  });
  expect(found.oblique).toBe(0.5);
  expect(found.kinds).toBeCloseTo(Math.log(2));
});
