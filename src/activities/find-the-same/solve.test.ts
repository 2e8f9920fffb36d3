// The solver against pages of which the answer is plain, and against pages with one rule broken.
import { describe, expect, test } from 'vitest';
import { said } from '../../../tests/said.ts';
import { testSeed } from '../../../tests/seed.ts';
import { type DotLayout, type Figure, figureName } from '../../figures/index.ts';
import { findTheSame } from './index.ts';
import { solve as findings } from './solve.ts';
import { type Printed, printedSchema } from './task.ts';
import { taskOf, valuesAt } from './tasks-to-test.ts';

const solve = (...page: Parameters<typeof findings>) => said(findings(...page));

const RED: Figure = { form: 'circle', colour: 'red' };
const BLUE: Figure = { form: 'circle', colour: 'blue' };
const YELLOW_STAR: Figure = { form: 'star', colour: 'yellow' };

function dots(count: number, layout: DotLayout): Figure {
  return { form: 'dots', count, layout };
}

function answersTo(model: Figure, ...choices: readonly Figure[]): readonly number[] {
  return solve({ model, choices }).answers;
}

describe('the answers of a page', () => {
  test('R1 are the one choice that is the model, however it is written down', () => {
    expect(answersTo(RED, BLUE, { colour: 'red', size: 1, turn: 40, fill: 'solid' })).toEqual([1]);
    expect(answersTo({ form: 'square', turn: 90 }, { form: 'square' }, { form: 'star' })).toEqual([
      0,
    ]);
  });

  test('R1 are none, and the page unfit, where no choice is the model', () => {
    const found = solve({ model: RED, choices: [BLUE, YELLOW_STAR] });
    expect(found.answers).toEqual([]);
    expect(found.faults).toEqual(['none of the choices is just like the model']);
  });

  test('R1 are all that are the model, and the page unfit, where several are', () => {
    const found = solve({ model: RED, choices: [RED, BLUE, RED] });
    expect(found.answers).toEqual([0, 2]);
    expect(found.faults).toHaveLength(1);
  });

  test('R1 make a page unfit that leaves nothing to choose', () => {
    expect(solve({ model: RED, choices: [RED] }).faults).toHaveLength(1);
  });

  test.each<readonly [string, Figure, Figure]>([
    ['b and d', { form: 'small-b' }, { form: 'small-d' }],
    ['6 and 9', { form: 'numeral-6' }, { form: 'numeral-9' }],
    ['a letter and its mirror image', { form: 'small-k' }, { form: 'small-k', mirrored: true }],
    ['capital and small of one letter', { form: 'capital-K' }, { form: 'small-k' }],
    ['a circle and a hexagon', { form: 'circle' }, { form: 'hexagon' }],
    ['sizes nearly the same', { form: 'heart', size: 1 }, { form: 'heart', size: 0.85 }],
    ['a small turn', { form: 'arrow' }, { form: 'arrow', turn: 20 }],
    ['a turned heart among other forms', { form: 'heart' }, { form: 'heart', turn: 90 }],
    ['five dots that lie otherwise among other numbers', dots(5, 'dice'), dots(5, 'row')],
  ])('R2 are two where a choice can be taken for the model: %s', (_name, model, other) => {
    expect(answersTo(model, { form: 'star' }, other, model)).toEqual([2, 1]);
  });

  test('R2 is one where all are of one form and only direction tells', () => {
    const arrow = (turn: number): Figure => ({ form: 'arrow', turn });
    expect(answersTo(arrow(0), arrow(180), arrow(0), arrow(90))).toEqual([1]);
  });

  test('R2 is one where all are as many dots and only how these lie tells', () => {
    const [dice, row, strewn] = [dots(5, 'dice'), dots(5, 'row'), dots(5, 'scattered-1')];
    expect(answersTo(dice, row, dice, strewn)).toEqual([1]);
    expect(answersTo(dice, row, dice, dots(3, 'row'))).toEqual([1, 0]);
  });
});

type Task = { readonly printed: Printed; readonly answer: number };

function replaced(task: Task, place: number, figure: Figure): Task {
  const choices = task.printed.choices.map((old, index) => (index === place ? figure : old));
  return { ...task, printed: { ...task.printed, choices } };
}

function wrongPlace({ printed, answer }: Task): number {
  return (answer + 1) % printed.choices.length;
}

/** Each breaks one rule of a sound task of shapes in colours. */
const BREAKS: Readonly<Record<string, (task: Task) => unknown>> = {
  'R1 the key names another choice': (task) => ({ ...task, answer: wrongPlace(task) }),
  'R1 the key names no choice': (task) => ({ ...task, answer: task.printed.choices.length }),
  'R1 the match becomes another figure': (task) =>
    replaced(task, task.answer, { ...task.printed.model, fill: 'spots' }),
  'R1 a wrong choice becomes the match': (task) =>
    replaced(task, wrongPlace(task), { ...task.printed.model }),
  'R1 the model becomes a wrong choice': (task) => ({
    ...task,
    printed: { ...task.printed, model: task.printed.choices[wrongPlace(task)] },
  }),
  'R1 the model becomes a figure of its own': (task) => ({
    ...task,
    printed: { ...task.printed, model: { form: 'numeral-8' } },
  }),
  'R1 the match is taken out': (task) => ({
    ...task,
    printed: {
      ...task.printed,
      choices: task.printed.choices.filter((_, place) => place !== task.answer),
    },
  }),
  'R1 all but the match are taken out': ({ printed }) => ({
    printed: { ...printed, choices: [printed.model] },
    answer: 0,
  }),
  'R2 a wrong choice becomes the match, hardly smaller': (task) =>
    replaced(task, wrongPlace(task), { ...task.printed.model, size: 0.9 }),
  'R2 the match is turned by a little': (task) =>
    replaced({ ...task, printed: { ...task.printed, model: { form: 'arrow' } } }, task.answer, {
      form: 'arrow',
      turn: 15,
    }),
};

describe('a sound task with one rule broken is not proven', () => {
  test.each(Object.keys(BREAKS))('%s', (name) => {
    const seed = testSeed(name);
    for (let run = 0; run < 10; run++) {
      const sound = taskOf(valuesAt(8), seed + run);
      expect(findTheSame.prove(sound), `seed ${seed + run}`).toEqual({ proven: true });
      const broken = (BREAKS[name]?.(sound) ?? sound) as Task;
      expect(findTheSame.prove(broken).proven, `seed ${seed + run}`).toBe(false);
    }
  });

  test('R1 a page without a model is refused when it is read', () => {
    expect(printedSchema.safeParse({ choices: [RED, BLUE] }).success).toBe(false);
  });
});

test('a task written by hand with model, choices and answer alone is proven', () => {
  const printed = { model: RED, choices: [BLUE, RED, YELLOW_STAR] };
  expect(findTheSame.prove({ printed, answer: 1 })).toEqual({ proven: true });
});

test('what is described names every choice apart, and what is answered names the match', () => {
  for (const content of ['sizes', 'shapes-colours-and-sizes', 'directions-and-colours'] as const) {
    const { printed, answer } = taskOf(valuesAt(5, { content, choices: 3 }), 4);
    const words = findTheSame.words.en;
    const listed = words.describe(printed).split('To choose from: ')[1] ?? '';
    const names = listed
      .slice(0, -1)
      .split('; ')
      .map((item) => item.slice(2));
    expect(new Set(names).size, listed).toBe(3);
    expect(words.answer(printed, answer)).toContain(names[answer] ?? figureName(printed.model));
  }
});
