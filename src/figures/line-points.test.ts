// Points along outlines: on the line, evenly apart, and the test for lines that cross themselves.
import { expect, test } from 'vitest';
import { pathBounds } from '../base/index.ts';
import { isPlainLine, linePointsOf } from './line-points.ts';
import { outlineOf } from './outline.ts';

test('points of a circle lie on it, evenly, and run at right angles to its radius', () => {
  const radius = pathBounds(outlineOf({ form: 'circle' }).path).right;
  const points = linePointsOf({ form: 'circle' }, 0.05);
  // The straight pieces that stand for the curve are a little shorter than it.
  expect(Math.abs(points.length - (2 * Math.PI * radius) / 0.05)).toBeLessThan(1);
  for (const { x, y, alongX, alongY } of points) {
    expect(Math.hypot(x, y)).toBeCloseTo(radius, 2);
    expect(Math.abs(x * alongX + y * alongY)).toBeLessThan(0.05);
    expect(Math.hypot(alongX, alongY)).toBeCloseTo(1, 6);
  }
});

test('points of a square lie on its four sides, half of them on those that run across', () => {
  const points = linePointsOf({ form: 'square' }, 0.1);
  const across = points.filter(({ alongX }) => Math.abs(alongX) === 1).length;
  expect(Math.abs(across - points.length / 2)).toBeLessThanOrEqual(1);
});

test('shapes and a capital O are plain lines; a capital made of parts that overlap is not', () => {
  expect(isPlainLine({ form: 'star' })).toBe(true);
  expect(isPlainLine({ form: 'capital-O' })).toBe(true);
  const letters = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ'].map((letter) => `capital-${letter}` as const);
  expect(letters.some((form) => !isPlainLine({ form }))).toBe(true);
});
