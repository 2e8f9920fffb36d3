// Likeness of pairs, how directions relate, and what is fair at which age.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { testSeed } from '../../tests/seed.ts';
import { COLOUR_NAMES } from '../palette/index.ts';
import { fairlyDifferent, sameFigure } from './differences.ts';
import { directionRelation, fairForAge, mirrorRelation, pairLikeness } from './discriminability.ts';
import type { Figure } from './figure.ts';
import { SHAPES, SIGNS, SMALL_LETTERS } from './form-names.ts';
import { topologyOf } from './topology.ts';

const figures: fc.Arbitrary<Figure> = fc.oneof(
  fc.record({
    form: fc.constantFrom(...SHAPES, ...SIGNS, ...SMALL_LETTERS.slice(0, 6)),
    colour: fc.constantFrom(...COLOUR_NAMES),
    size: fc.constantFrom(1, 0.7, 0.5),
    turn: fc.constantFrom(0, 45, 90, 180, 270),
  }),
  fc.record({
    form: fc.constant('dots' as const),
    count: fc.integer({ min: 1, max: 6 }),
    layout: fc.constantFrom('dice' as const, 'row' as const, 'scattered-1' as const),
  }),
);
const RUNS = { numRuns: 150, seed: testSeed('discriminability') };

describe('likeness', () => {
  test('is from 0 to 1 and the same both ways round', () => {
    fc.assert(
      fc.property(figures, figures, (one, other) => {
        const likeness = pairLikeness(one, other);
        expect(likeness).toBeGreaterThanOrEqual(0);
        expect(likeness).toBeLessThanOrEqual(1);
        expect(pairLikeness(other, one)).toBe(likeness);
      }),
      RUNS,
    );
  });

  test('is 1 for figures that print alike', () => {
    fc.assert(
      fc.property(figures, (figure) => {
        expect(pairLikeness(figure, { ...figure })).toBe(1);
        expect(pairLikeness({ form: 'circle', turn: 30 }, {})).toBe(1);
      }),
      RUNS,
    );
  });

  test('falls when figures differ in one thing more', () => {
    fc.assert(
      fc.property(fc.constantFrom(...SHAPES), fc.constantFrom(...SHAPES), (form, other) => {
        const plain = pairLikeness({ form }, { form: other });
        const coloured = pairLikeness({ form, colour: 'red' }, { form: other, colour: 'blue' });
        expect(coloured).toBeLessThanOrEqual(plain);
        if (plain >= 0.1) expect(coloured).toBeLessThan(plain);
      }),
      RUNS,
    );
  });

  test('is greater for near colours, sizes and outlines than for far ones', () => {
    const apart = (one: Figure, near: Figure, far: Figure) =>
      expect(pairLikeness(one, near)).toBeGreaterThan(pairLikeness(one, far));
    apart({ colour: 'red' }, { colour: 'brown' }, { colour: 'yellow' });
    apart({ size: 1 }, { size: 0.75 }, { size: 0.5 });
    apart({ form: 'circle' }, { form: 'hexagon' }, { form: 'star' });
  });
});

describe('relations of directions', () => {
  const relationOf = (form: Figure['form'], turn: number, other: number) =>
    directionRelation({ form, turn }, { form, turn: other });

  test.each([
    ['triangle', 0, 180, 'up-down'],
    ['triangle', 90, 270, 'left-right'],
    ['triangle', 0, 90, 'across'],
    ['arrow', 45, 315, 'opposite-obliques'],
    ['arrow', 45, 225, 'turned'],
    ['arrow', 0, 20, 'slightly-turned'],
    ['sign-upright-line', 0, 90, 'across'],
    ['sign-upright-line', 45, 135, 'opposite-obliques'],
    ['crescent', 0, 180, 'left-right'],
    ['crescent', 90, 270, 'up-down'],
  ] as const)('a %s turned by %i and by %i: %s', (form, turn, other, relation) => {
    expect(relationOf(form, turn, other)).toBe(relation);
  });

  test('there is none where a turn cannot be seen, nor between two forms', () => {
    expect(relationOf('circle', 0, 90)).toBeUndefined();
    expect(relationOf('square', 0, 90)).toBeUndefined();
    expect(directionRelation({ form: 'heart' }, { form: 'star' })).toBeUndefined();
  });

  test('an upright and a level line count as one form', () => {
    expect(directionRelation({ form: 'sign-upright-line' }, { form: 'sign-level-line' })).toBe(
      'across',
    );
  });

  test('letters that mirror each other are known by how they do', () => {
    const relation = (one: Figure['form'], other: Figure['form']) =>
      mirrorRelation({ form: one }, { form: other });
    expect(relation('small-b', 'small-d')).toBe('left-right');
    expect(relation('small-b', 'small-p')).toBe('up-down');
    expect(relation('small-b', 'small-q')).toBe('turned');
    expect(relation('numeral-6', 'numeral-9')).toBe('turned');
    expect(relation('small-b', 'small-x')).toBeUndefined();
  });
});

test('pieces and enclosed areas of letters are counted as a reader sees them', () => {
  const expected = { 'capital-B': '1 2', 'capital-O': '1 1', 'capital-C': '1 0', 'small-i': '2 0' };
  for (const [form, topology] of Object.entries(expected)) {
    expect(topologyOf(form as 'capital-B'), form).toBe(topology);
  }
});

describe('fair for an age', () => {
  const dots = (count: number): Figure => ({ form: 'dots', count });
  const ages = [3, 4, 5] as const;
  const agesFor = (one: Figure, other: Figure) => ages.filter((age) => fairForAge(one, other, age));

  test('what is fair at an age stays so, and is never what is unfair at all', () => {
    fc.assert(
      fc.property(figures, figures, (one, other) => {
        const fair = agesFor(one, other);
        expect(fair).toEqual(ages.slice(ages.length - fair.length));
        if (sameFigure(one, other) || !fairlyDifferent(one, other)) expect(fair).toEqual([]);
      }),
      RUNS,
    );
  });

  // About 80 % right: 1:2 at three, 1:1.6 at four, 1:1.3 at five (Halberda & Feigenson 2008, usual model).
  test('quantities ask for finer ratios as children grow', () => {
    expect(agesFor(dots(3), dots(6))).toEqual([3, 4, 5]);
    expect(agesFor(dots(3), dots(5))).toEqual([4, 5]);
    expect(agesFor(dots(3), dots(4))).toEqual([5]);
    expect(agesFor(dots(5), dots(6))).toEqual([]);
  });

  // Starkey & Cooper 1995: one to three are seen at a glance from two years on.
  test('up to three are fair for all', () => {
    expect(agesFor(dots(2), dots(3))).toEqual([3, 4, 5]);
  });

  // Fisher & Heincke 1982: side by side, left and right are hard at four still; Corballis & Zalik 1977.
  test('left and right come at five, mirrored obliques not at all', () => {
    const arrow = (turn: number): Figure => ({ form: 'arrow', turn });
    expect(agesFor(arrow(0), arrow(180))).toEqual([3, 4, 5]);
    expect(agesFor(arrow(90), arrow(270))).toEqual([5]);
    expect(agesFor(arrow(45), arrow(315))).toEqual([]);
    expect(agesFor({ form: 'small-b' }, { form: 'small-d' })).toEqual([]);
  });
});
