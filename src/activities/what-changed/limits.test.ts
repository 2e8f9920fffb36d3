// What is refused, and that the refusal says what would do.
import { expect, test } from 'vitest';
import type { Values } from '../parameters.ts';
import { whatChanged } from './index.ts';
import { type ChangeValues, PARAMETERS } from './task.ts';
import { COLOUR, valuesAt } from './tasks-to-test.ts';

function refusalsOf(changes: Partial<ChangeValues>) {
  const read = whatChanged.read(1, changes, COLOUR);
  return read.ok ? [] : read.refusals;
}

test('R10 more changes than half of the figures are refused with the most there can be', () => {
  expect(refusalsOf({ figures: 7, changes: 3 })).toEqual([]);
  expect(refusalsOf({ figures: 7, changes: 4 })).toMatchObject([
    { at: 'what-changed › changes', got: 4, min: 1, max: 3 },
  ]);
});

test('R10 figures change places two and two', () => {
  expect(refusalsOf({ kind: 'swapped', figures: 8, changes: 2 })).toEqual([]);
  expect(refusalsOf({ kind: 'swapped', figures: 8, changes: 3 })).toMatchObject([
    { at: 'what-changed › changes', got: 3, min: 4, max: 4 },
  ]);
  expect(refusalsOf({ kind: 'swapped', figures: 3, changes: 1 })).toMatchObject([
    { at: 'what-changed › kind', nearest: 'first' },
  ]);
});

test('R10 changes of several kinds are at least two', () => {
  expect(refusalsOf({ kind: 'mixed', figures: 6, changes: 1 })).toMatchObject([
    { at: 'what-changed › changes', min: 2, max: 3 },
  ]);
});

test('R10 whatever is refused is accepted once it is mended as it says', () => {
  for (const kind of PARAMETERS.kind.values) {
    for (let figures = PARAMETERS.figures.min; figures <= PARAMETERS.figures.max; figures++) {
      for (let changes = 1; changes <= PARAMETERS.changes.max; changes++) {
        let values: Values = { ...valuesAt(1), kind, figures, changes };
        for (let round = 0; round < 3; round++) {
          const [refusal] = refusalsOf(values as Partial<ChangeValues>);
          if (refusal?.code === 'out-of-range') {
            values = { ...values, changes: changes < refusal.min ? refusal.min : refusal.max };
          } else if (refusal?.code === 'not-a-choice') {
            values = { ...values, kind: refusal.nearest ?? '' };
          }
        }
        expect(refusalsOf(values as Partial<ChangeValues>), JSON.stringify(values)).toEqual([]);
      }
    }
  }
});
