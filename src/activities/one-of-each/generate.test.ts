// Promises of the generator over its whole range of values, each checked in the printed grid.
import { describe, expect, test } from 'vitest';
import { testSeed } from '../../../tests/seed.ts';
import { randomFrom } from '../../base/index.ts';
import { type Figure, fairlyDifferent } from '../../figures/index.ts';
import { compareFigures } from '../figure-comparison.ts';
import { gradingOf, unitsOf } from './grading.ts';
import { drawSquare, trySquare } from './squares.ts';
import { PARAMETERS, type Printed } from './task.ts';
import { makeTasks } from './tasks-to-test.ts';
import { emptyRange } from './ways.ts';

const MADE = makeTasks(450, testSeed('one-of-each, generated tasks'));
const keyOf = (figure: Figure | null) => JSON.stringify(figure);

/** The rows, columns and blocks of a grid filled by its key. */
function filledLines({ rows, boxes = false }: Printed, key: readonly Figure[]) {
  const left = [...key];
  const full = rows.map((row) => row.map((figure) => figure ?? left.shift() ?? null));
  const columns = full.map((_, column) => full.map((row) => row[column] ?? null));
  const corners = boxes ? [0, 2].flatMap((row) => [0, 2].map((column) => [row, column])) : [];
  const blocks = corners.map(([row = 0, column = 0]) =>
    full.slice(row, row + 2).flatMap((line) => line.slice(column, column + 2)),
  );
  return [...full, ...columns, ...blocks];
}

describe('every task of valid values', () => {
  test('R1 filled by its key, has one of each figure in every row, column and block', () => {
    for (const { printed, answer, name } of MADE) {
      const wanted = printed.figures.map(keyOf).sort();
      for (const line of filledLines(printed, answer.figures)) {
        expect(line.map(keyOf).sort(), name).toEqual(wanted);
      }
    }
  });

  test('R2 has the wanted number of rows, columns, figures and empty cells', () => {
    for (const { values, printed, answer, name } of MADE) {
      const { order, empty } = values;
      expect([printed.figures.length, printed.rows.length], name).toEqual([order, order]);
      for (const row of printed.rows) expect(row.length, name).toBe(order);
      expect(printed.rows.flat().filter((figure) => figure === null).length, name).toBe(empty);
      expect(answer.figures.length, name).toBe(empty);
    }
  });

  test('R3 needs the wanted thought and no harder one, at once or one after the other', () => {
    for (const { values, printed, name } of MADE) {
      const known = printed.figures.map(keyOf);
      const cells = printed.rows.flat().map((figure) => figure && known.indexOf(keyOf(figure)));
      const grading = gradingOf(cells, unitsOf(values.order, values.boxes));
      expect(grading?.logic, name).toBe(values.logic);
      expect((grading?.rounds ?? 0) > 1, name).toBe(values.chain);
    }
  });

  test('R4 any two figures can be told apart fairly, none by left and right alone', () => {
    for (const { printed, name } of MADE) {
      for (const [index, one] of printed.figures.entries()) {
        for (const other of printed.figures.slice(index + 1)) {
          expect(fairlyDifferent(one, other), name).toBe(true);
          const { isMirror, differing } = compareFigures(one, other);
          expect(isMirror && differing.size === 1, `${name}: ${keyOf(one)} ${keyOf(other)}`).toBe(
            false,
          );
        }
      }
    }
  });

  test('R5 any two figures differ in everything that differs at all', () => {
    for (const { printed, name } of MADE) {
      const differing = printed.figures.flatMap((one, index) =>
        printed.figures.slice(index + 1).map((other) =>
          [...compareFigures(one, other).differing]
            .filter((it) => it !== 'layout')
            .sort()
            .join(),
        ),
      );
      expect(new Set(differing).size, `${name} ${differing}`).toBe(1);
    }
  });

  test('R7 has pieces where they are cut out, the very ones that are missing', () => {
    for (const { values, printed, answer, name } of MADE) {
      const expected = values.response === 'cut' ? answer.figures.map(keyOf).sort() : undefined;
      expect(printed.pieces?.map(keyOf).sort(), name).toEqual(expected);
    }
  });

  test('R9 the tasks cover every content, response, order and thought', () => {
    for (const parameter of ['content', 'response', 'logic'] as const) {
      const seen = new Set(MADE.map(({ values }) => values[parameter]));
      expect([...seen].sort()).toEqual([...PARAMETERS[parameter].values].sort());
    }
    expect(new Set(MADE.map(({ values }) => values.order)).size).toBe(4);
  });
});

test('R9 a square of every kind that is not refused comes out of few tries', () => {
  const random = randomFrom(8);
  for (const [order, boxes] of [
    [2, false],
    [3, false],
    [4, false],
    [4, true],
    [5, false],
  ] as const) {
    for (const logic of PARAMETERS.logic.values) {
      for (const chain of [false, true]) {
        const { min, max } = emptyRange({ order, boxes, logic, chain }) ?? { min: 1, max: 0 };
        for (let empty = min; empty <= max; empty++) {
          const wanted = { order, boxes, logic, chain, empty };
          if (logic === 'elsewhere') {
            expect(drawSquare(wanted, random).isEmpty.filter(Boolean).length).toBe(empty);
            continue;
          }
          // With a chance of one in five, 60 tries fail once in a million; 400 are made.
          const tries = Array.from({ length: 60 }, () => trySquare(wanted, random));
          expect(tries.filter(Boolean).length, JSON.stringify(wanted)).toBeGreaterThan(0);
        }
      }
    }
  }
});
