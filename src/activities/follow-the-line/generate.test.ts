// Promises of the generator over its whole range of values, measured on the printed curves, point by point.
import { describe, expect, test } from 'vitest';
import { testSeed } from '../../../tests/seed.ts';
import { fairlyDifferent } from '../../figures/index.ts';
import type { Curve } from './task.ts';
import { anyTasks, type Made, taskOf, valuesAt } from './tasks-to-test.ts';

const MADE = anyTasks(120, testSeed('follow-the-line, generated tasks'));
const TO_POINTS = 24;

interface Point {
  readonly x: number;
  readonly y: number;
}

/** Points of a curve by the definition of a cubic Bézier curve. */
function pointsOf(curve: Curve): readonly Point[] {
  const points: Point[] = [];
  for (let at = 0; at + 3 < curve.length; at += 3) {
    const [a, b, c, d] = curve.slice(at, at + 4);
    if (!a || !b || !c || !d) continue;
    for (let step = at === 0 ? 0 : 1; step <= TO_POINTS; step++) {
      const t = step / TO_POINTS;
      const mix = (side: 0 | 1) =>
        (1 - t) ** 3 * a[side] +
        3 * (1 - t) ** 2 * t * b[side] +
        3 * (1 - t) * t * t * c[side] +
        t ** 3 * d[side];
      points.push({ x: mix(0), y: mix(1) });
    }
  }
  return points;
}

/** How far across a line that never turns back is, so far along. */
function acrossAt(points: readonly Point[], x: number): number {
  const next = points.findIndex((point) => point.x >= x);
  const [before, after] = [points[Math.max(0, next - 1)], points[next]];
  if (!before || !after) throw new Error(`no point at ${x}`);
  const share = after.x === before.x ? 0 : (x - before.x) / (after.x - before.x);
  return before.y + share * (after.y - before.y);
}

/** Where two lines change sides, with the slopes there, looked at every half millimetre along. */
function crossingsOf(one: readonly Point[], other: readonly Point[], lengthMm: number) {
  const found: { readonly x: number; readonly y: number; readonly angleDeg: number }[] = [];
  const apart = (x: number) => acrossAt(one, x) - acrossAt(other, x);
  for (let x = 0.5; x <= lengthMm; x += 0.5) {
    if (Math.sign(apart(x)) === Math.sign(apart(x - 0.5))) continue;
    const degrees = [one, other].map((line) => {
      const rise = acrossAt(line, x) - acrossAt(line, x - 0.5);
      return (Math.atan2(rise, 0.5) * 180) / Math.PI;
    });
    const between = Math.abs((degrees[0] ?? 0) - (degrees[1] ?? 0));
    found.push({ x, y: acrossAt(one, x), angleDeg: Math.min(between, 180 - between) });
  }
  return found;
}

function pairsOf<T>(items: readonly T[]): readonly (readonly [T, T])[] {
  return items.flatMap((one, index) =>
    items.slice(index + 1).map((other) => [one, other] as const),
  );
}

function allCrossings({ printed }: Made) {
  return pairsOf(printed.lines.map(pointsOf)).flatMap(([one, other]) =>
    crossingsOf(one, other, printed.lengthMm),
  );
}

describe('every task of valid values', () => {
  test('R1 has one line from each start to the end that the key names', () => {
    for (const { values, printed, answer, name } of MADE) {
      expect(printed.starts.length, name).toBe(values.lines);
      expect([...answer].sort(), name).toEqual(printed.starts.map((_, place) => place));
      for (const [start, line] of printed.lines.entries()) {
        const lane = (place: number) => Math.round(10 * (place + 0.5) * printed.laneMm) / 10;
        expect(line[0], name).toEqual([0, lane(start)]);
        expect(line.at(-1), name).toEqual([printed.lengthMm, lane(answer[start] ?? -1)]);
      }
    }
  });

  test('R2 has lines that cross as often as asked, at 45 degrees or more', () => {
    for (const made of MADE) {
      const crossings = allCrossings(made);
      expect(crossings.length, made.name).toBe(made.values.crossings);
      for (const { angleDeg } of crossings) expect(angleDeg, made.name).toBeGreaterThan(45);
    }
  });

  test('R3 has lines that stay 6 mm apart, further than 10 mm from a crossing of theirs', () => {
    for (const { printed, name } of MADE.slice(0, 40)) {
      for (const [one, other] of pairsOf(printed.lines.map(pointsOf))) {
        const crossings = crossingsOf(one, other, printed.lengthMm);
        const away = one.filter((point) =>
          crossings.every(({ x, y }) => Math.hypot(point.x - x, point.y - y) > 10),
        );
        const least = Math.min(
          ...away.flatMap((point) => other.map(({ x, y }) => Math.hypot(point.x - x, point.y - y))),
        );
        expect(least, name).toBeGreaterThan(6);
      }
    }
  });

  test('R4 has crossings 12 mm apart and 8 mm from starts and ends', () => {
    for (const made of MADE) {
      const crossings = allCrossings(made);
      for (const [one, other] of pairsOf(crossings)) {
        expect(Math.hypot(one.x - other.x, one.y - other.y), made.name).toBeGreaterThan(12);
      }
      for (const { x } of crossings) {
        expect(Math.min(x, made.printed.lengthMm - x), made.name).toBeGreaterThan(8);
      }
    }
  });

  test('R5 has lines that run forward all the way, printed to a tenth of a millimetre', () => {
    for (const { printed, name } of MADE) {
      for (const line of printed.lines) {
        const along = pointsOf(line).map(({ x }) => x);
        expect(
          along.every((x, index) => x > (along[index - 1] ?? -1)),
          name,
        ).toBe(true);
        expect(
          line.flat().every((mm) => Math.round(10 * mm) / 10 === mm),
          name,
        ).toBe(true);
      }
    }
  });

  test('R6 has starts that differ fairly from each other, and ends that do', () => {
    for (const { printed, name } of MADE) {
      for (const figures of [printed.starts, printed.ends ?? []]) {
        for (const [one, other] of pairsOf(figures)) {
          expect(fairlyDifferent(one, other), name).toBe(true);
        }
      }
    }
  });

  test('R7 does not lead all lines straight across where they cross', () => {
    for (const { values, answer, name } of MADE) {
      const moved = answer.filter((place, start) => place !== start).length;
      expect(moved > 0, name).toBe(values.crossings > 0);
    }
  });

  test('R8 has figures to tell at the ends, or empty ends to fill in', () => {
    for (const { values, printed, name } of MADE) {
      const isTold = values.response === 'point' || values.response === 'trace';
      expect(printed.ends?.length, name).toBe(isTold ? values.lines : undefined);
    }
  });
});

test('R7 ends are not always the same ones', () => {
  const answers = Array.from({ length: 60 }, (_, seed) => taskOf(valuesAt(7), seed).answer.join());
  expect(new Set(answers).size).toBeGreaterThan(6);
});
