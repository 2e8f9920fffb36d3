// Keys on a choice whose list is closed.
import { expect, test } from 'vitest';
import { choiceByKey } from './choice-by-key.ts';

const CHOICES = [
  { value: 'a', name: 'colours' },
  { value: 'b', name: 'shapes' },
  { value: 'c', name: 'capital letters' },
];

test.each([
  ['ArrowLeft', 'b', 'a'],
  ['ArrowRight', 'b', 'c'],
  ['ArrowLeft', 'a', undefined],
  ['ArrowRight', 'c', undefined],
  ['c', 'a', 'c'],
  ['C', 'c', 'a'],
  ['s', 'unknown', 'b'],
  ['x', 'a', undefined],
  [' ', 'a', undefined],
  ['Enter', 'a', undefined],
])('%s where %s is chosen chooses %s', (key, value, chosen) => {
  expect(choiceByKey(key, value, CHOICES)).toBe(chosen);
});
