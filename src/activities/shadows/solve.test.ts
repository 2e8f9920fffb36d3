// The solver against pages of which the answer is plain, and against pages with one rule broken.
import { describe, expect, test } from 'vitest';
import { said } from '../../../tests/said.ts';
import { testSeed } from '../../../tests/seed.ts';
import type { Figure } from '../../figures/index.ts';
import { shadows } from './index.ts';
import { solve as findings } from './solve.ts';
import { type Printed, printedSchema } from './task.ts';
import { taskOf, valuesAt } from './tasks-to-test.ts';

const solve = (...page: Parameters<typeof findings>) => said(findings(...page));

const CAT: Figure = { form: 'picture-cat' };
const DUCK: Figure = { form: 'picture-duck' };
const KEY: Figure = { form: 'picture-key' };
const ARROW: Figure = { form: 'arrow', colour: 'red' };

function dark({ form, turn }: Figure, more: Figure = {}): Figure {
  return { form, ...(turn === undefined ? {} : { turn }), fill: 'solid', ...more };
}

describe('the answers of a page', () => {
  test('R1 are the one way to give each its own, whatever the colours and sizes', () => {
    const sized = [dark(KEY, { size: 0.6 }), dark(CAT, { size: 0.5 }), dark(ARROW, { size: 0.7 })];
    expect(solve({ models: [CAT, KEY], shadows: sized })).toEqual({
      answers: [[1, 0]],
      faults: [],
    });
  });

  test('R1 are none, and the page unfit, where a figure has no shadow', () => {
    const found = solve({ models: [CAT], shadows: [dark(KEY), dark(ARROW)] });
    expect(found.answers).toEqual([]);
    expect(found.faults).toEqual(['model 1 has no shadow']);
  });

  test('R1 are none where two figures are to share one shadow', () => {
    expect(solve({ models: [CAT, CAT], shadows: [dark(CAT), dark(KEY)] }).answers).toEqual([]);
  });

  test('R3 are two where two shadows are alike', () => {
    const twice = [dark(CAT), dark(KEY), dark(CAT)];
    expect(solve({ models: [CAT], shadows: twice }).answers).toEqual([[0], [2]]);
  });

  test('R1 are two where two figures throw the same shadow', () => {
    const models: Figure[] = [ARROW, { form: 'arrow', colour: 'blue' }];
    expect(solve({ models, shadows: [dark(ARROW), dark(ARROW), dark(KEY)] }).answers).toEqual([
      [0, 1],
      [1, 0],
    ]);
  });

  test.each<readonly [string, Figure, Figure]>([
    // The pictures that share most of their outline, seen by eye in the same way.
    ['a bus and a fire engine', { form: 'picture-bus' }, { form: 'picture-fire-engine' }],
    ['a ball and a balloon', { form: 'picture-ball' }, { form: 'picture-balloon' }],
    ['a circle and a hexagon', { form: 'circle', colour: 'red' }, { form: 'hexagon' }],
    ['b and d', { form: 'small-b', colour: 'red' }, { form: 'small-d' }],
    ['6 and 9', { form: 'numeral-6', colour: 'red' }, { form: 'numeral-9' }],
    ['a duck and its mirror image', DUCK, { ...DUCK, mirrored: true }],
    ['a key turned by a quarter', KEY, { ...KEY, turn: 90 }],
  ])('R2, R7 are two where another shadow could be its own: %s', (_name, model, other) => {
    const printed = {
      models: [model],
      shadows: [{ ...other, fill: 'solid' as const }, dark(ARROW), dark(model)],
    };
    expect(solve(printed).answers).toEqual([[2], [0]]);
  });

  test('R7 is one where all are of one form and only direction tells', () => {
    const turned = [0, 90, 180].map((turn) => dark({ form: 'arrow', turn }));
    expect(solve({ models: [{ ...ARROW, turn: 180 }], shadows: turned }).answers).toEqual([[2]]);
  });
});

type Task = { readonly printed: Printed; readonly answer: readonly number[] };

function withShadow(task: Task, place: number, change: (old: Figure) => Figure): Task {
  const changed = task.printed.shadows.map((old, index) => (index === place ? change(old) : old));
  return { ...task, printed: { ...task.printed, shadows: changed } };
}

/** The place of a shadow that belongs to none, and that of the first model. */
function sparePlace({ printed, answer }: Task): number {
  return printed.shadows.findIndex((_, place) => !answer.includes(place));
}
function firstPlace({ answer }: Task): number {
  return answer[0] ?? 0;
}

/** Each breaks one rule of a sound task of three pictures and five shadows. */
const BREAKS: Readonly<Record<string, (task: Task) => unknown>> = {
  'R1 the key exchanges two shadows': ({ printed, answer: [first, second, ...rest] }) => ({
    printed,
    answer: [second, first, ...rest],
  }),
  'R1 the key names a shadow of none': (task) => ({
    ...task,
    answer: [sparePlace(task), ...task.answer.slice(1)],
  }),
  'R1 the key forgets a figure': (task) => ({ ...task, answer: task.answer.slice(1) }),
  'R1 a shadow becomes another': (task) =>
    withShadow(task, firstPlace(task), () => ({ form: 'numeral-8', fill: 'solid' })),
  'R3 a shadow of none becomes that of a figure': (task) =>
    withShadow(task, sparePlace(task), (old) => ({ ...old, form: task.printed.models[0]?.form })),
  'R4 a shadow gets a colour': (task) =>
    withShadow(task, firstPlace(task), (old) => ({ ...old, colour: 'red' })),
  'R4 a shadow becomes the picture in its colours': (task) =>
    withShadow(task, firstPlace(task), ({ form }) => ({ form })),
  'R4 a figure becomes a shadow': (task) => ({
    ...task,
    printed: {
      ...task.printed,
      models: task.printed.models.map((model) => ({ ...model, fill: 'solid' })),
    },
  }),
  'R5 one shadow alone is as large as the figures': (task) =>
    withShadow(task, sparePlace(task), ({ size: _size, ...old }) => old),
  'R5 the figures are of several sizes': (task) => ({
    ...task,
    printed: {
      ...task.printed,
      models: task.printed.models.map((model, index) =>
        index === 0 ? { ...model, size: 0.5 } : model,
      ),
    },
  }),
  'R7 a shadow is turned': (task) =>
    withShadow(task, firstPlace(task), (old) => ({ ...old, turn: 90 })),
  'R7 a shadow of none is a figure’s own, turned': (task) =>
    withShadow(task, sparePlace(task), (old) => ({
      ...old,
      form: task.printed.models[0]?.form,
      turn: 90,
    })),
};

describe('a sound task with one rule broken is not proven', () => {
  test.each(Object.keys(BREAKS))('%s', (name) => {
    const seed = testSeed(name);
    for (let run = 0; run < 10; run++) {
      const sound = taskOf(valuesAt(7), seed + run);
      expect(shadows.prove(sound), `seed ${seed + run}`).toEqual({ proven: true });
      const broken = (BREAKS[name]?.(sound) ?? sound) as Task;
      expect(shadows.prove(broken).proven, `seed ${seed + run}`).toBe(false);
    }
  });

  test('R1 a page without a figure, or without shadows, is refused when it is read', () => {
    expect(printedSchema.safeParse({ models: [], shadows: [dark(CAT)] }).success).toBe(false);
    expect(printedSchema.safeParse({ models: [CAT], shadows: [] }).success).toBe(false);
  });
});

test('a task written by hand with models, shadows and answer alone is proven', () => {
  const printed = { models: [CAT], shadows: [dark(KEY), dark(CAT)] };
  expect(shadows.prove({ printed, answer: [1] })).toEqual({ proven: true });
});
