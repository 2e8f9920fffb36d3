// What makes by-key hard, told of keys and items whose measures can be counted by hand.
import { expect, test } from 'vitest';
import type { Figure, Sign } from '../../figures/index.ts';
import { features } from './features.ts';
import type { Printed } from './task.ts';

const SIGNS: readonly Sign[] = ['sign-dot', 'sign-upright-line', 'sign-plus', 'sign-ring'];
const [CIRCLE, STAR, HEART] = [{ form: 'circle' }, { form: 'star' }, { form: 'heart' }] as const;

function printedOf(figures: readonly Figure[], items: readonly Figure[]): Printed {
  const key = figures.map((figure, place) => ({
    figure,
    response: { kind: 'sign' as const, sign: SIGNS[place] ?? 'sign-dot' },
  }));
  return { key, items };
}

test('items, entries and movements are counted on the page', () => {
  const found = features(
    printedOf([CIRCLE, STAR, HEART], [STAR, STAR, CIRCLE, HEART, CIRCLE, HEART]),
  );
  expect(found.compared).toBeCloseTo(Math.log(6));
  expect(found.keySize).toBeCloseTo(Math.log(3));
  expect(found.movements).toBeCloseTo(Math.log(3));
  expect(found).toMatchObject({ conjunction: 0, conjunctionCompared: 0, idle: 0 });
});

test('one movement with several pencils is one', () => {
  const key = [CIRCLE, STAR].map((figure, place) => ({
    figure,
    response: { kind: 'ring' as const, colour: place === 0 ? ('red' as const) : ('blue' as const) },
  }));
  expect(features({ key, items: [STAR, CIRCLE] }).movements).toBe(0);
});

test('the hand counts by its hardest sign', () => {
  const easy = features(printedOf([CIRCLE, STAR], [CIRCLE, STAR])).hand ?? 0;
  const hard = features(printedOf([CIRCLE, STAR, HEART], [CIRCLE, STAR, HEART])).hand ?? 0;
  expect(hard).toBeGreaterThan(easy);
});

test('two attributes are needed only where one alone would not do', () => {
  const red = (figure: Figure): Figure => ({ ...figure, colour: 'red' });
  const blue = (figure: Figure): Figure => ({ ...figure, colour: 'blue' });
  const joined = [red(CIRCLE), blue(CIRCLE), red(STAR)];
  const { conjunction, conjunctionCompared } = features(printedOf(joined, [...joined, ...joined]));
  expect(conjunction).toBe(1);
  expect(conjunctionCompared).toBeCloseTo(Math.log(6));
  const either = [red(CIRCLE), blue(STAR)];
  expect(features(printedOf(either, either)).conjunction).toBe(0);
});

test('what changes among the items and not in the key is idle', () => {
  const items = [CIRCLE, { ...STAR, size: 0.56 }, { ...CIRCLE, size: 0.76 }, STAR];
  expect(features(printedOf([CIRCLE, STAR], items)).idle).toBe(1);
});
