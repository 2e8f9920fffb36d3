// Promises of the generator over its whole range of values, each checked by comparing printed figures field by field.
import { describe, expect, test } from 'vitest';
import { testSeed } from '../../../tests/seed.ts';
import { directionRelation, type Figure, fairlyDifferent } from '../../figures/index.ts';
import { missingPart } from './index.ts';
import { solve } from './solve.ts';
import { PARAMETERS, type PartValues } from './task.ts';
import { anyTasks, COLOUR, holeOf, type Made, rightOf, taskOf, valuesAt } from './tasks-to-test.ts';

const MADE = anyTasks(300, testSeed('missing-part, generated tasks'));

const SIZES = { one: 1, two: 2, four: 4 } as const;

/** The field as it was before the hole was made: an attribute's value in each place. */
function filled({ printed, answer }: Made): readonly Figure[] {
  const figures = [...answer.figures];
  return printed.field.map((figure) => figure ?? figures.shift() ?? {});
}

/** The rules of `rules.ts` written out for a field of five rows, by hand; each letter another value. */
const WRITTEN: Readonly<Record<PartValues['rule'], readonly string[]>> = {
  rows: ['aaaaa', 'bbbbb', 'aaaaa', 'bbbbb', 'aaaaa'],
  columns: ['ababa', 'ababa', 'ababa', 'ababa', 'ababa'],
  checker: ['ababa', 'babab', 'ababa', 'babab', 'ababa'],
  diagonal: ['abcab', 'bcabc', 'cabca', 'abcab', 'bcabc'],
  tiles: ['ababa', 'cdcdc', 'ababa', 'cdcdc', 'ababa'],
};

/** Values by letters in the order in which they come. */
function lettersOf(values: readonly unknown[]): string {
  const kinds = [...new Set(values.map((value) => JSON.stringify(value)))];
  return values.map((value) => 'abcdefgh'[kinds.indexOf(JSON.stringify(value))]).join('');
}

function writtenFor(rule: PartValues['rule'], field: number): string {
  return WRITTEN[rule]
    .slice(0, field)
    .map((row) => row.slice(0, field))
    .join('');
}

describe('every task of valid values', () => {
  test('follows its rule once the hole is filled with the answer', () => {
    for (const made of MADE) {
      const { rule, second, field } = made.values;
      if (second === 'same') {
        expect(lettersOf(filled(made)), made.name).toBe(writtenFor(rule, field));
        continue;
      }
      const first = filled(made).map((figure) => figure.form ?? null);
      const isOfForms = new Set(first).size > 1;
      if (isOfForms) expect(lettersOf(first), made.name).toBe(writtenFor(rule, field));
      if (made.values.content === 'shapes-and-colours') {
        const colours = filled(made).map(({ colour }) => colour);
        expect(lettersOf(colours), made.name).toBe(writtenFor(second, field));
      }
    }
  });

  test('R5 offers as many pieces as wanted, all different and as large as the hole, one of them the answer', () => {
    for (const made of MADE) {
      const { values, printed, answer, name } = made;
      const size = SIZES[values.hole];
      expect(answer.figures.length, name).toBe(size);
      expect(printed.field.filter((figure) => figure === null).length, name).toBe(size);
      if (values.response === 'draw') {
        expect(printed.offered, name).toBeUndefined();
        continue;
      }
      const pieces = (printed.offered ?? []).map((piece) => JSON.stringify(piece));
      expect(new Set(pieces).size, name).toBe(values.choices);
      expect(
        printed.offered?.every((piece) => piece.length === size),
        name,
      ).toBe(true);
      expect(rightOf(made), name).toBeGreaterThanOrEqual(0);
    }
  });

  test('R6 has figures that are alike or fairly different, and no left-right mirror images', () => {
    for (const { printed, name } of MADE) {
      const all = [...printed.field, ...(printed.offered ?? []).flat()];
      const kinds = [...new Map(all.map((figure) => [JSON.stringify(figure), figure])).values()];
      for (const [index, one] of kinds.entries()) {
        for (const other of kinds.slice(index + 1)) {
          if (!one || !other) continue;
          const told = `${name}: ${JSON.stringify([one, other])}`;
          expect(fairlyDifferent(one, other), told).toBe(true);
          expect(['left-right', 'opposite-obliques'], told).not.toContain(
            directionRelation(one, other),
          );
        }
      }
    }
  });

  test('has wrong pieces of the field or one figure off where they are to be near, else strangers', () => {
    for (const made of MADE.filter(({ values }) => values.second === 'same')) {
      const { values, printed, answer, name } = made;
      if (values.hole === 'one' && values.choices > 2) continue;
      const shown = new Set(printed.field.map((figure) => JSON.stringify(figure)));
      const wrong = (printed.offered ?? []).filter((_, place) => place !== rightOf(made));
      const offs = wrong.map(
        (piece) =>
          piece.filter(
            (figure, at) => JSON.stringify(figure) !== JSON.stringify(answer.figures[at]),
          ).length,
      );
      if (values.likeness === 'far') {
        expect(Math.min(...offs, 4), name).toBe(offs.length === 0 ? 4 : answer.figures.length);
      } else if (wrong.length > 0) {
        const isTurned = JSON.stringify([...answer.figures].reverse());
        const nears = wrong.filter(
          (piece, index) => offs[index] === 1 || JSON.stringify(piece) === isTurned,
        );
        expect(nears.length, name).toBe(wrong.length);
        expect(shown.size, name).toBeGreaterThan(1);
      }
    }
  });
});

test('R11 the hole comes in every place and the right piece in every position about equally often', () => {
  const holes = Array.from({ length: 9 }, () => 0);
  const positions = [0, 0, 0];
  for (let seed = 0; seed < 450; seed++) {
    const made = taskOf(valuesAt(3), seed);
    holes[holeOf(made)] = (holes[holeOf(made)] ?? 0) + 1;
    positions[rightOf(made)] = (positions[rightOf(made)] ?? 0) + 1;
  }
  for (const count of holes) expect(Math.abs(count - 50), holes.join(' ')).toBeLessThan(25);
  for (const count of positions) {
    expect(Math.abs(count - 150), positions.join(' ')).toBeLessThan(45);
  }
});

const { rule: RULES, second: SECONDS } = PARAMETERS;
/** Holes with their rows and columns. */
const HOLES = [
  ['one', 1, 1],
  ['two', 1, 2],
  ['four', 2, 2],
] as const;

describe.each(RULES.values)('R1 to R4 with %s', (rule) => {
  test.each(SECONDS.values)(
    'and %s, a hole in any place of any field has one filling',
    (second) => {
      for (const [hole, rows, columns] of HOLES) {
        for (let field = 3; field <= 5; field++) {
          const wanted = { ...valuesAt(1), rule, second, hole, field };
          if (!missingPart.read(1, wanted, COLOUR).ok) continue;
          const figures = filled(taskOf(wanted, field));
          for (let top = 0; top <= field - rows; top++) {
            for (let left = 0; left <= field - columns; left++) {
              const isMissing = (place: number) => {
                const [row, column] = [Math.floor(place / field) - top, (place % field) - left];
                return row >= 0 && row < rows && column >= 0 && column < columns;
              };
              const found = solve({
                field: figures.map((figure, place) => (isMissing(place) ? null : figure)),
                columns: field,
                response: 'draw',
              });
              const missing = figures.filter((_, place) => isMissing(place));
              const told = `${hole} of ${field} rows at ${top}, ${left}`;
              expect(found, told).toEqual({ answers: [{ figures: missing }], faults: [] });
            }
          }
        }
      }
    },
  );
});
