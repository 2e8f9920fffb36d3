// What is refused, and that the refusal says what would do.
import { expect, test } from 'vitest';
import { missingPart } from './index.ts';
import type { PartValues } from './task.ts';
import { COLOUR } from './tasks-to-test.ts';

function refusalsOf(changes: Partial<PartValues>) {
  const read = missingPart.read(1, changes, COLOUR);
  return read.ok ? [] : read.refusals;
}

test.each<[string, Partial<PartValues>, object]>([
  [
    'sizes and directions are too few for four in a square',
    { content: 'directions', rule: 'tiles', field: 4 },
    { at: 'missing-part › rule', got: 'tiles', nearest: 'diagonal' },
  ],
  [
    'one thing to look at follows one rule',
    { content: 'colours', second: 'columns' },
    { at: 'missing-part › second', nearest: 'same' },
  ],
  [
    'three rows have no room for a hole of two',
    { hole: 'two' },
    { at: 'missing-part › hole', nearest: 'one' },
  ],
  [
    'a child that draws has one figure to draw',
    { hole: 'two', field: 4, response: 'draw' },
    { at: 'missing-part › hole', nearest: 'one' },
  ],
  [
    'four in a square need four rows',
    { rule: 'tiles' },
    { at: 'missing-part › field', min: 4, max: 5 },
  ],
  [
    'four in a square with a hole of four leave four rows alone',
    { rule: 'tiles', hole: 'four', field: 5 },
    { at: 'missing-part › field', min: 4, max: 4 },
  ],
  [
    'a hole of four leaves no room for five rows',
    { hole: 'four', field: 5 },
    { at: 'missing-part › field', min: 4, max: 4 },
  ],
  [
    'three sizes make three pieces',
    { content: 'sizes', choices: 4 },
    { at: 'missing-part › choices', got: 4, min: 2, max: 3 },
  ],
])('R12 %s', (_, changes, wanted) => {
  expect(refusalsOf(changes)).toMatchObject([wanted]);
});

test('R12 the same without what is refused is accepted', () => {
  expect(refusalsOf({ content: 'directions', rule: 'diagonal' })).toEqual([]);
  expect(refusalsOf({ content: 'shapes-and-colours', second: 'columns' })).toEqual([]);
  expect(refusalsOf({ hole: 'two', field: 4 })).toEqual([]);
  expect(refusalsOf({ hole: 'four', field: 4 })).toEqual([]);
  expect(refusalsOf({ rule: 'tiles', field: 5 })).toEqual([]);
  expect(refusalsOf({ content: 'sizes', choices: 3 })).toEqual([]);
});
