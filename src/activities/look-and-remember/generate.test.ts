// What the generator promises, over tasks of all values.
import { describe, expect, test } from 'vitest';
import { testSeed } from '../../../tests/seed.ts';
import {
  attributesOf,
  directionRelation,
  type Figure,
  fairlyDifferent,
} from '../../figures/index.ts';
import { lookAndRemember } from './index.ts';
import { anyTasks, type Made, taskOf, valuesAt } from './tasks-to-test.ts';

const MADE = anyTasks(300, testSeed('look-and-remember, any tasks'));

const FIELDS = {
  colour: ['colour'],
  form: ['form'],
  size: ['size'],
  turn: ['turn'],
  count: ['count', 'dotSize'],
  fill: ['fill'],
} as const;

/** In how many of the content's attributes two figures differ. */
function differingIn({ values }: Made, one: Figure, other: Figure): number {
  const attributes = attributesOf(values.content);
  return attributes.filter((attribute) =>
    FIELDS[attribute].some((field) => one[field] !== other[field]),
  ).length;
}

function wrongOf({ printed, answer }: Made): readonly Figure[] {
  return printed.choices.filter((_, place) => !answer.includes(place));
}

function looksOf(figures: readonly Figure[]): ReadonlySet<string> {
  return new Set(figures.map((figure) => JSON.stringify(figure)));
}

describe('every task', () => {
  test('R1 R4 is proven, and its key names what comes again', () => {
    for (const { values, printed, answer, name } of MADE) {
      expect(lookAndRemember.prove({ printed, answer }), name).toEqual({ proven: true });
      const set = looksOf(printed.set);
      const again = printed.choices.map((figure) => set.has(JSON.stringify(figure)));
      expect(answer, name).toEqual(again.flatMap((isAgain, place) => (isAgain ? [place] : [])));
      expect([printed.set.length, printed.choices.length], name).toEqual([
        values.set,
        values.choices,
      ]);
    }
  });

  test('R1 has no wrong choice that is not fairly different from all in the frame', () => {
    for (const made of MADE) {
      for (const wrong of wrongOf(made)) {
        expect(
          made.printed.set.every((figure) => fairlyDifferent(figure, wrong)),
          made.name,
        ).toBe(true);
      }
    }
  });

  test('R2 has no figure twice, neither in the frame nor below', () => {
    for (const { values, printed, name } of MADE) {
      expect(looksOf(printed.set).size, name).toBe(values.set);
      expect(looksOf(printed.choices).size, name).toBe(values.choices);
    }
  });

  test('R3 differs in what the content names alone, and mirrors nothing from left to right', () => {
    for (const { values, printed, name } of MADE) {
      const figures = [...printed.set, ...printed.choices];
      const named = attributesOf(values.content).flatMap((attribute) => [...FIELDS[attribute]]);
      const bare = figures.map((figure) => {
        const rest = Object.entries(figure).filter(
          ([field]) => !named.some((one) => one === field),
        );
        return JSON.stringify(rest);
      });
      expect(new Set(bare).size, name).toBe(1);
      if (!attributesOf(values.content).includes('turn')) continue;
      const relations = figures.flatMap((one) =>
        figures.map((other) => directionRelation(one, { ...other, colour: one.colour })),
      );
      expect(relations, name).not.toContain('left-right');
    }
  });

  test('R5 brings all again, or half of them rounded up', () => {
    for (const { values, answer, name } of MADE) {
      const half = [0, 1, 1, 2, 2, 3][values.set];
      expect(answer.length, name).toBe(values.again === 'all' ? values.set : half);
    }
  });

  test('R6 has exactly the wanted near misses, where more than one thing is looked at', () => {
    let checked = 0;
    for (const made of MADE) {
      const { values, printed, name } = made;
      if (attributesOf(values.content).length === 1) continue;
      checked++;
      const nearest = wrongOf(made).map((wrong) =>
        Math.min(...printed.set.map((figure) => differingIn(made, figure, wrong))),
      );
      expect(nearest.filter((count) => count === 1).length, name).toBe(values.nearMisses);
      expect(Math.min(2, ...nearest), name).toBeGreaterThan(0);
    }
    expect(checked).toBeGreaterThan(20);
  });
});

test('R7 the one to be found stands in each place equally often', () => {
  const RUNS = 600;
  const places = Array.from({ length: RUNS }, (_, seed) => taskOf(valuesAt(1), seed).answer[0]);
  for (const place of [0, 1, 2]) {
    const share = places.filter((other) => other === place).length / RUNS;
    // A third is expected; five standard deviations of 600 throws are 0.096.
    expect(Math.abs(share - 1 / 3), `place ${place}`).toBeLessThan(0.096);
  }
});

test.each(['sizes', 'directions'] as const)(
  'R7 of %s any may be the one in the frame',
  (content) => {
    const field = content === 'sizes' ? 'size' : 'turn';
    const ranks = Array.from({ length: 300 }, (_, seed) => {
      const { printed } = taskOf(valuesAt(1, { content }), seed);
      const rising = printed.choices.map((figure) => figure[field] ?? 0).sort((a, b) => a - b);
      return rising.indexOf(printed.set[0]?.[field] ?? 0);
    });
    for (const rank of [0, 1, 2]) {
      // A third is expected; five standard deviations of 300 throws are 0.136.
      const share = ranks.filter((other) => other === rank).length / ranks.length;
      expect(Math.abs(share - 1 / 3), `rank ${rank}`).toBeLessThan(0.136);
    }
  },
);

test('what is answered names each that was in the frame', () => {
  const { printed, answer } = taskOf(valuesAt(5), 4);
  const words = lookAndRemember.words.en.answer(printed, answer);
  expect(words).toMatch(
    /^Counted along the rows, two were in the frame: the \w+, [^;]+; the \w+, [^;]+\.$/,
  );
});
