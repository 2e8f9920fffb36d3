// The solver against pages of which the answer is plain, and against pages with one rule broken.
import { describe, expect, test } from 'vitest';
import { testSeed } from '../../../tests/seed.ts';
import type { Figure } from '../../figures/index.ts';
import { sizeOrder } from './index.ts';
import { solve } from './solve.ts';
import type { Printed } from './task.ts';
import { taskOf, valuesAt } from './tasks-to-test.ts';

const heart = (size: number): Figure => ({ form: 'heart', size });
const dots = (count: number): Figure => ({ form: 'dots', count });
const orderOf = (...figures: readonly Figure[]) => solve({ figures });

describe('the answers of a page', () => {
  test('R1 are the one order, whatever the words for it', () => {
    expect(orderOf(heart(0.6), { form: 'heart' }, heart(0.3))).toEqual({
      answers: [[2, 0, 1]],
      faults: [],
    });
    expect(orderOf(dots(4), dots(1), dots(2), dots(6)).answers).toEqual([[1, 2, 0, 3]]);
  });

  test('R1 are several where two figures are about as big', () => {
    expect(orderOf(heart(0.6), heart(1), heart(0.5)).answers).toEqual([
      [0, 2, 1],
      [2, 0, 1],
    ]);
    const figures = [heart(0.9), heart(0.4), heart(1)];
    expect(solve({ figures, asked: 'biggest' }).answers).toEqual([[0], [2]]);
    expect(solve({ figures, asked: 'smallest' }).answers).toEqual([[1]]);
    expect(solve({ figures, asked: 'middle' }).answers).toEqual([[0], [2]]);
    expect(orderOf(dots(5), dots(5), dots(1)).answers).toHaveLength(2);
  });

  test('R4 are several where fewer dots are so big that there is more ink', () => {
    const big = { ...dots(2), dotSize: 2 };
    const small = { ...dots(3), dotSize: 0.6 };
    expect(solve({ figures: [dots(1), big, small], asked: 'biggest' }).answers).toEqual([[1], [2]]);
    const alike = [dots(2), dots(6), dots(3)].map((figure) => ({
      ...figure,
      dotSize: Math.round(1000 * Math.sqrt(5 / (figure.count ?? 1))) / 1000,
    }));
    expect(orderOf(...alike).answers).toEqual([[0, 2, 1]]);
  });

  test('R1 are cut off at twenty', () => {
    expect(orderOf(...Array.from({ length: 8 }, () => heart(1))).answers).toHaveLength(20);
  });

  test('R2 are several where one is wider and the other higher', () => {
    // An oblong is about twice as wide as high, a drop higher than wide.
    const figures: Figure[] = [
      { form: 'oblong', size: 0.9 },
      { form: 'drop', size: 0.6 },
      { form: 'circle', size: 0.15 },
    ];
    expect(orderOf(...figures).answers).toHaveLength(2);
    expect(solve({ figures, asked: 'smallest' }).answers).toEqual([[2]]);
  });

  test('R2 are several where one is as wide and high but has much less in it', () => {
    const figures: Figure[] = [
      { form: 'square', size: 0.8 },
      { form: 'star', size: 0.8 },
      { form: 'circle', size: 0.2 },
    ];
    expect(solve({ figures, asked: 'biggest' }).answers.length).toBe(2);
  });
});

describe('faults', () => {
  test.each<readonly [string, Printed]>([
    ['R3 letters that differ', { figures: [heart(1), { form: 'small-a', size: 0.4 }, heart(0.2)] }],
    [
      'R3 pictures that differ',
      {
        figures: [
          { form: 'picture-cat' },
          { form: 'picture-dog', size: 0.3 },
          { form: 'picture-cat', size: 0.6 },
        ],
      },
    ],
    ['R4 dots beside shapes', { figures: [dots(2), heart(1), dots(5)] }],
    [
      'R4 cards of different sizes',
      { figures: [dots(2), { form: 'dots', count: 6, size: 0.5 }, dots(4)] },
    ],
    ['R5 an order that is there already', { figures: [heart(0.3), heart(0.5), heart(1)] }],
    ['R5 an order that is there backwards', { figures: [heart(1), heart(0.5), heart(0.3)] }],
    [
      'R7 one between two',
      { figures: [heart(1), heart(0.3), heart(0.6), heart(0.2)], asked: 'middle' },
    ],
    ['R8 a ring for an order', { figures: [heart(1), heart(0.3), heart(0.6)], response: 'ring' }],
    [
      'R8 lines for one figure',
      { figures: [heart(1), heart(0.3), heart(0.6)], asked: 'biggest', response: 'join' },
    ],
    ['R1 two figures', { figures: [heart(1), heart(0.3)] }],
  ])('%s', (_name, printed) => {
    expect(solve(printed).faults.length).toBeGreaterThan(0);
  });
});

type Task = { readonly printed: Printed; readonly answer: readonly number[] };

function replaced(task: Task, place: number, figure: Figure): Task {
  const figures = task.printed.figures.map((old, index) => (index === place ? figure : old));
  return { ...task, printed: { ...task.printed, figures } };
}

/** Each breaks one rule of a sound task. */
const BREAKS: Readonly<Record<string, (task: Task) => Task>> = {
  'R1 the key is turned round': (task) => ({ ...task, answer: [...task.answer].reverse() }),
  'R1 the key leaves one out': (task) => ({ ...task, answer: task.answer.slice(1) }),
  'R1 two become as big': (task) =>
    replaced(task, task.answer[0] ?? 0, task.printed.figures[task.answer[1] ?? 0] ?? {}),
  'R5 the figures are put into their order': ({ printed, answer }) => ({
    printed: { ...printed, figures: answer.flatMap((place) => printed.figures[place] ?? []) },
    answer: answer.map((_, place) => place),
  }),
};

describe('a sound task with one rule broken is not proven', () => {
  test.each(Object.keys(BREAKS))('%s', (name) => {
    const seed = testSeed(name);
    for (let run = 0; run < 10; run++) {
      const sound = taskOf(valuesAt(8), seed + run);
      expect(sizeOrder.prove(sound), `seed ${seed + run}`).toEqual({ proven: true });
      expect(sizeOrder.prove(BREAKS[name]?.(sound) ?? sound).proven, `seed ${seed}`).toBe(false);
    }
  });
});
