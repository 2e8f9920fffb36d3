// Promises of the generator over its whole range of values, checked on the printed cells.
import { describe, expect, test } from 'vitest';
import { testSeed } from '../../../tests/seed.ts';
import { type Figure, fairlyDifferent, sameFigure } from '../../figures/index.ts';
import { mirrorHalf } from './index.ts';
import { LADDER } from './ladder.ts';
import type { Cells } from './task.ts';
import { anyTasks, type Made, taskOf, valuesAt } from './tasks-to-test.ts';

const MADE = anyTasks(250, testSeed('mirror-half, generated tasks'));

/** What stands in a place, as text; figures that print alike are written alike. */
function written(cells: Cells, kinds: Figure[]): readonly number[] {
  return cells.map((cell) => {
    if (cell === null) return -1;
    const known = kinds.findIndex((kind) => sameFigure(kind, cell));
    return known >= 0 ? known : kinds.push(cell) - 1;
  });
}

/** The rows of a grid. */
function rowsOf(marks: readonly number[], columns: number): readonly (readonly number[])[] {
  return Array.from({ length: marks.length / columns }, (_, row) =>
    marks.slice(row * columns, (row + 1) * columns),
  );
}

const PLAIN = MADE.filter(({ values }) => !values.content.startsWith('directions'));

describe('every task of valid values', () => {
  test('is proven', () => {
    for (const made of MADE) expect(mirrorHalf.prove(made), made.name).toEqual({ proven: true });
  });

  test('R1 has rows that read the same both ways across an upright line, columns across a level one', () => {
    const filled = PLAIN.filter(({ answer }) => 'cells' in answer);
    expect(filled.length).toBeGreaterThan(40);
    for (const { printed, answer, name } of filled) {
      if (!('cells' in answer)) continue;
      const { part, axis } = printed;
      const columns = axis === 'level' ? part.columns : 2 * part.columns;
      const rows = rowsOf(written(answer.cells, []), columns);
      if (axis !== 'level') for (const row of rows) expect(row, name).toEqual([...row].reverse());
      if (axis !== 'upright') expect(rows, name).toEqual([...rows].reverse());
    }
  });

  test('R2 has a part that is not its own mirror image, in the line or upside down', () => {
    for (const { printed, name } of PLAIN) {
      const { part, axis } = printed;
      const rows = rowsOf(written(part.cells, []), part.columns);
      const across = rows.map((row) => [...row].reverse());
      const down = [...rows].reverse();
      expect(rows, name).not.toEqual(across);
      expect(rows, name).not.toEqual(down);
      if (axis === 'both') expect(rows, name).not.toEqual([...across].reverse());
    }
  });

  test('R3 has figures that look the same in the mirror, but for directions', () => {
    for (const { printed, name } of PLAIN) {
      for (const figure of printed.part.cells) {
        if (figure === null) continue;
        const turned = printed.axis === 'level' ? 180 : 0;
        expect(sameFigure(figure, { ...figure, mirrored: true, turn: turned }), name).toBe(true);
      }
    }
  });

  test('R5 has the wanted number of elements and of kinds, every two kinds fairly different', () => {
    for (const { values, printed, name } of MADE) {
      const kinds: Figure[] = [];
      const marks = written(printed.part.cells, kinds);
      expect(marks.filter((mark) => mark >= 0).length, name).toBe(values.elements);
      expect(kinds.length, name).toBe(values.kinds);
      kinds.forEach((one, index) => {
        for (const other of kinds.slice(index + 1)) {
          expect(fairlyDifferent(one, other), name).toBe(true);
        }
      });
    }
  });

  test('R6 offers the wanted number of halves, no two alike, the right one among them', () => {
    const chosen = MADE.filter(({ printed }) => printed.offered);
    expect(chosen.length).toBeGreaterThan(40);
    for (const { values, printed, name } of chosen) {
      const kinds: Figure[] = [];
      const halves = (printed.offered ?? []).map(({ cells }) => written(cells, kinds).join());
      expect(new Set(halves).size, name).toBe(values.choices);
    }
  });
});

/** The offered halves that are the given one as it is, and as it is upside down. */
function copiesIn({ printed }: Made): { readonly shifted: number; readonly turned: number } {
  const kinds: Figure[] = [];
  const part = written(printed.part.cells, kinds);
  const halves = (printed.offered ?? []).map(({ cells }) => written(cells, kinds).join());
  return {
    shifted: halves.filter((half) => half === part.join()).length,
    turned: halves.filter((half) => half === [...part].reverse().join()).length,
  };
}

describe('R7 wrong halves', () => {
  const tasksOf = (changes: Parameters<typeof valuesAt>[1]) =>
    Array.from({ length: 60 }, (_, seed) =>
      taskOf(valuesAt(6, { response: 'point', ...changes }), seed),
    );

  test('are a shifted copy and a turned one only where they are asked for', () => {
    for (const made of tasksOf({ choices: 4, wrong: 'copied' })) {
      expect(copiesIn(made), made.name).toEqual({ shifted: 1, turned: 1 });
    }
    for (const made of tasksOf({ choices: 3, wrong: 'turned' })) {
      expect(copiesIn(made), made.name).toEqual({ shifted: 0, turned: 1 });
    }
    for (const wrong of ['far', 'near'] as const) {
      for (const made of tasksOf({ choices: 3, wrong })) {
        expect(copiesIn(made), made.name).toEqual({ shifted: 0, turned: 0 });
      }
    }
  });

  test.each([
    ['near', 1],
    ['far', 2],
  ] as const)('with %s have %i of four elements missing from their places', (wrong, moved) => {
    for (const { printed, answer, name } of tasksOf({ choices: 3, wrong })) {
      const kinds: Figure[] = [];
      const halves = (printed.offered ?? []).map(({ cells }) => written(cells, kinds));
      const right = halves['choice' in answer ? answer.choice : -1] ?? [];
      for (const half of halves.filter((other) => other !== right)) {
        const off = right.filter((mark, place) => mark >= 0 && half[place] !== mark);
        expect(off.length, name).toBe(moved);
      }
    }
  });

  test('and right ones stand in each place equally often', () => {
    const tasks = Array.from({ length: 300 }, (_, seed) =>
      taskOf(valuesAt(6, { response: 'ring', choices: 3 }), seed),
    );
    // Five standard deviations of a third in 300 throws.
    const slack = 5 * Math.sqrt(2 / 9 / 300);
    for (const place of [0, 1, 2]) {
      const share =
        tasks.filter(({ answer }) => 'choice' in answer && answer.choice === place).length / 300;
      expect(Math.abs(share - 1 / 3)).toBeLessThan(slack);
    }
  });

  test('no step offers halves, and none mirrors a direction', () => {
    for (const { values } of LADDER) {
      expect(['sticker', 'colour-in', 'draw']).toContain(values.response);
      expect(values.content.startsWith('directions')).toBe(false);
    }
  });
});
