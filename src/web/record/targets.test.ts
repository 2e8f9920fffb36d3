// What is tapped lies at its figure, is big enough where there is room, and never over its neighbour.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Box, LEAST_PX, targetsAt, zoomFor } from './targets.ts';

const SIDE = 10;

/** Figures of any size that do not touch, each in its own cell of a grid. */
const apart: fc.Arbitrary<readonly Box[]> = fc
  .array(
    fc.record({
      cell: fc.nat(15),
      size: fc.double({ min: 0.5, max: SIDE - 1, noNaN: true }),
      shift: fc.double({ min: 0, max: 1, noNaN: true }),
    }),
    { minLength: 1, maxLength: 12 },
  )
  .map((figures) =>
    [...new Map(figures.map((figure) => [figure.cell, figure])).values()].map(
      ({ cell, size, shift }) => ({
        x: SIDE * (cell % 4) + shift,
        y: SIDE * Math.floor(cell / 4) + shift,
        width: size - shift / 2,
        height: size - shift / 2,
      }),
    ),
  );

function overlap(one: Box, other: Box): boolean {
  const across = Math.min(one.x + one.width, other.x + other.width) - Math.max(one.x, other.x);
  const down = Math.min(one.y + one.height, other.y + other.height) - Math.max(one.y, other.y);
  return Math.min(across, down) > 1e-6;
}

function holds(outer: Box, inner: Box): boolean {
  return (
    outer.x <= inner.x + 1e-6 &&
    outer.y <= inner.y + 1e-6 &&
    outer.x + outer.width >= inner.x + inner.width - 1e-6 &&
    outer.y + outer.height >= inner.y + inner.height - 1e-6
  );
}

test('each holds its figure, and no two that are apart overlap', () => {
  fc.assert(
    fc.property(apart, fc.double({ min: 1, max: 40, noNaN: true }), (boxes, least) => {
      const targets = targetsAt(boxes, least);
      targets.forEach((target, place) => {
        expect(holds(target, boxes[place] ?? target)).toBe(true);
        expect(targets.slice(place + 1).some((other) => overlap(target, other))).toBe(false);
      });
    }),
  );
});

test('one alone is as big as it must be, around its figure', () => {
  expect(targetsAt([{ x: 10, y: 10, width: 2, height: 20 }], 12)).toEqual([
    { x: 5, y: 10, width: 12, height: 20 },
  ]);
});

test('neighbours share the gap between them', () => {
  const row = [0, 6].map((x) => ({ x, y: 0, width: 4, height: 12 }));
  expect(targetsAt(row, 12).map(({ x, width }) => [x, width])).toEqual([
    [-4, 9],
    [5, 9],
  ]);
});

test('the picture is shown bigger only where the whole page leaves too little room', () => {
  const row = (pitch: number) => [0, 1].map((n) => ({ x: pitch * n, y: 0, width: 5, height: 5 }));
  const pxPerMm = 1.5;
  expect(zoomFor(row(40), pxPerMm)).toBe(1);
  expect(zoomFor(row(9), pxPerMm)).toBe(2);
  expect(2 * pxPerMm * 9).toBeGreaterThanOrEqual(LEAST_PX);
});
