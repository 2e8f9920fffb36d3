// What is measured of sets of figures, on sets whose measure can be told by looking.
import { describe, expect, test } from 'vitest';
import type { Figure } from '../figures/index.ts';
import {
  attributesNeeded,
  distinctFigures,
  idleAttributes,
  likenessFeatures,
  mixture,
} from './figure-features.ts';
import { handLevel, hardestHand } from './hand.ts';

const RED: Figure = { colour: 'red' };
const BLUE: Figure = { colour: 'blue' };
const RED_STAR: Figure = { form: 'star', colour: 'red' };
const BLUE_STAR: Figure = { form: 'star', colour: 'blue' };
const pointing = (turn: number, more: Figure = {}): Figure => ({ form: 'triangle', turn, ...more });
const dots = (count: number): Figure => ({ form: 'dots', count });

test('figures that print alike are one', () => {
  expect(distinctFigures([RED, { form: 'circle', colour: 'red', turn: 40 }, BLUE])).toEqual([
    RED,
    BLUE,
  ]);
});

describe('attributes needed together', () => {
  test('one where it tells all figures apart, whatever else differs', () => {
    expect(attributesNeeded([RED, BLUE])).toBe(1);
    expect(attributesNeeded([RED, BLUE_STAR])).toBe(1);
    expect(attributesNeeded([pointing(0), pointing(180), pointing(90)])).toBe(1);
  });

  test('two where neither does alone', () => {
    expect(attributesNeeded([RED, BLUE, RED_STAR])).toBe(2);
    expect(attributesNeeded([pointing(0), pointing(180), { form: 'arrow' }])).toBe(2);
  });
});

describe('what changes idly', () => {
  test('is what differs among the items and not among those to be told apart', () => {
    const key = [pointing(0), pointing(180)];
    expect(idleAttributes(key, key)).toBe(0);
    expect(idleAttributes([pointing(0), pointing(180, { size: 0.5 })], key)).toBe(1);
    const items = [pointing(0, { colour: 'red' }), pointing(180, { size: 0.5, colour: 'blue' })];
    expect(idleAttributes(items, key)).toBe(2);
  });
});

describe('likeness', () => {
  test('is that of each figure to the nearest, in the mean; none of one alone', () => {
    expect(likenessFeatures([RED]).likeness).toBe(0);
    const near = likenessFeatures([{ form: 'oval' }, { form: 'circle' }]).likeness ?? 0;
    const far = likenessFeatures([{ form: 'oval' }, { form: 'star' }]).likeness ?? 0;
    expect(near).toBeGreaterThan(far);
    const three = likenessFeatures([{ form: 'oval' }, { form: 'circle' }, { form: 'star' }]);
    expect(three.likeness).toBeGreaterThan(far);
    expect(three.likeness).toBeLessThan(near);
  });

  test('knows mirror images, slants and near quantities', () => {
    const sides = likenessFeatures([pointing(90), pointing(270), pointing(0)]);
    expect(sides.mirrored).toBeCloseTo(2 / 3);
    expect(sides.oblique).toBe(0);
    expect(likenessFeatures([pointing(45), pointing(315)])).toMatchObject({
      mirrored: 1,
      oblique: 1,
    });
    expect(likenessFeatures([{ form: 'small-b' }, { form: 'small-d' }]).mirrored).toBe(1);
    expect(likenessFeatures([dots(2), dots(4)]).quantities).toBeCloseTo(1 / 2);
    expect(likenessFeatures([RED, BLUE])).toMatchObject({ quantities: 0, mirrored: 0 });
  });
});

describe('mixture', () => {
  test('is none of one kind, and grows with the number of kinds and their unlikeness', () => {
    const star: Figure = { form: 'star' };
    expect(mixture([])).toBe(0);
    expect(mixture([RED, RED, RED])).toBe(0);
    const two = mixture([RED, RED, star, star]);
    expect(two).toBeGreaterThan(0.4);
    expect(two).toBeLessThanOrEqual(0.5);
    expect(mixture([RED, BLUE, star, { form: 'arrow' }])).toBeGreaterThan(two);
    expect(mixture([{ form: 'oval' }, { form: 'circle' }])).toBeLessThan(
      mixture([{ form: 'oval' }, star]),
    );
  });
});

test('movements come in the order of copying ages: dot, line, ring, plus, oblique cross, square, triangle', () => {
  const order = (
    [
      'sign-dot',
      'sign-upright-line',
      'sign-ring',
      'sign-plus',
      'sign-oblique-cross',
      'sign-square',
      'sign-triangle',
    ] as const
  ).map(handLevel);
  expect(order).toEqual([...new Set(order)].sort((one, other) => one - other));
  expect(hardestHand(['sign-dot', 'sign-plus', 'sign-ring'])).toBe(handLevel('sign-plus'));
  expect(hardestHand([])).toBe(0);
});
