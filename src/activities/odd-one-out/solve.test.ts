// The solver by itself: hand-made pages, an independent search, and pages with one rule broken.
import { describe, expect, test } from 'vitest';
import { said } from '../../../tests/said.ts';
import { type Random, randomFrom } from '../../base/index.ts';
import type { Figure, FormId } from '../../figures/index.ts';
import type { ColourName } from '../../palette/index.ts';
import { oddOneOut } from './index.ts';
import { solve as findings } from './solve.ts';
import type { Printed } from './task.ts';
import { goodValues, type Made, made, seeds, valuesAt } from './tasks-to-test.ts';

const solve = (...page: Parameters<typeof findings>) => said(findings(...page));

function shape(form: FormId, colour: ColourName, size = 1): Figure {
  return { form, colour, size };
}

function pictures(...names: readonly string[]): Printed {
  return { figures: names.map((name): Figure => ({ form: `picture-${name}` })) };
}

function oddIn(printed: Printed): readonly number[] {
  return solve(printed).answers.map(({ odd }) => odd);
}

const RED = shape('circle', 'red');
const BLUE = shape('circle', 'blue');
const RED_SQUARE = shape('square', 'red');
const BLUE_SQUARE = shape('square', 'blue');

describe('R1 exactly one figure stands alone', () => {
  test('R1 the one of another colour, at every place', () => {
    for (const place of [0, 1, 2]) {
      const figures = [0, 1, 2].map((index) => (index === place ? BLUE : RED));
      expect(solve({ figures })).toEqual({ answers: [{ odd: place }], faults: [] });
    }
  });

  test('R1 one odd by colour and another odd by form are two answers', () => {
    expect(oddIn({ figures: [RED, BLUE, RED_SQUARE, RED] })).toEqual([1, 2]);
  });

  test('R1 the only red circle is odd though there are other reds and other circles', () => {
    const figures = [RED, RED_SQUARE, RED_SQUARE, BLUE, BLUE, BLUE_SQUARE, BLUE_SQUARE];
    expect(oddIn({ figures })).toEqual([0]);
  });

  test('R1 where all figures differ in everything, none is odd', () => {
    const figures = [RED, BLUE_SQUARE, shape('star', 'green'), shape('heart', 'yellow')];
    expect(oddIn({ figures })).toEqual([]);
  });

  test('R1 a numeral among letters is odd, though all are different', () => {
    const forms: readonly FormId[] = ['capital-A', 'capital-K', 'numeral-4', 'capital-S'];
    expect(oddIn({ figures: forms.map((form) => ({ form })) })).toEqual([2]);
  });

  test('R1 on four figures the answers are those of a search through all sets of fields', () => {
    const random = randomFrom(20261125);
    for (let page = 0; page < 400; page++) {
      const figures = Array.from({ length: 4 }, () => anyFigure(random));
      expect(oddIn({ figures }), JSON.stringify(figures)).toEqual(bruteOdd(figures));
    }
  });
});

function anyFigure(random: Random): Figure {
  return shape(
    random.pick(['square', 'star']),
    random.pick(['red', 'blue', 'yellow']),
    random.pick([1, 1, 0.5]),
  );
}

/** By counting twins in every choice of fields, and the ends of size. */
function bruteOdd(figures: readonly Figure[]): number[] {
  const odd = new Set<number>();
  for (let mask = 1; mask < 8; mask++) {
    const seen = figures.map(({ form, colour, size }) =>
      [mask & 1 ? form : 0, mask & 2 ? colour : 0, mask & 4 ? size : 0].join(),
    );
    const single = seen.map((look) => seen.filter((other) => other === look).length === 1);
    if (single.every(Boolean)) continue;
    single.forEach((isSingle, place) => {
      if (isSingle) odd.add(place);
    });
  }
  return [...odd].sort();
}

describe('R4 R5 orders and patterns', () => {
  test('R4 of three different sizes the biggest and the smallest stand out', () => {
    const figures = [1, 0.7, 0.5].map((size) => shape('circle', 'red', size));
    expect(oddIn({ figures })).toEqual([0, 2]);
  });

  test('R5 red blue red blue red red: the last breaks the pattern, whatever else is odd', () => {
    const figures = [RED, BLUE, RED, BLUE, RED, RED];
    expect(oddIn({ figures })).toEqual([5]);
    expect(oddIn({ figures: [RED, BLUE, RED_SQUARE, BLUE, RED, RED] })).toEqual([2, 5]);
  });
});

describe('R6 R7 what makes a page unfit', () => {
  test('fewer than three, or all alike', () => {
    expect(solve({ figures: [RED, BLUE] }).faults).not.toEqual([]);
    expect(solve({ figures: [RED, RED, RED] }).faults).toEqual(['all figures look alike']);
  });

  test('R6 a figure alone in the last row, in a column of all, apart, out of line, or touching', () => {
    const figures = [RED, RED, BLUE, RED, RED];
    const still = { x: 0, y: 0 };
    const away = { x: 0.45, y: 0.45 };
    expect(solve({ figures, columns: 4 }).faults).toEqual([
      'the last figure stands alone in its row',
    ]);
    expect(solve({ figures, columns: 1 }).faults).not.toEqual([]);
    expect(solve({ figures, columns: 3 }).faults).toEqual([]);
    const apart = solve({ figures, shifts: [still, still, still, still, { x: 0.45, y: 0 }] });
    expect(apart.faults).toEqual(['figure 5 stands apart from the others']);
    const below = solve({ figures, shifts: [still, { x: 0, y: 0.3 }, still, still, still] });
    expect(below.faults).toEqual(['figure 2 stands apart from the others']);
    const touching = solve({ figures, shifts: [{ x: 0.4, y: 0 }, still, still, still, still] });
    expect(touching.faults).toContain('two figures touch or overlap');
    expect(solve({ figures, shifts: [away] }).faults).not.toEqual([]);
  });

  test('R7 a size hardly smaller, or b among d, is not fair', () => {
    const nearly = shape('circle', 'red', 0.9);
    expect(solve({ figures: [RED, RED, nearly, RED] }).faults).not.toEqual([]);
    const letters: readonly FormId[] = ['small-d', 'small-d', 'small-b'];
    expect(solve({ figures: letters.map((form) => ({ form })) }).faults).not.toEqual([]);
  });
});

describe('R10 pictures', () => {
  test('R10 the only fruit among animals', () => {
    const printed = pictures('cat', 'dog', 'carrot', 'mouse', 'giraffe', 'elephant', 'rabbit');
    expect(solve(printed)).toEqual({ answers: [{ odd: 2 }], faults: [] });
  });

  test('R10 a green one among brown and grey ones, or one that swims, is a second answer', () => {
    expect(oddIn(pictures('cat', 'mouse', 'carrot', 'dog', 'elephant', 'snake'))).toEqual([2, 5]);
    expect(oddIn(pictures('cat', 'dog', 'giraffe', 'carrot', 'crab'))).toContain(4);
    expect(oddIn(pictures('cat', 'dog', 'giraffe', 'carrot', 'crab'))).toContain(3);
  });
});

function changed({ printed, answer }: Made, place: number, change: Partial<Figure>): Made {
  const figures = printed.figures.map((figure, index) =>
    index === place ? { ...figure, ...change } : figure,
  );
  return { answer, printed: { ...printed, figures } };
}

/** A place that is not the odd one's. */
function otherPlace({ answer }: Made): number {
  return answer.odd === 0 ? 1 : 0;
}

function without(task: Made, count: number): Made {
  const { printed, answer } = task;
  const odd = printed.figures[answer.odd] as Figure;
  const others = printed.figures.filter((_, place) => place !== answer.odd);
  return {
    printed: { ...printed, figures: [odd, ...others.slice(0, count - 1)] },
    answer: { odd: 0 },
  };
}

/** Each breaks one rule of a task of shapes whose colours change and say nothing. */
const MUTATIONS: Readonly<Record<string, (task: Made) => Made>> = {
  'another has a colour of its own': (task) => changed(task, otherPlace(task), { colour: 'white' }),
  'another is smaller': (task) => changed(task, otherPlace(task), { size: 0.5 }),
  'another is spotted': (task) => changed(task, otherPlace(task), { fill: 'spots' }),
  'another has a form of its own': (task) => changed(task, otherPlace(task), { form: 'sign-wave' }),
  'another has the form of the odd one': (task) =>
    changed(task, otherPlace(task), { form: task.printed.figures[task.answer.odd]?.form }),
  'the odd one has the form of the others': (task) =>
    changed(task, task.answer.odd, { form: task.printed.figures[otherPlace(task)]?.form }),
  'the odd one is hardly smaller': (task) => changed(task, task.answer.odd, { size: 0.95 }),
  'the key is another': (task) => ({ ...task, answer: { odd: otherPlace(task) } }),
  'two are left': (task) => without(task, 2),
  'the last stands alone in its row': ({ printed, answer }) => ({
    answer,
    printed: { ...printed, columns: printed.figures.length - 1 },
  }),
  'one is moved away': ({ printed, answer }) => ({
    answer,
    printed: {
      ...printed,
      shifts: printed.figures.map((_, place) => ({ x: place === 0 ? -0.45 : 0, y: 0 })),
    },
  }),
};

describe.each(Object.entries(MUTATIONS))('where %s', (_name, mutate) => {
  test('the task is not proven', () => {
    for (const seed of seeds(30)) {
      const task = made(valuesAt(8), seed);
      expect(oddOneOut.prove(task), `seed ${seed}`).toEqual({ proven: true });
      expect(oddOneOut.prove(mutate(task)).proven, `seed ${seed}`).toBe(false);
    }
  });
});

test('R1 the answer does not hang on where the figures stand', () => {
  for (const [seed, values] of goodValues(
    60,
    ({ vary, content }) => !vary && content !== 'picture-kinds',
  )) {
    const { printed, answer } = made(values, seed);
    const turned = { figures: [...printed.figures].reverse() };
    expect(oddIn(turned), `seed ${seed}`).toEqual([printed.figures.length - 1 - answer.odd]);
  }
});
