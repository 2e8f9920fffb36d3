// What makes in-every-box hard, told of boxes whose measures can be counted by hand.
import { expect, test } from 'vitest';
import type { Figure } from '../../figures/index.ts';
import { features } from './features.ts';
import type { Printed } from './task.ts';

const circle = (colour: Figure['colour']): Figure => ({ form: 'circle', colour });
const boxesOf = (...boxes: readonly (readonly Figure[])[]): Printed => ({
  boxes: boxes.map((figures) => ({ figures })),
});
const [RED, BLUE, GREEN, PINK, BLACK] = (['red', 'blue', 'green', 'pink', 'black'] as const).map(
  circle,
) as [Figure, Figure, Figure, Figure, Figure];

test('figures compared, answers and near misses are counted on the page', () => {
  const { compared, answers, nearMisses } = features(
    boxesOf([RED, BLUE, GREEN], [GREEN, RED, PINK], [RED, BLUE, BLACK]),
  );
  expect(compared).toBeCloseTo(Math.log(9));
  expect(answers).toBeCloseTo(Math.log(1));
  // Blue and green each stand in two of three boxes.
  expect(nearMisses).toBeCloseTo(Math.log(3));
});

test('two answers are more than one', () => {
  const two = features(boxesOf([RED, BLUE, GREEN], [BLUE, RED, PINK], [RED, BLUE, BLACK]));
  expect(two.answers).toBeCloseTo(Math.log(2));
});

test('only the wrong figures count as mixed', () => {
  const uniform = features(boxesOf([RED, BLUE], [RED, BLUE], [RED, GREEN], [RED, GREEN]));
  const mixed = features(boxesOf([RED, BLUE], [RED, PINK], [RED, GREEN], [RED, BLACK]));
  expect(uniform.mixed).toBeLessThanOrEqual(0.5);
  expect(mixed.mixed).toBeGreaterThan(0.5);
});

test('a strewn layout and the hand’s work count', () => {
  const printed = boxesOf([RED, BLUE], [RED, GREEN]);
  expect(features(printed)).toMatchObject({ disorder: 0, hand: 0 });
  const harder = features({ ...printed, layout: 'loose', response: 'ring' });
  expect(harder).toMatchObject({ disorder: 1 });
  expect(harder.hand).toBeGreaterThan(features({ ...printed, response: 'sticker' }).hand ?? 0);
});
