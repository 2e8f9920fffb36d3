// Chances against ways that are counted by hand.
import { expect, test } from 'vitest';
import { chanceAmong, chanceEachTime, chanceOfLaying } from './chance.ts';

test('chance of the right ones among the figures', () => {
  expect([chanceAmong(4), chanceAmong(5, 2), chanceAmong(6, 3)]).toEqual([0.25, 0.1, 1 / 20]);
});

test('chance of being right each time', () => {
  expect([chanceEachTime(2, 1), chanceEachTime(3, 2), chanceEachTime(2, 5)]).toEqual([
    1 / 2,
    1 / 9,
    1 / 32,
  ]);
});

test('chance of laying each thing in its place, with and without some left over', () => {
  expect([chanceOfLaying(3), chanceOfLaying(4, 2), chanceOfLaying(5, 1)]).toEqual([
    1 / 6,
    1 / 12,
    1 / 5,
  ]);
});

test('nothing is right by chance where more is asked for than there is', () => {
  expect([chanceAmong(2, 3), chanceOfLaying(1, 2)]).toEqual([0, 0]);
});
