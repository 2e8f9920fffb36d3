// The solver against pages of which the answer is plain, and against pages with one rule broken.
import { describe, expect, test } from 'vitest';
import { testSeed } from '../../../tests/seed.ts';
import type { Figure } from '../../figures/index.ts';
import { lookAndRemember } from './index.ts';
import { solve } from './solve.ts';
import type { Printed } from './task.ts';
import { taskOf, valuesAt } from './tasks-to-test.ts';

const RED: Figure = { form: 'circle', colour: 'red' };
const BLUE: Figure = { form: 'circle', colour: 'blue' };
const STAR: Figure = { form: 'star', colour: 'yellow' };

describe('the answers of a page', () => {
  test('R1 are all that were in the frame, however they are written down', () => {
    const choices = [STAR, { colour: 'red', size: 1, turn: 30 } as const, BLUE];
    expect(solve({ set: [RED, BLUE], choices })).toEqual({ answers: [[1, 2]], faults: [] });
    expect(solve({ set: [RED, BLUE], choices: [STAR, BLUE] }).answers).toEqual([[1]]);
  });

  test.each<readonly [string, Figure, Figure]>([
    ['a hardly smaller one', { form: 'heart' }, { form: 'heart', size: 0.85 }],
    ['b and d', { form: 'small-b' }, { form: 'small-d' }],
    ['a turned one among other forms', { form: 'arrow' }, { form: 'arrow', turn: 90 }],
  ])('R1 R3 are several where one may be taken for what was seen: %s', (_name, seen, other) => {
    const found = solve({ set: [seen, STAR], choices: [other, STAR, { form: 'cross' }] });
    expect(found.answers).toEqual([[1], [0, 1]]);
  });

  test('R3 is one where all are of one form and only direction tells', () => {
    const arrow = (turn: number): Figure => ({ form: 'arrow', turn });
    expect(solve({ set: [arrow(0)], choices: [arrow(90), arrow(0)] }).answers).toEqual([[1]]);
  });

  test('R1 are cut off at twenty', () => {
    const choices = [0.8, 0.82, 0.85, 0.87, 0.9, 0.92].map((size) => ({
      form: 'heart' as const,
      size,
    }));
    expect(solve({ set: [{ form: 'heart' }], choices }).answers).toHaveLength(20);
  });
});

describe('faults', () => {
  test.each<readonly [string, Printed]>([
    ['R2 a figure twice in the frame', { set: [RED, RED], choices: [RED, BLUE] }],
    ['R2 two choices alike', { set: [RED], choices: [RED, BLUE, BLUE] }],
    ['R4 nothing comes again', { set: [RED], choices: [STAR, BLUE] }],
    ['R4 nothing is new', { set: [RED, BLUE], choices: [BLUE, RED] }],
  ])('%s', (_name, printed) => {
    expect(solve(printed).faults).toHaveLength(1);
  });
});

type Task = { readonly printed: Printed; readonly answer: readonly number[] };

function withChoice(task: Task, place: number, figure: Figure): Task {
  const choices = task.printed.choices.map((old, index) => (index === place ? figure : old));
  return { ...task, printed: { ...task.printed, choices } };
}

function wrongPlace({ printed, answer }: Task): number {
  return printed.choices.findIndex((_, place) => !answer.includes(place));
}

/** Each breaks one rule of a sound task. */
const BREAKS: Readonly<Record<string, (task: Task) => Task>> = {
  'R1 the key leaves one out': (task) => ({ ...task, answer: task.answer.slice(1) }),
  'R1 the key names a wrong one': (task) => ({
    ...task,
    answer: [...task.answer, wrongPlace(task)].sort((one, other) => one - other),
  }),
  'R1 what was seen becomes another figure': (task) =>
    withChoice(task, task.answer[0] ?? 0, { form: 'numeral-8' }),
  'R1 a wrong one becomes hardly other than one in the frame': (task) =>
    withChoice(task, wrongPlace(task), { ...task.printed.set[0], size: 0.9 }),
  'R2 a wrong one becomes one that was seen': (task) =>
    withChoice(task, wrongPlace(task), task.printed.choices[task.answer[0] ?? 0] ?? {}),
  'R4 the frame shows other figures': ({ printed, answer }) => ({
    printed: { ...printed, set: [{ form: 'numeral-8' }, { form: 'numeral-3' }] },
    answer,
  }),
};

describe('a sound task with one rule broken is not proven', () => {
  test.each(Object.keys(BREAKS))('%s', (name) => {
    const seed = testSeed(name);
    for (let run = 0; run < 10; run++) {
      const sound = taskOf(valuesAt(8), seed + run);
      expect(lookAndRemember.prove(sound), `seed ${seed + run}`).toEqual({ proven: true });
      const broken = BREAKS[name]?.(sound) ?? sound;
      expect(lookAndRemember.prove(broken).proven, `seed ${seed + run}`).toBe(false);
    }
  });
});
