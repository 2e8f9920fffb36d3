// Layout: places that are equal, apart, centred and inside their area, whatever the numbers.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { testSeed } from '../../tests/seed.ts';
import { circlePath, transformPoint } from '../base/index.ts';
import {
  type Area,
  centredIn,
  columnsOf,
  filled,
  gridPlaces,
  group,
  insetArea,
  placeScaled,
  rowPlaces,
  rowsOf,
} from './index.ts';

const seed = testSeed('layout');
const NEAR = 1e-6;

const areas = fc.record({
  left: fc.integer({ min: 0, max: 50 }),
  top: fc.integer({ min: 0, max: 50 }),
  width: fc.integer({ min: 100, max: 200 }),
  height: fc.integer({ min: 100, max: 250 }),
});
const grids = fc.record({
  count: fc.integer({ min: 1, max: 24 }),
  columns: fc.integer({ min: 1, max: 6 }),
  area: areas,
  across: fc.integer({ min: 0, max: 10 }),
  down: fc.integer({ min: 0, max: 3 }),
});

function check<T>(values: fc.Arbitrary<T>, promise: (value: T) => void): void {
  fc.assert(fc.property(values, promise), { seed, numRuns: 50 });
}

function isWithin(inner: Area, outer: Area): boolean {
  return (
    inner.left >= outer.left - NEAR &&
    inner.top >= outer.top - NEAR &&
    inner.left + inner.width <= outer.left + outer.width + NEAR &&
    inner.top + inner.height <= outer.top + outer.height + NEAR
  );
}

/** Whether two places keep the gap between them in at least one direction. */
function areApart(one: Area, other: Area, across: number, down: number): boolean {
  return (
    one.left + one.width + across <= other.left + NEAR ||
    other.left + other.width + across <= one.left + NEAR ||
    one.top + one.height + down <= other.top + NEAR ||
    other.top + other.height + down <= one.top + NEAR
  );
}

describe('gridPlaces', () => {
  test('gives as many places as asked, all of one size, inside the area and apart by the gaps', () => {
    check(grids, ({ count, columns, area, across, down }) => {
      const places = gridPlaces(count, columns, area, { across, down });
      expect(places).toHaveLength(count);
      places.forEach((place, index) => {
        expect(place.width).toBe(places[0]?.width);
        expect(place.height).toBe(places[0]?.height);
        expect(isWithin(place, area)).toBe(true);
        for (const other of places.slice(index + 1)) {
          expect(areApart(place, other, across, down)).toBe(true);
        }
      });
    });
  });

  test('fills the area to its edges, and a last row that is not full stands in the middle', () => {
    check(grids, ({ count, columns, area, across, down }) => {
      const places = gridPlaces(count, columns, area, { across, down });
      const lastTop = places.at(-1)?.top ?? 0;
      const rows = [
        places.filter(({ top }) => top === area.top),
        places.filter(({ top }) => top === lastTop),
      ];
      for (const row of rows) {
        const [first, last] = [row[0], row.at(-1)];
        if (!first || !last) throw new Error('a row without places');
        const [before, after] = [
          first.left - area.left,
          area.left + area.width - last.left - last.width,
        ];
        expect(before).toBeCloseTo(after, 6);
      }
      expect(lastTop + (places[0]?.height ?? 0)).toBeCloseTo(area.top + area.height, 6);
      expect(Math.min(...places.map(({ left }) => left))).toBeCloseTo(area.left, 6);
    });
  });

  test('with `start`, a last row stands under the first places', () => {
    const area = { left: 0, top: 0, width: 100, height: 100 };
    const places = gridPlaces(5, 3, area, 5, { lastRow: 'start' });
    expect(places[3]?.left).toBe(places[0]?.left);
    expect(places[4]?.left).toBe(places[1]?.left);
  });

  test('goes row by row from the top left, as one reads', () => {
    const places = gridPlaces(6, 3, { left: 0, top: 0, width: 90, height: 60 });
    expect(places.map(({ left, top }) => [left, top])).toEqual([
      [0, 0],
      [30, 0],
      [60, 0],
      [0, 30],
      [30, 30],
      [60, 30],
    ]);
  });

  test('says so where gaps leave no room', () => {
    const area = { left: 0, top: 0, width: 10, height: 10 };
    expect(() => gridPlaces(3, 3, area, 5)).toThrow('no room for 3 places in 3 columns');
  });

  test('rows and columns are grids of one column and of one row', () => {
    const area = { left: 1, top: 2, width: 30, height: 40 };
    expect(rowsOf(2, area, 4)).toEqual([
      { left: 1, top: 2, width: 30, height: 18 },
      { left: 1, top: 24, width: 30, height: 18 },
    ]);
    expect(columnsOf(2, area, 4)).toEqual([
      { left: 1, top: 2, width: 13, height: 40 },
      { left: 18, top: 2, width: 13, height: 40 },
    ]);
  });
});

describe('rowPlaces', () => {
  const sizes = [
    { width: 10, height: 20 },
    { width: 30, height: 10 },
  ];

  test('sets pieces side by side in the middle, the gap between them', () => {
    expect(rowPlaces(sizes, { left: 0, top: 0, width: 100, height: 40 }, 6)).toEqual([
      { left: 27, top: 10, width: 10, height: 20 },
      { left: 43, top: 15, width: 30, height: 10 },
    ]);
  });

  test('lets the gap shrink before pieces leave the area', () => {
    const [first, last] = rowPlaces(sizes, { left: 0, top: 0, width: 42, height: 40 }, 6);
    expect(first?.left).toBe(0);
    expect(last?.left).toBe(12);
  });
});

test('insetArea never turns an area inside out', () => {
  const area = { left: 0, top: 0, width: 10, height: 40 };
  expect(insetArea(area, 3)).toEqual({ left: 3, top: 3, width: 4, height: 34 });
  expect(insetArea(area, 8)).toEqual({ left: 5, top: 8, width: 0, height: 24 });
});

test('centredIn stands in the middle', () => {
  const area = { left: 10, top: 10, width: 40, height: 20 };
  expect(centredIn(area, 10, 4)).toEqual({ left: 25, top: 18, width: 10, height: 4 });
});

describe('placeScaled', () => {
  const drawing = group('task', [filled(circlePath(50, 25, 25), '#000000')]);
  const size = { widthMm: 100, heightMm: 50 };

  function corners(area: Area) {
    const { transform } = placeScaled(drawing, size, area);
    if (!transform) throw new Error('not placed');
    return [transformPoint(transform, 0, 0), transformPoint(transform, 100, 50)];
  }

  test('shrinks a drawing into the middle of its area, its proportions kept', () => {
    expect(corners({ left: 10, top: 10, width: 50, height: 100 })).toEqual([
      { x: 10, y: 47.5 },
      { x: 60, y: 72.5 },
    ]);
  });

  test('never makes a drawing larger', () => {
    expect(corners({ left: 0, top: 0, width: 300, height: 100 })).toEqual([
      { x: 100, y: 25 },
      { x: 200, y: 75 },
    ]);
  });
});
