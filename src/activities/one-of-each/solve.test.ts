// The solver against published counts, against grids of which the answer is plain, and against broken pages.
import { describe, expect, test } from 'vitest';
import { said } from '../../../tests/said.ts';
import { testSeed } from '../../../tests/seed.ts';
import { randomFrom } from '../../base/index.ts';
import type { Figure } from '../../figures/index.ts';
import { gradingOf, unitsOf } from './grading.ts';
import { oneOfEach } from './index.ts';
import { solve as findings } from './solve.ts';
import { completionsOf } from './solve-completions.ts';
import { drawSquare } from './squares.ts';
import type { Printed } from './task.ts';
import { makeTasks, taskOf, valuesAt } from './tasks-to-test.ts';

const solve = (...page: Parameters<typeof findings>) => said(findings(...page));

const ALL = 1e9;
const emptyGrid = (order: number) => Array.from({ length: order ** 2 }, () => null);

function countOf(grid: readonly (number | null)[], order: number, boxes = false): number {
  return completionsOf(grid, { order, boxes }, ALL).length;
}

/** The grid with only those cells given whose bit is set. */
function given(full: readonly number[], bits: number) {
  return full.map((figure, cell) => ((bits >> cell) % 2 === 1 ? figure : null));
}

function bitCount(bits: number): number {
  return bits === 0 ? 0 : (bits % 2) + bitCount(Math.floor(bits / 2));
}

describe('R1 counts of all completions are the published ones', () => {
  // OEIS A002860, number of Latin squares of order n: 1, 2, 12, 576, 161280.
  test.each([
    [1, 1],
    [2, 2],
    [3, 12],
    [4, 576],
    [5, 161_280],
  ])('order %d: %d squares', (order, squares) => {
    expect(countOf(emptyGrid(order), order)).toBe(squares);
  });

  // OEIS A107739, n² × n² grids with blocks: 1, 288, 6670903752021072936960 (from memory).
  test('order 4 with blocks: 288 squares', () => {
    expect(countOf(emptyGrid(4), 4, true)).toBe(288);
  });

  /**
   * Sizes of the smallest and largest critical sets: for small n floor(n²/4) (conjectured by Nelder 1977, as told in
   * the notes of R. Bean, github.com/RichardBean/LatinSquares) and OEIS A063437: 0, 1, 3, 7, 11 (from memory).
   */
  test('order 3: critical sets hold two or three cells', () => {
    const sizes = new Set<number>();
    for (const full of completionsOf(emptyGrid(3), { order: 3, boxes: false }, ALL)) {
      const isUnique = Array.from(
        { length: 2 ** 9 },
        (_, bits) => countOf(given(full, bits), 3) === 1,
      );
      for (const [bits, unique] of isUnique.entries()) {
        const places = Array.from({ length: 9 }, (_, cell) => 2 ** cell).filter(
          (bit) => bits & bit,
        );
        if (unique && places.every((bit) => !isUnique[bits - bit])) sizes.add(bitCount(bits));
      }
    }
    expect([...sizes].sort()).toEqual([2, 3]);
  });

  test('order 4: no three cells fix a square, and some four do', () => {
    // Changing rows, columns and figures about leads from every square to one that begins with 0123 both ways.
    const begun = Array.from({ length: 16 }, (_, cell) =>
      cell < 4 ? cell : cell % 4 === 0 ? cell / 4 : null,
    );
    const reduced = completionsOf(begun, { order: 4, boxes: false }, ALL);
    // OEIS A000315, reduced Latin squares of order n: 1, 1, 1, 4, 56 (from memory).
    expect(reduced.length).toBe(4);
    const isFixed = (full: readonly number[], bits: number) =>
      completionsOf(given(full, bits), { order: 4, boxes: false }, 2).length === 1;
    const all = Array.from({ length: 2 ** 16 }, (_, bits) => bits);
    const [threes, fours] = [3, 4].map((size) => all.filter((bits) => bitCount(bits) === size));
    expect(reduced.some((full) => threes?.some((bits) => isFixed(full, bits)))).toBe(false);
    expect(reduced.some((full) => fours?.some((bits) => isFixed(full, bits)))).toBe(true);
  });
});

describe('R3 the grading agrees with the solver', () => {
  test('up to three rows, grids that can be graded are those with one completion, and none needs more than row and column', () => {
    for (const order of [2, 3]) {
      for (const full of completionsOf(emptyGrid(order), { order, boxes: false }, ALL)) {
        for (let bits = 0; bits < 2 ** (order ** 2) - 1; bits++) {
          const cells = given(full, bits);
          const grading = gradingOf(cells, unitsOf(order, false));
          expect(grading !== undefined, JSON.stringify(cells)).toBe(countOf(cells, order) === 1);
          expect(grading?.logic).not.toBe('elsewhere');
        }
      }
    }
  });

  test('with four rows no grid with one completion needs what is elsewhere', () => {
    const random = randomFrom(testSeed('one-of-each, grids of four rows'));
    const kind = { order: 4, logic: 'one-gap', chain: false, empty: 1 } as const;
    let unique = 0;
    for (let run = 0; run < 4000; run++) {
      const boxes = run % 2 === 0;
      const { full } = drawSquare({ ...kind, boxes }, random);
      const kept = new Set(random.sample([...full.keys()], random.int(4, 9)));
      const cells = full.map((figure, cell) => (kept.has(cell) ? figure : null));
      if (completionsOf(cells, { order: 4, boxes }, 2).length !== 1) continue;
      unique += 1;
      expect(gradingOf(cells, unitsOf(4, boxes))?.logic, JSON.stringify(cells)).not.toBe(
        'elsewhere',
      );
      expect(gradingOf(cells, unitsOf(4, boxes))).toBeDefined();
    }
    expect(unique).toBeGreaterThan(200);
  });
});

const [RED, BLUE, GREEN]: readonly Figure[] = [
  { colour: 'red' },
  { colour: 'blue' },
  { colour: 'green' },
];
const figureOr = (sign: string): Figure | null => ({ r: RED, b: BLUE, g: GREEN })[sign] ?? null;

function page(...rows: readonly string[]): Printed {
  const figures = [RED, BLUE, GREEN]
    .flatMap((figure) => (figure ? [figure] : []))
    .slice(0, rows.length);
  return { rows: rows.map((row) => [...row].map(figureOr)), figures };
}

describe('the answers of a page', () => {
  test('R1 are what a row or a column lacks', () => {
    expect(solve(page('rb.', 'bgr', 'grb'))).toEqual({
      answers: [{ figures: [GREEN] }],
      faults: [],
    });
    expect(solve(page('r.', '..')).answers).toEqual([{ figures: [BLUE, BLUE, RED] }]);
  });

  test('R1 are all that there are', () => {
    expect(solve(page('..', '..')).answers.length).toBe(2);
    expect(solve(page('...', '...', '...')).answers.length).toBe(12);
    expect(solve(page('rr', '..')).answers).toEqual([]);
  });

  test('R1 with blocks are fewer', () => {
    const { printed } = taskOf(valuesAt(13), 3);
    expect(solve(printed).answers.length).toBe(1);
    const without = solve({ ...printed, boxes: undefined });
    expect(without.answers.length).toBeGreaterThan(0);
  });

  test('R4 are not to be had where figures pass for each other', () => {
    const like: Printed = {
      ...page('rb', '..'),
      figures: [{ form: 'small-b' }, { form: 'small-d' }],
    };
    expect(
      solve({
        ...like,
        rows: [
          [{ form: 'small-b' }, null],
          [null, null],
        ],
      }).faults,
    ).toEqual(['hard to tell apart: small b and small d']);
  });
});

type Task = { readonly printed: Printed; readonly answer: { readonly figures: readonly Figure[] } };

function withPrinted(task: Task, printed: Partial<Printed>): Task {
  return { ...task, printed: { ...task.printed, ...printed } };
}

/** Each breaks one rule of a sound task. */
const BREAKS: Readonly<Record<string, (task: Task) => Task>> = {
  'R1 two figures of the key change places': ({ printed, answer: { figures } }) => {
    const place = figures.findIndex((figure) => figure !== figures[0]);
    const swapped = figures.map((figure, index) =>
      index === 0 ? (figures[place] ?? figure) : index === place ? (figures[0] ?? figure) : figure,
    );
    return { printed, answer: { figures: swapped } };
  },
  'R1 a figure of the key is left out': ({ printed, answer }) => ({
    printed,
    answer: { figures: answer.figures.slice(1) },
  }),
  'R1 all cells are emptied': (task) =>
    withPrinted(task, { rows: task.printed.rows.map((row) => row.map(() => null)) }),
  'R1 the first row is given twice': (task) =>
    withPrinted(task, { rows: [...task.printed.rows.slice(0, -1), task.printed.rows[0] ?? []] }),
  'R2 one figure to use is not shown': (task) =>
    withPrinted(task, { figures: task.printed.figures.slice(1) }),
  'R2 a figure that is not to be used is shown': (task) =>
    withPrinted(task, { figures: [...task.printed.figures, { form: 'star' }] }),
  'R2 a row is missing': (task) => withPrinted(task, { rows: task.printed.rows.slice(1) }),
  'R4 a figure to use is shown twice': (task) =>
    withPrinted(task, {
      figures: [...task.printed.figures.slice(1), task.printed.figures[1] ?? {}],
    }),
  'R6 stickers of no size': (task) => withPrinted(task, { stickerMm: undefined }),
  'R7 nothing is there to cut out': (task) => withPrinted(task, { response: 'cut' }),
  'R7 the wrong pieces are there to cut out': (task) =>
    withPrinted(task, { response: 'cut', pieces: task.answer.figures.slice(1) }),
  'R8 three rows in blocks': (task) => withPrinted(task, { boxes: true }),
};

describe('a sound task with one rule broken is not proven', () => {
  test.each(Object.keys(BREAKS))('%s', (name) => {
    const seed = testSeed(name);
    for (let run = 0; run < 10; run++) {
      const sound = taskOf(valuesAt(6), seed + run);
      expect(oneOfEach.prove(sound)).toEqual({ proven: true });
      const broken = BREAKS[name]?.(sound) ?? sound;
      expect(oneOfEach.prove(broken).proven, `seed ${seed + run}`).toBe(false);
    }
  });

  test('R6 stickers for shapes', () => {
    const { printed, answer } = taskOf(valuesAt(6, { content: 'shapes', response: 'draw' }), 2);
    const broken = { printed: { ...printed, response: 'sticker', stickerMm: 16 }, answer };
    expect(oneOfEach.prove(broken).proven).toBe(false);
  });
});

test('what is described names every figure apart and does not fill the cells', () => {
  for (const { printed, answer, name } of makeTasks(30, 5)) {
    const words = oneOfEach.words.en.describe(printed);
    expect(words.match(/empty/g)?.length, name).toBe(answer.figures.length);
    const [, used = ''] = /To use: (.*?)\. First row/.exec(words) ?? [];
    const names = used.split(/, | and /);
    expect(new Set(names).size, words).toBe(names.length);
    expect(names.length, words).toBeGreaterThanOrEqual(printed.figures.length);
  }
});
