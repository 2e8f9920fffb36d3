// The solver on sound pages, on pages written by hand, and on pages with one rule broken.
import { describe, expect, test } from 'vitest';
import { testSeed } from '../../../tests/seed.ts';
import type { Task } from '../activity.ts';
import { tangle } from './index.ts';
import type { Answer, Printed } from './task.ts';
import { anyTasks, taskOf, valuesAt } from './tasks-to-test.ts';

const PAGE: Printed = {
  tangle: [
    { figure: { form: 'heart' }, x: 0.5, y: 0.5 },
    { figure: { form: 'square' }, x: 0.9, y: 0.7 },
  ],
  candidates: [{ form: 'square' }, { form: 'star' }, { form: 'heart' }],
};

test('a page written by hand is proven', () => {
  expect(tangle.prove({ printed: PAGE, answer: [0, 2] })).toEqual({ proven: true });
});

describe('R3 an absent outline that is part of another may be taken to be there', () => {
  test.each([
    ['capital-C', 'capital-G'],
    ['small-l', 'small-h'],
    ['small-n', 'small-m'],
  ] as const)('%s in %s', (part, whole) => {
    const { answers } = tangle.solve({
      tangle: [
        { figure: { form: whole }, x: 0.5, y: 0.5 },
        { figure: { form: 'small-z' }, x: 0.9, y: 0.7 },
      ],
      candidates: [{ form: whole }, { form: 'small-z' }, { form: part }, { form: 'star' }],
    });
    expect(answers).toEqual([
      [0, 1],
      [0, 1, 2],
    ]);
  });
});

/** Each breaks one rule of a sound task of three shapes in colours. */
const BREAKS: Readonly<Record<string, (printed: Printed, answer: Answer) => unknown>> = {
  'R1 the key names one less': (printed, answer) => ({ printed, answer: answer.slice(1) }),
  'R1 the key names all': (printed) => ({
    printed,
    answer: printed.candidates.map((_, place) => place),
  }),
  'R1 an outline of the tangle is not offered': (printed, answer) => ({
    printed: {
      ...printed,
      candidates: printed.candidates.filter((_, place) => place !== answer.at(-1)),
    },
    answer: answer.slice(0, -1),
  }),
  'R2 an outline lies on another of nearly its form': (printed, answer) => ({
    printed: {
      ...printed,
      tangle: [
        { figure: { form: 'circle' }, x: 0.5, y: 0.5 },
        { figure: { form: 'hexagon' }, x: 0.51, y: 0.5 },
        ...printed.tangle,
      ],
      candidates: [...printed.candidates, { form: 'circle' }, { form: 'hexagon' }],
    },
    answer: [...answer, printed.candidates.length, printed.candidates.length + 1],
  }),
  'R4 none is absent': (printed, answer) => ({
    printed: {
      ...printed,
      candidates: printed.candidates.filter((_, place) => answer.includes(place)),
    },
    answer: answer.map((_, place) => place),
  }),
  'R4 one outline alone': (printed) => ({
    printed: {
      tangle: printed.tangle.slice(0, 1),
      candidates: [printed.tangle[0]?.figure, { form: 'circle' }],
    },
    answer: [0],
  }),
  'R5 one is offered twice': (printed, answer) => ({
    printed: {
      ...printed,
      candidates: [...printed.candidates, printed.candidates[answer[0] ?? 0]],
    },
    answer: [...answer, printed.candidates.length],
  }),
  'R6 an outline lies about another': (printed, answer) => ({
    printed: {
      ...printed,
      tangle: printed.tangle.map((placed) => ({ ...placed, x: 0.5, y: 0.5 })),
    },
    answer,
  }),
  'R7 one is offered in another colour': (printed, answer) => ({
    printed: {
      ...printed,
      candidates: printed.candidates.map((figure, place) =>
        answer.includes(place) ? figure : { ...printed.tangle[0]?.figure, colour: 'black' },
      ),
    },
    answer,
  }),
};

describe('a sound task with one rule broken is not proven', () => {
  test.each(Object.keys(BREAKS))('%s', (name) => {
    const seed = testSeed(name);
    for (let run = 0; run < 6; run++) {
      const values = valuesAt(4, { content: 'shapes-and-colours', absent: 1 });
      const { printed, answer } = taskOf(values, seed + run);
      expect(tangle.prove({ printed, answer }), `seed ${seed + run}`).toEqual({ proven: true });
      const broken = BREAKS[name]?.(printed, answer) as Task;
      expect(tangle.prove(broken).proven, `seed ${seed + run}`).toBe(false);
    }
  });
});

test('R1 the solver finds the key of any task', () => {
  for (const { printed, answer, name } of anyTasks(60, testSeed('tangle, solved'))) {
    expect(tangle.solve(printed), name).toEqual({ answers: [answer], faults: [] });
  }
});

test('an outline with a fill or a size, and a sign, are refused when they are read', () => {
  for (const figure of [{ fill: 'spots' }, { size: 0.5 }, { form: 'sign-plus' }]) {
    const candidates = [...PAGE.candidates, figure];
    expect(tangle.printed.safeParse({ ...PAGE, candidates }).success).toBe(false);
  }
});
