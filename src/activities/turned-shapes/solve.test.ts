// The solver against pages of which the answer is plain, and against pages with one rule broken.
import { describe, expect, test } from 'vitest';
import { testSeed } from '../../../tests/seed.ts';
import type { Figure, FormId } from '../../figures/index.ts';
import { turnedShapes } from './index.ts';
import { solve } from './solve.ts';
import { type Printed, printedSchema } from './task.ts';
import { taskOf, valuesAt } from './tasks-to-test.ts';

const HEART: Figure = { form: 'heart', colour: 'red' };
const TURNED: Figure = { form: 'heart', colour: 'blue', turn: 90, size: 0.6 };
const ARROW: Figure = { form: 'arrow' };
const STAR: Figure = { form: 'star' };

function answersTo(model: Figure, ...choices: readonly Figure[]): readonly (readonly number[])[] {
  return solve({ model, choices }).answers;
}

describe('R1 the answer of a page', () => {
  test('is the choice of the same form, whatever its turn, size, colour and fill', () => {
    expect(answersTo(HEART, ARROW, TURNED, STAR)).toEqual([[1]]);
    expect(answersTo(HEART, { ...TURNED, fill: 'spots' }, ARROW, STAR)).toEqual([[0]]);
    expect(answersTo(HEART, ARROW, STAR, HEART)).toEqual([[2]]);
  });

  test('is all of them together where several are asked for', () => {
    const printed: Printed = { model: HEART, choices: [TURNED, ARROW, STAR, HEART], matches: 2 };
    expect(solve(printed)).toEqual({ answers: [[0, 3]], faults: [] });
    expect(turnedShapes.prove({ printed, answer: [0, 3] })).toEqual({ proven: true });
    expect(turnedShapes.prove({ printed, answer: [0] }).proven).toBe(false);
  });

  test('makes a page unfit where another number is asked for, none fits, or all do', () => {
    expect(solve({ model: HEART, choices: [TURNED, ARROW, HEART] }).faults).toHaveLength(1);
    expect(solve({ model: HEART, choices: [ARROW, STAR] })).toMatchObject({
      answers: [],
      faults: [{}],
    });
    expect(solve({ model: HEART, choices: [TURNED] }).faults).toHaveLength(1);
  });
});

describe('a choice that may be taken for the model makes a second answer', () => {
  test.each<readonly [string, FormId, FormId]>([
    ['R2 a square and a diamond', 'square', 'diamond'],
    ['R2 a circle and a hexagon', 'circle', 'hexagon'],
    ['R2 an oval and a leaf, alike at a slant', 'oval', 'leaf'],
    ['R2 a diamond and a leaf, alike at a slant', 'diamond', 'leaf'],
    ['R4 b and q', 'small-b', 'small-q'],
    ['R4 p and d', 'small-p', 'small-d'],
    ['R4 n and u', 'small-n', 'small-u'],
    ['R4 M and W', 'capital-M', 'capital-W'],
    ['R4 N and Z', 'capital-N', 'capital-Z'],
    ['R4 6 and 9', 'numeral-6', 'numeral-9'],
  ])('%s', (_name, form, other) => {
    const answers = answersTo({ form }, { form: 'star' }, { form: other }, { form, size: 0.6 });
    expect(answers).toEqual([[2], [1, 2]]);
    expect(answersTo({ form: other }, { form: 'star' }, { form }, { form: other })).toHaveLength(2);
  });

  test('R2 signs that are each other turned are one form', () => {
    const line: Figure = { form: 'sign-upright-line' };
    expect(
      solve({ model: line, choices: [{ form: 'sign-level-line' }, STAR, line] }).answers,
    ).toEqual([[0, 2]]);
  });

  test('R7 a mirror image, unless the child is told of it', () => {
    const k: Figure = { form: 'small-k' };
    const choices: Figure[] = [
      { form: 'small-k', mirrored: true, turn: 90 },
      { ...k, turn: 90 },
      { form: 'small-r' },
    ];
    expect(solve({ model: k, choices }).answers).toEqual([[1], [0, 1]]);
    expect(solve({ model: k, choices, mirrors: true }).answers).toEqual([[1]]);
  });

  test('R7 a mirror image that hardly differs, told of or not', () => {
    const rabbit: Figure = { form: 'picture-rabbit' };
    const choices: Figure[] = [{ ...rabbit, mirrored: true }, rabbit, { form: 'picture-car' }];
    expect(solve({ model: rabbit, choices, mirrors: true }).answers).toEqual([[1], [0, 1]]);
  });

  test('R7 a shape that is its own mirror image, turned back, is right', () => {
    expect(answersTo(ARROW, { ...ARROW, mirrored: true, turn: 90 }, STAR, HEART)).toEqual([[0]]);
  });
});

describe('R4 a page is unfit where a right one, as it lies, is something else', () => {
  test.each<readonly [string, Figure, number]>([
    ['a b that reads as q', { form: 'small-b' }, 180],
    ['an M that reads as W', { form: 'capital-M' }, 180],
    ['an N that reads as Z', { form: 'capital-N' }, 90],
    ['a 6 that reads as 9', { form: 'numeral-6' }, 180],
    ['a square on its corner', { form: 'square' }, 45],
    ['a plus that is a cross', { form: 'sign-plus' }, 45],
    ['an upright cross that is an oblique one', { form: 'cross' }, 45],
  ])('%s', (_name, model, turn) => {
    const choices: Figure[] = [{ ...model, turn }, STAR, HEART];
    expect(solve({ model, choices }).faults).toHaveLength(1);
    expect(solve({ model, choices: [{ ...model, size: 0.6 }, STAR, HEART] }).faults).toEqual([]);
  });

  test('R4 but not where it reads as none', () => {
    expect(
      solve({
        model: { form: 'capital-K' },
        choices: [{ form: 'capital-K', turn: 90 }, STAR, HEART],
      }).faults,
    ).toEqual([]);
  });
});

type Task = { readonly printed: Printed; readonly answer: readonly number[] };

function replaced(task: Task, place: number, figure: Figure): Task {
  const choices = task.printed.choices.map((old, index) => (index === place ? figure : old));
  return { ...task, printed: { ...task.printed, choices } };
}

function wrongPlace({ printed, answer }: Task): number {
  return printed.choices.findIndex((_, place) => !answer.includes(place));
}

/** Each breaks one rule of a sound task of shapes. */
const BREAKS: Readonly<Record<string, (task: Task) => Task>> = {
  'R1 the key names a wrong choice': (task) => ({ ...task, answer: [wrongPlace(task)] }),
  'R1 the key names one more': (task) => ({ ...task, answer: [...task.answer, wrongPlace(task)] }),
  'R1 a wrong choice becomes right': (task) =>
    replaced(task, wrongPlace(task), { ...task.printed.model, turn: 90, size: 1 }),
  'R1 a right choice becomes wrong': (task) =>
    replaced(task, task.answer[0] ?? 0, { form: 'numeral-4' }),
  'R1 the model becomes another': (task) => ({
    ...task,
    printed: { ...task.printed, model: { form: 'numeral-4' } },
  }),
  'R1 more are asked for': (task) => ({ ...task, printed: { ...task.printed, matches: 3 } }),
};

describe('a sound task with one rule broken is not proven', () => {
  test.each(Object.keys(BREAKS))('%s', (name) => {
    const seed = testSeed(name);
    for (const step of [4, 11]) {
      const sound = taskOf(valuesAt(step), seed + step);
      expect(turnedShapes.prove(sound), sound.name).toEqual({ proven: true });
      const broken = BREAKS[name]?.(sound) ?? sound;
      expect(turnedShapes.prove(broken).proven, sound.name).toBe(false);
    }
  });

  test('R1 a page without a model is refused when it is read', () => {
    expect(printedSchema.safeParse({ choices: [HEART, ARROW] }).success).toBe(false);
  });
});
