// The outline of a QR code: it must cover the dark modules, no others, in whatever way it is filled.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { testSeed } from '../../tests/seed.ts';
import { flattenPath, type Path, type Point } from '../base/index.ts';
import { modulesPath } from './qr-outline.ts';

const seed = testSeed('qr-outline');

/** How often, by direction, the path's lines cross the ray to the right of a point. */
function windingAt(
  path: Path,
  { x, y }: Point,
): { readonly turns: number; readonly crossings: number } {
  let [turns, crossings] = [0, 0];
  for (const polygon of flattenPath(path)) {
    polygon.forEach((from, index) => {
      const to = polygon[(index + 1) % polygon.length];
      if (!to || from.y > y === to.y > y || from.x <= x) return;
      turns += to.y > from.y ? 1 : -1;
      crossings++;
    });
  }
  return { turns, crossings };
}

const patterns = fc.integer({ min: 1, max: 9 }).chain((side) =>
  fc.array(fc.array(fc.boolean(), { minLength: side, maxLength: side }), {
    minLength: side,
    maxLength: side,
  }),
);

test('the middle of a module is inside the outline exactly if the module is dark, by both fill rules', () => {
  fc.assert(
    fc.property(patterns, (dark) => {
      const path = modulesPath(dark);
      dark.forEach((row, y) => {
        row.forEach((isDark, x) => {
          const { turns, crossings } = windingAt(path, { x: x + 0.5, y: y + 0.5 });
          expect(turns !== 0).toBe(isDark);
          expect(crossings % 2 === 1).toBe(isDark);
        });
      });
    }),
    { seed, numRuns: 40 },
  );
});

test('modules that touch at a corner only keep outlines of their own', () => {
  const path = modulesPath([
    [true, false],
    [false, true],
  ]);
  expect(path.filter(([letter]) => letter === 'M')).toHaveLength(2);
});

test('straight edges carry no needless corners: a full square has four', () => {
  const path = modulesPath(Array.from({ length: 5 }, () => Array.from({ length: 5 }, () => true)));
  expect(path).toEqual([['M', 0, 0], ['L', 5, 0], ['L', 5, 5], ['L', 0, 5], ['Z']]);
});
