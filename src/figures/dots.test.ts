// Quantities of dots: countable, fair, and unlike from layout to layout.
import { describe, expect, it } from 'vitest';
import type { Point } from '../base/index.ts';
import { DOT_SHARE, dotPlaces, liesAlike, MOST_DOTS } from './dots.ts';
import { DOT_LAYOUTS } from './figure.ts';

const COUNTS = [1, 2, 3, 4, 5, 6];
const SCATTERED = DOT_LAYOUTS.filter((layout) => layout.startsWith('scattered'));

function distance(one: Point, other: Point): number {
  return Math.hypot(one.x - other.x, one.y - other.y);
}

function nearest(places: readonly Point[]): number {
  const pairs = places.flatMap((one, index) =>
    places.slice(index + 1).map((other) => distance(one, other)),
  );
  return Math.min(...pairs);
}

/** How far the dots must move at least, each to its nearest place of the other set, at the most. */
function mismatch(places: readonly Point[], others: readonly Point[]): number {
  return Math.max(
    ...places.map((place) => Math.min(...others.map((other) => distance(place, other)))),
    ...others.map((other) => Math.min(...places.map((place) => distance(place, other)))),
  );
}

function turned(places: readonly Point[], turnDeg: number, mirrored: boolean): readonly Point[] {
  const [cos, sin] = [Math.cos((turnDeg * Math.PI) / 180), Math.sin((turnDeg * Math.PI) / 180)];
  return places.map(({ x, y }) => {
    const side = mirrored ? -x : x;
    return { x: cos * side - sin * y, y: sin * side + cos * y };
  });
}

describe('dotPlaces', () => {
  it('gives as many places as asked for, inside the cell however it is turned', () => {
    for (const layout of DOT_LAYOUTS) {
      for (const count of COUNTS) {
        const places = dotPlaces(count, layout);
        expect(places.length).toBe(count);
        const reach = Math.max(...places.map(({ x, y }) => Math.hypot(x, y))) + DOT_SHARE / 2;
        expect(reach, `${count} ${layout}`).toBeLessThanOrEqual(0.5);
      }
    }
  });

  it('keeps at least a third of a dot of blank between any two dots', () => {
    for (const layout of DOT_LAYOUTS) {
      for (const count of COUNTS.slice(1)) {
        const blank = nearest(dotPlaces(count, layout)) - DOT_SHARE;
        expect(blank, `${count} ${layout}`).toBeGreaterThan(DOT_SHARE / 3);
      }
    }
  });

  it('lays a row level and evenly', () => {
    for (const count of COUNTS.slice(2)) {
      const places = dotPlaces(count, 'row');
      const gaps = places.slice(1).map((place, index) => place.x - (places[index]?.x ?? 0));
      expect(new Set(gaps.map((gap) => gap.toFixed(3))).size).toBe(1);
      expect(places.every(({ y }) => y === 0)).toBe(true);
    }
  });

  it('scatters three to six dots so that no turn or mirroring brings them back', () => {
    for (const layout of SCATTERED) {
      for (const count of COUNTS.slice(2)) {
        const places = dotPlaces(count, layout);
        for (let turn = 0; turn < 360; turn += 15) {
          for (const mirrored of turn === 0 ? [true] : [false, true]) {
            const away = mismatch(places, turned(places, turn, mirrored));
            expect(away, `${count} ${layout} turned ${turn}`).toBeGreaterThan(DOT_SHARE / 3);
          }
        }
      }
    }
  });

  it('lays each count of two and more differently in each layout, by more than a dot', () => {
    for (const count of COUNTS.slice(1)) {
      DOT_LAYOUTS.forEach((one, index) => {
        for (const other of DOT_LAYOUTS.slice(index + 1)) {
          const away = mismatch(dotPlaces(count, one), dotPlaces(count, other));
          expect(away, `${count} ${one} ${other}`).toBeGreaterThan(DOT_SHARE);
        }
      });
    }
  });

  it('takes counts from 1 to 6 only', () => {
    expect(() => dotPlaces(0, 'row')).toThrow('expected 1 to 6');
    expect(() => dotPlaces(MOST_DOTS + 1, 'dice')).toThrow('expected 1 to 6');
    expect(() => dotPlaces(MOST_DOTS + 1, 'scattered-1')).toThrow('expected 1 to 6');
  });
});

describe('liesAlike', () => {
  const dots = (count: number, layout: (typeof DOT_LAYOUTS)[number], turn = 0) => ({
    form: 'dots' as const,
    count,
    layout,
    turn,
  });

  it('sees that four or five dots as on a die lie the same after a quarter turn, and two do not', () => {
    expect(liesAlike(dots(4, 'dice'), dots(4, 'dice', 90))).toBe(true);
    expect(liesAlike(dots(5, 'dice'), dots(5, 'dice', 270))).toBe(true);
    expect(liesAlike(dots(2, 'dice'), dots(2, 'dice', 90))).toBe(false);
    expect(liesAlike(dots(6, 'dice'), dots(6, 'dice', 90))).toBe(false);
    expect(liesAlike(dots(6, 'dice'), dots(6, 'dice', 180))).toBe(true);
  });

  it('sees that one dot lies the same in every layout', () => {
    for (const layout of DOT_LAYOUTS)
      expect(liesAlike(dots(1, layout), dots(1, 'dice'))).toBe(true);
  });
});
