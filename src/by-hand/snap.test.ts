// Places on a ruler's marks: whatever the drawing, every rule is kept, or there is no room.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { testSeed } from '../../tests/seed.ts';
import { type Axis, RULER_MM, snapped } from './snap.ts';

const seed = testSeed('snap');

const axis: fc.Arbitrary<Axis> = fc
  .array(fc.double({ min: 20, max: 270, noNaN: true }), { minLength: 1, maxLength: 20 })
  .chain((given) => {
    const places = given
      .sort((one, other) => one - other)
      .map((atMm) => ({ atMm, leastMark: 3, mostMark: 55 }));
    const pairs = fc.record({
      from: fc.nat(places.length - 1),
      to: fc.nat(places.length - 1),
      marks: fc.nat(4),
    });
    return fc.array(pairs, { maxLength: 12 }).map((rules) => ({
      places,
      rules: rules.filter(({ from, to }) => from < to),
    }));
  });

const EMPTY: Axis = { places: [], rules: [] };

test('every rule and the order are kept, and no place leaves its marks', () => {
  let solved = 0;
  fc.assert(
    fc.property(axis, (across) => {
      const marks = snapped({ across, down: EMPTY })?.across;
      if (!marks) return;
      solved += 1;
      for (const { from, to, marks: least } of across.rules) {
        expect((marks[to] ?? 0) - (marks[from] ?? 0)).toBeGreaterThanOrEqual(least);
      }
      expect([...marks].sort((one, other) => one - other)).toEqual(marks);
      for (const mark of marks) {
        expect(Number.isInteger(mark)).toBe(true);
        expect(mark).toBeGreaterThanOrEqual(3);
        expect(mark).toBeLessThanOrEqual(55);
      }
    }),
    { seed, numRuns: 100 },
  );
  expect(solved).toBeGreaterThan(20);
});

test('gaps that are alike stay alike', () => {
  const places = [23, 54.3, 85.6, 116.9, 148.2].map((atMm) => ({
    atMm,
    leastMark: 2,
    mostMark: 40,
  }));
  const marks = snapped({ across: { places, rules: [] }, down: EMPTY })?.across ?? [];
  const gaps = marks.slice(1).map((mark, index) => mark - (marks[index] ?? 0));
  expect(new Set(gaps).size).toBe(1);
  expect((gaps[0] ?? 0) * RULER_MM).toBe(30);
});

test('says that there is no room rather than break a rule', () => {
  const places = [10, 20].map((atMm) => ({ atMm, leastMark: 2, mostMark: 4 }));
  const across = { places, rules: [{ from: 0, to: 1, marks: 3 }] };
  expect(snapped({ across, down: EMPTY })).toBeUndefined();
});
