// Promises of the generator over its whole range of values, measured on the printed outlines.
import { describe, expect, test } from 'vitest';
import { testSeed } from '../../../tests/seed.ts';
import {
  areLookAlikes,
  directionRelation,
  formOf,
  isPlainLine,
  linePointsOf,
} from '../../figures/index.ts';
import { poolOf } from './pools.ts';
import { CONTENTS, closeness, type Placed } from './task.ts';
import { anyTasks, taskOf, valuesAt } from './tasks-to-test.ts';

const MADE = anyTasks(60, testSeed('tangle, generated tasks'));

/** The share of an outline, moved by a shift, that lies within `reach` of a line of the tangle that runs alike. */
function shareAlong(one: Placed, others: readonly Placed[], reach: number, near: number): number {
  const points = linePointsOf(one.figure, 0.08);
  const lines = others.flatMap(({ figure, x, y }) =>
    linePointsOf(figure, near).map((point) => ({ ...point, x: point.x + x, y: point.y + y })),
  );
  const along = points.filter((point) =>
    lines.some(
      (line) =>
        Math.hypot(point.x + one.x - line.x, point.y + one.y - line.y) <= reach &&
        Math.abs(point.alongX * line.alongX + point.alongY * line.alongY) >=
          Math.cos(Math.PI / 6.7),
    ),
  );
  return along.length / points.length;
}

describe('every task of valid values', () => {
  test('R1 R4 offers what is in the tangle and as many more as asked', () => {
    for (const { values, printed, answer, name } of MADE) {
      const inTangle = printed.tangle.map(({ figure }) => JSON.stringify(figure)).sort();
      const named = answer.map((place) => JSON.stringify(printed.candidates[place])).sort();
      expect(named, name).toEqual(inTangle);
      expect(printed.tangle.length, name).toBe(values.shown);
      expect(printed.candidates.length, name).toBe(values.shown + values.absent);
    }
  });

  test('R2 hides at most 0.3 of any outline beside others', () => {
    for (const { printed, name } of MADE) {
      for (const one of printed.tangle) {
        const near = Math.min(...printed.tangle.map(({ figure }) => closeness(figure)));
        const others = printed.tangle.filter((other) => other !== one);
        expect(shareAlong(one, others, near, near), name).toBeLessThanOrEqual(0.3);
      }
    }
  });

  test('R3 lets no absent outline be found: less than 0.85 of it at any of many places', () => {
    for (const { printed, answer, name } of MADE.slice(0, 8)) {
      const near = Math.min(...printed.candidates.map(closeness));
      const absent = printed.candidates.filter((_, place) => !answer.includes(place));
      const [right, down] = [
        Math.max(...printed.tangle.map(({ x }) => x)) + 0.5,
        Math.max(...printed.tangle.map(({ y }) => y)) + 0.5,
      ];
      for (const figure of absent.slice(0, 1)) {
        for (let x = 0.2; x < right; x += near) {
          for (let y = 0.2; y < down; y += near) {
            const share = shareAlong({ figure, x, y }, printed.tangle, 0.7 * near, near);
            expect(share, name).toBeLessThan(0.85);
          }
        }
      }
    }
  });

  test('R6 R7 keeps middles apart, and gives each outline a colour of its own or none', () => {
    for (const { values, printed, name } of MADE) {
      for (const [index, one] of printed.tangle.entries()) {
        for (const other of printed.tangle.slice(index + 1)) {
          expect(Math.hypot(one.x - other.x, one.y - other.y), name).toBeGreaterThan(0.12);
        }
      }
      const colours = new Set(printed.candidates.map(({ colour }) => colour));
      const isColoured = values.content === 'shapes-and-colours';
      expect(colours.size, name).toBe(isColoured ? printed.candidates.length : 1);
    }
  });
});

describe.each(CONTENTS.filter((content) => content !== 'directions'))('%s', (content) => {
  test('R5 are drawn from outlines of which no two are look-alikes and no line crosses itself', () => {
    const pool = poolOf(content);
    for (const [index, form] of pool.entries()) {
      expect(isPlainLine({ form }), form).toBe(true);
      for (const other of pool.slice(index + 1)) {
        expect(areLookAlikes(form, other), `${form} and ${other}`).toBe(false);
      }
    }
  });
});

test('R5 of one shape in several directions no two are left and right', () => {
  for (let seed = 0; seed < 30; seed++) {
    const { printed } = taskOf(valuesAt(3, { content: 'directions', absent: 1 }), seed);
    expect(new Set(printed.candidates.map(formOf)).size).toBe(1);
    expect(printed.candidates.length).toBe(3);
    for (const [index, one] of printed.candidates.entries()) {
      for (const other of printed.candidates.slice(index + 1)) {
        expect(directionRelation(one, other), `seed ${seed}`).not.toBe('left-right');
      }
    }
  }
});
