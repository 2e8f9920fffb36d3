// Promises of the generator over its whole range of values, each checked by comparing printed figures field by field.
import { describe, expect, test } from 'vitest';
import { testSeed } from '../../../tests/seed.ts';
import { attributesOf, directionRelation, type Figure, fairForAge } from '../../figures/index.ts';
import type { Pair } from './task.ts';
import { anyTasks, taskOf, valuesAt } from './tasks-to-test.ts';

const MADE = anyTasks(300, testSeed('same-or-different, generated tasks'));

/** The fields of a figure that carry an attribute; dots of another number may be of another size. */
const FIELDS = {
  colour: ['colour'],
  form: ['form'],
  size: ['size'],
  turn: ['turn'],
  count: ['count', 'dotSize'],
  fill: ['fill'],
} as const;

const AGES = { far: 3, middle: 4, near: 5 } as const;

function differingFields([one, other]: Pair): readonly string[] {
  const fields = new Set([...Object.keys(one), ...Object.keys(other)]) as Set<keyof Figure>;
  return [...fields].filter((field) => one[field] !== other[field]);
}

function isMirrored([one, other]: Pair): boolean {
  const relation = directionRelation(one, other);
  return relation === 'left-right' || relation === 'opposite-obliques';
}

describe('every task of valid values', () => {
  test('R1 has the wanted number of pairs, and the key names exactly those that are alike in every field', () => {
    for (const { values, printed, answer, name } of MADE) {
      const alike = printed.pairs.flatMap((pair, place) =>
        differingFields(pair).length === 0 ? [place] : [],
      );
      expect(printed.pairs.length, name).toBe(values.pairs);
      expect(alike, name).toEqual(answer);
    }
  });

  test('R2 has different pairs that differ in one attribute alone, one of those to be checked', () => {
    for (const { values, printed, name } of MADE) {
      const checked = attributesOf(values.content).slice(0, values.checked);
      for (const pair of printed.pairs) {
        const fields = differingFields(pair);
        const meant = checked.filter((attribute) =>
          FIELDS[attribute].some((field) => fields.includes(field)),
        );
        expect(meant.length, name).toBe(fields.length === 0 ? 0 : 1);
        const [attribute] = meant;
        if (attribute) expect(FIELDS[attribute], name).toEqual(expect.arrayContaining([...fields]));
      }
    }
  });

  test('R2 has each attribute to be checked telling some pair apart', () => {
    for (const { values, printed, name } of MADE) {
      const fields = printed.pairs.flatMap(differingFields);
      for (const attribute of attributesOf(values.content).slice(0, values.checked)) {
        expect(fields, name).toContain(FIELDS[attribute][0]);
      }
    }
  });

  test('R3 has differences that are fair for the age that the likeness names', () => {
    for (const { values, printed, name } of MADE) {
      for (const pair of printed.pairs) {
        if (differingFields(pair).length === 0 || isMirrored(pair)) continue;
        expect(fairForAge(...pair, AGES[values.likeness]), `${name} ${JSON.stringify(pair)}`).toBe(
          true,
        );
      }
    }
  });

  test('R4 has about half of the pairs the same, never all and never none', () => {
    for (const { values, answer, name } of MADE) {
      expect(answer.length, name).toBeGreaterThan(0);
      expect(answer.length, name).toBeLessThan(values.pairs);
      expect(Math.abs(answer.length - values.pairs / 2), name).toBeLessThanOrEqual(1);
    }
  });

  test('R5 has no two boxes with the same two figures', () => {
    for (const { printed, name } of MADE) {
      const boxes = printed.pairs.map((pair) =>
        pair
          .map((figure) => JSON.stringify(Object.entries(figure).sort()))
          .sort()
          .join(),
      );
      expect(new Set(boxes).size, name).toBe(boxes.length);
    }
  });

  test('R7 has mirror images where they are asked for, and nowhere else', () => {
    for (const { values, printed, name } of MADE) {
      expect(printed.pairs.some(isMirrored), name).toBe(values.mirrors !== 'none');
    }
    expect(MADE.some(({ values }) => values.mirrors === 'slanted')).toBe(true);
  });
});

describe('over many tasks', () => {
  const RUNS = 400;
  /** Five standard deviations of a half in so many throws. */
  const SLACK = 5 * Math.sqrt(0.25 / RUNS);

  test('R4 each place holds a pair that is the same about half of the time', () => {
    const tasks = Array.from({ length: RUNS }, (_, seed) => taskOf(valuesAt(5), seed));
    for (let place = 0; place < 4; place++) {
      const share = tasks.filter(({ answer }) => answer.includes(place)).length / RUNS;
      expect(Math.abs(share - 0.5), `place ${place}`).toBeLessThan(SLACK);
    }
  });

  test.each([3, 4, 6])('R4 how many of %i are the same cannot be told beforehand', (pairs) => {
    const numbers = Array.from(
      { length: 60 },
      (_, seed) => taskOf(valuesAt(5, { pairs }), seed).answer.length,
    );
    expect(new Set(numbers).size).toBeGreaterThan(1);
  });
});
