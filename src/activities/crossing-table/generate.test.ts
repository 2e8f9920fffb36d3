// Promises of the generator over its whole range of values, each checked in the printed table.
import { describe, expect, test } from 'vitest';
import { testSeed } from '../../../tests/seed.ts';
import { type Figure, fairlyDifferent } from '../../figures/index.ts';
import { compareFigures } from '../figure-comparison.ts';
import { type Head, PARAMETERS, type Printed } from './task.ts';
import { type Made, makeTasks } from './tasks-to-test.ts';

const MADE = makeTasks(250, testSeed('crossing-table, generated tasks'));
const keyOf = (figure: Figure) => JSON.stringify(Object.entries(figure).sort());

/** The table filled by its key, row by row. */
function filled({ rows }: Printed, key: readonly Figure[]): readonly (readonly Figure[])[] {
  const left = [...key];
  return rows.map((row) => row.map((figure) => figure ?? left.shift() ?? {}));
}

function turnedOver(rows: readonly (readonly Figure[])[]): readonly (readonly Figure[])[] {
  return (rows[0] ?? []).map((_, column) => rows.map((row) => row[column] ?? {}));
}

/** Fields that all figures of the line share with each other, but not all figures of the table. */
function aboutOf(line: readonly Figure[], all: readonly Figure[]): readonly string[] {
  const fields = [...new Set(all.flatMap((figure) => Object.keys(figure)))] as (keyof Figure)[];
  const kinds = (figures: readonly Figure[], field: keyof Figure) =>
    new Set(figures.map((figure) => figure[field])).size;
  return fields.filter((field) => kinds(line, field) === 1 && kinds(all, field) > 1);
}

function has(figure: Figure, head: Head): boolean {
  return Object.entries(head).every(([field, value]) => figure[field as keyof Figure] === value);
}

function givenCounts({ rows }: Printed): readonly (readonly number[])[] {
  const isGiven = rows.map((row) => row.map((figure) => (figure ? 1 : 0)));
  const sum = (numbers: readonly number[]) =>
    numbers.reduce((total: number, next) => total + next, 0);
  const columns = (rows[0] ?? []).map((_, column) => sum(isGiven.map((row) => row[column] ?? 0)));
  return [isGiven.map((row) => sum(row)), columns];
}

function headed({ printed }: Made): number {
  return [printed.rowHeads, printed.columnHeads].filter(Boolean).length;
}

describe('every task of valid values', () => {
  test('R1 has figures that are what their heads show, in every row and every column', () => {
    for (const { printed, answer, name } of MADE) {
      const rows = filled(printed, answer.figures);
      for (const [lines, heads] of [
        [rows, printed.rowHeads],
        [turnedOver(rows), printed.columnHeads],
      ] as const) {
        for (const [place, line] of lines.entries()) {
          const head = heads?.[place] ?? {};
          expect(
            line.every((figure) => has(figure, head)),
            name,
          ).toBe(true);
        }
      }
    }
  });

  test('R1 has rows that are all about one thing and columns that are about another', () => {
    for (const { printed, answer, name } of MADE) {
      const rows = filled(printed, answer.figures);
      const [ofRows, ofColumns] = [rows, turnedOver(rows)].map(
        (lines) =>
          new Set(
            lines.map((line) =>
              aboutOf(line, rows.flat())
                .filter((it) => it !== 'dotSize')
                .sort()
                .join(),
            ),
          ),
      );
      expect([ofRows?.size, ofColumns?.size], name).toEqual([1, 1]);
      expect([...(ofRows ?? [])], name).not.toEqual([...(ofColumns ?? [])]);
    }
  });

  test('R2 has heads that state nothing of what their lines do not share', () => {
    for (const made of MADE) {
      const { printed, answer, name } = made;
      const all = filled(printed, answer.figures).flat();
      for (const heads of [printed.rowHeads ?? [], printed.columnHeads ?? []]) {
        for (const head of heads) {
          const isStated = all.filter((figure) => has(figure, head)).length;
          const lines =
            heads === printed.rowHeads ? printed.rows.length : (printed.rows[0]?.length ?? 0);
          expect(isStated, name).toBe(all.length / lines);
        }
      }
      expect(headed(made), name).toBe({ both: 2, one: 1, none: 0 }[made.values.heads]);
    }
  });

  test('R3 shows enough figures to find what is not headed', () => {
    for (const made of MADE) {
      const { printed, name } = made;
      const [inRows = [], inColumns = []] = givenCounts(printed);
      if (!printed.rowHeads) expect(Math.min(...inRows), name).toBeGreaterThan(0);
      if (!printed.columnHeads) expect(Math.min(...inColumns), name).toBeGreaterThan(0);
      if (headed(made) > 0) continue;
      expect(Math.max(...inRows), name).toBeGreaterThan(1);
      expect(Math.max(...inColumns), name).toBeGreaterThan(1);
    }
  });

  test('R4 any two figures can be told apart fairly, none by left and right alone', () => {
    const known = new Set<string>();
    for (const { printed, answer, name } of MADE) {
      const all = [...filled(printed, answer.figures).flat(), ...(printed.loose ?? [])];
      const different = [...new Map(all.map((figure) => [keyOf(figure), figure])).values()];
      for (const [index, one] of different.entries()) {
        for (const other of different.slice(index + 1)) {
          const pair = `${keyOf(one)} ${keyOf(other)}`;
          if (known.has(pair)) continue;
          known.add(pair);
          expect(fairlyDifferent(one, other), `${name}: ${pair}`).toBe(true);
          const { isMirror, differing } = compareFigures(one, other);
          expect(isMirror && differing.size === 1, `${name}: ${pair}`).toBe(false);
        }
      }
    }
  });

  test('R5 offers each missing figure once, and as many as were asked for besides', () => {
    for (const { values, printed, answer, name } of MADE) {
      expect(answer.figures.length, name).toBe(values.empty);
      if (values.response === 'draw') {
        expect(printed.loose, name).toBeUndefined();
        continue;
      }
      const loose = (printed.loose ?? []).map(keyOf);
      expect(loose.length, name).toBe(values.empty + values.extra);
      expect(new Set(loose).size, name).toBe(loose.length);
      for (const figure of answer.figures) expect(loose, name).toContain(keyOf(figure));
      for (const figure of printed.rows.flat())
        if (figure) expect(loose, name).not.toContain(keyOf(figure));
    }
  });

  test('R6 a figure that belongs nowhere differs from some of the table in one thing only', () => {
    for (const { printed, answer, name } of MADE) {
      const table = filled(printed, answer.figures).flat();
      const inTable = table.map(keyOf);
      for (const figure of printed.loose ?? []) {
        if (inTable.includes(keyOf(figure))) continue;
        const differing = table.map((other) => compareFigures(figure, other).differing);
        const least = Math.min(
          ...differing.map((all) => [...all].filter((it) => it !== 'layout').length),
        );
        // Of colour and size that go together a line has both.
        expect(least, name).toBeLessThanOrEqual(2);
        expect(least, name).toBeGreaterThan(0);
      }
    }
  });

  test('R7 no figure that is crossed with colours here is black', () => {
    const crossedHere = MADE.filter(({ values }) => !values.content.includes('-and-'));
    expect(crossedHere.length).toBeGreaterThan(50);
    for (const { printed, answer, name } of crossedHere) {
      const colours = filled(printed, answer.figures)
        .flat()
        .map(({ colour }) => colour);
      expect(colours, name).not.toContain('black');
      expect(colours, name).not.toContain(undefined);
    }
  });

  test('R9 the tasks cover every content, response, kind of heads and number of rows', () => {
    for (const parameter of ['content', 'response', 'heads'] as const) {
      const seen = new Set(MADE.map(({ values }) => values[parameter]));
      expect([...seen].sort()).toEqual([...PARAMETERS[parameter].values].sort());
    }
    expect(new Set(MADE.map(({ values }) => values.rows)).size).toBe(3);
  });
});
