// The solver against pages of which the answer is plain, and against pages with one rule broken.
import { describe, expect, test } from 'vitest';
import { testSeed } from '../../../tests/seed.ts';
import type { Figure } from '../../figures/index.ts';
import { sameOrDifferent } from './index.ts';
import { solve } from './solve.ts';
import { type Pair, type Printed, printedSchema } from './task.ts';
import { taskOf, valuesAt } from './tasks-to-test.ts';

const RED: Figure = { form: 'circle', colour: 'red' };
const BLUE: Figure = { form: 'circle', colour: 'blue' };
const STAR: Figure = { form: 'star' };

function answersOf(...pairs: readonly Pair[]) {
  return solve({ pairs }).answers;
}

describe('the answers of a page', () => {
  test('R1 are the pairs that print alike, however they are written down', () => {
    expect(
      answersOf([RED, BLUE], [RED, { colour: 'red', size: 1, turn: 40, fill: 'solid' }]),
    ).toEqual([[1]]);
    expect(answersOf([{ form: 'square', turn: 90 }, { form: 'square' }], [RED, BLUE])).toEqual([
      [0],
    ]);
  });

  test.each<readonly [string, Figure, Figure]>([
    ['b and d', { form: 'small-b' }, { form: 'small-d' }],
    ['6 and 9', { form: 'numeral-6' }, { form: 'numeral-9' }],
    ['a letter and its mirror image', { form: 'small-k' }, { form: 'small-k', mirrored: true }],
    ['capital and small of one letter', { form: 'capital-K' }, { form: 'small-k' }],
    ['a circle and a hexagon', { form: 'circle' }, { form: 'hexagon' }],
    ['sizes nearly the same', { form: 'heart', size: 1 }, { form: 'heart', size: 0.85 }],
    ['a small turn', { form: 'arrow' }, { form: 'arrow', turn: 20 }],
    [
      'as many dots that lie otherwise',
      { form: 'dots', count: 4, layout: 'dice' },
      { form: 'dots', count: 4, layout: 'row' },
    ],
  ])('R3 are two where a pair can be called the same or not: %s', (_name, one, other) => {
    expect(answersOf([one, other], [STAR, STAR], [RED, BLUE])).toEqual([[1], [0, 1]]);
  });

  test('R6 are two where a figure stands beside itself turned and other pairs differ in form', () => {
    const turned: Pair = [{ form: 'heart' }, { form: 'heart', turn: 180 }];
    expect(answersOf(turned, [RED, RED], [RED, STAR])).toEqual([[1], [0, 1]]);
    expect(answersOf(turned, [RED, RED])).toEqual([[1]]);
  });
});

type Task = { readonly printed: Printed; readonly answer: readonly number[] };

function replaced(task: Task, place: number, pair: Pair): Task {
  const pairs = task.printed.pairs.map((old, index) => (index === place ? pair : old));
  return { ...task, printed: { ...task.printed, pairs } };
}

/** The first place of which the key says that the two are the same, or are not. */
function placeOf({ printed, answer }: Task, isSame: boolean): number {
  return printed.pairs.findIndex((_, place) => answer.includes(place) === isSame);
}

function pairAt({ printed }: Task, place: number): Pair {
  const pair = printed.pairs[place];
  if (!pair) throw new Error(`no pair ${place}`);
  return pair;
}

/** Each breaks one rule of a sound task of shapes in colours. */
const BREAKS: Readonly<Record<string, (task: Task) => unknown>> = {
  'R1 the key forgets a pair': (task) => ({ ...task, answer: task.answer.slice(1) }),
  'R1 the key names a pair that differs': (task) => ({
    ...task,
    answer: [...task.answer, placeOf(task, false)].sort(),
  }),
  'R1 the key names a pair twice': (task) => ({
    ...task,
    answer: [...task.answer, ...task.answer.slice(-1)],
  }),
  'R1 a pair that is the same becomes different': (task) => {
    const place = placeOf(task, true);
    return replaced(task, place, [pairAt(task, place)[0], { form: 'numeral-8' }]);
  },
  'R1 a pair that differs becomes the same': (task) => {
    const place = placeOf(task, false);
    return replaced(task, place, [pairAt(task, place)[0], pairAt(task, place)[0]]);
  },
  'R3 a pair differs by a hair': (task) => {
    const place = placeOf(task, true);
    const [one] = pairAt(task, place);
    return replaced(task, place, [one, { ...one, size: 0.9 }]);
  },
  'R4 all pairs are the same': ({ printed }) => ({
    printed: { ...printed, pairs: printed.pairs.map(([one]) => [one, one]) },
    answer: printed.pairs.map((_, place) => place),
  }),
  'R4 no pair is the same': ({ printed }) => ({
    printed: { ...printed, pairs: printed.pairs.map(([one]) => [one, { form: 'numeral-8' }]) },
    answer: [],
  }),
  'R4 one pair is left': (task) => ({
    printed: { ...task.printed, pairs: [pairAt(task, placeOf(task, true))] },
    answer: [0],
  }),
  'R5 one box holds the same two as another, in the other order': (task) => {
    const [one, other] = pairAt(task, placeOf(task, false));
    const pairs = [...task.printed.pairs, [other, one] as const];
    return { ...task, printed: { ...task.printed, pairs } };
  },
  'R6 a pair differs only in how it lies, among pairs that differ in form': (task) => {
    const place = placeOf(task, true);
    const turned = replaced(task, place, [{ form: 'heart' }, { form: 'heart', turn: 180 }]);
    return { ...turned, answer: task.answer.filter((other) => other !== place) };
  },
};

describe('a sound task with one rule broken is not proven', () => {
  test.each(Object.keys(BREAKS))('%s', (name) => {
    const seed = testSeed(name);
    for (let run = 0; run < 10; run++) {
      const sound = taskOf(valuesAt(8), seed + run);
      expect(sameOrDifferent.prove(sound), `seed ${seed + run}`).toEqual({ proven: true });
      const broken = (BREAKS[name]?.(sound) ?? sound) as Task;
      expect(sameOrDifferent.prove(broken).proven, `seed ${seed + run}`).toBe(false);
    }
  });

  test('R1 a box with one figure or with three is refused when it is read', () => {
    expect(printedSchema.safeParse({ pairs: [[RED]] }).success).toBe(false);
    expect(printedSchema.safeParse({ pairs: [[RED, RED, RED]] }).success).toBe(false);
  });
});

test('a task written by hand with pairs and answer alone is proven', () => {
  const printed = {
    pairs: [
      [RED, BLUE],
      [STAR, STAR],
    ],
  };
  expect(sameOrDifferent.prove({ printed, answer: [1] })).toEqual({ proven: true });
});
