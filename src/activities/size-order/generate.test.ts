// What the generator promises, over tasks of all values.
import { describe, expect, test } from 'vitest';
import { testSeed } from '../../../tests/seed.ts';
import { pathBounds } from '../../base/index.ts';
import { type Figure, formOf, outlineOf } from '../../figures/index.ts';
import { sizeOrder } from './index.ts';
import { anyTasks, COLOUR, type Made, taskOf, valuesAt } from './tasks-to-test.ts';

const MADE = anyTasks(300, testSeed('size-order, any tasks'));

/** The figures from the smallest to the biggest by their longer printed side, or by their dots. */
function rising({ printed }: Made): readonly Figure[] {
  return [...printed.figures].sort((one, other) => amountOf(one) - amountOf(other));
}

function amountOf(figure: Figure): number {
  return formOf(figure) === 'dots' ? (figure.count ?? 1) : Math.max(...sidesOf(figure));
}

function sidesOf(figure: Figure): readonly [number, number] {
  const { left, top, right, bottom } = pathBounds(outlineOf(figure).path);
  return [right - left, bottom - top];
}

describe('every task', () => {
  test('R1 is proven, and its key names the figures in their order', () => {
    for (const made of MADE) {
      const { printed, answer, values, name } = made;
      expect(sizeOrder.prove({ printed, answer }), name).toEqual({ proven: true });
      const order = rising(made).map((figure) => printed.figures.indexOf(figure));
      const wanted = {
        order,
        smallest: order.slice(0, 1),
        biggest: order.slice(-1),
        middle: [order[(order.length - 1) / 2]],
      }[values.asked];
      expect(answer, name).toEqual(wanted);
      expect(printed.figures.length, name).toBe(values.figures);
    }
  });

  test('R1 has neighbours at least 1.3 apart in length, or 1.33 in number; wide ones of three or four 1.42, or 2', () => {
    for (const made of MADE) {
      const amounts = rising(made).map(amountOf);
      const isOfDots = made.values.content === 'dot-quantities';
      const isWide = made.values.difference === 'wide' && made.values.figures < 5;
      const least = isOfDots ? (isWide ? 2 : 1.33) : isWide ? 1.42 : 1.3;
      for (const [index, amount] of amounts.slice(1).entries()) {
        expect(amount / (amounts[index] ?? 0), made.name).toBeGreaterThanOrEqual(least);
      }
    }
  });

  test('R2 has forms that agree in width and in height, where they differ', () => {
    const mixed = MADE.filter(({ values }) => values.content.startsWith('shapes-'));
    expect(mixed.length).toBeGreaterThan(10);
    for (const made of mixed) {
      const sides = rising(made).map(sidesOf);
      expect(new Set(made.printed.figures.map(formOf)).size, made.name).toBe(made.values.figures);
      for (const [index, [wide, high]] of sides.slice(1).entries()) {
        const [before = 0, beforeHigh = 0] = sides[index] ?? [];
        expect(wide / before, made.name).toBeGreaterThanOrEqual(1.3);
        expect(high / beforeHigh, made.name).toBeGreaterThanOrEqual(1.3);
      }
    }
  });

  test('R3 has one form that lies one way wherever not shapes are mixed', () => {
    for (const { values, printed, name } of MADE) {
      if (values.content.startsWith('shapes-')) continue;
      expect(new Set(printed.figures.map(formOf)).size, name).toBe(1);
      expect(
        printed.figures.every(({ turn }) => turn === undefined),
        name,
      ).toBe(true);
    }
  });

  test('R4 has dots with as much ink on every card, or as large dots on every card', () => {
    for (const { values, printed, name } of MADE) {
      if (values.content !== 'dot-quantities') continue;
      const ink = printed.figures.map(({ count = 1, dotSize = 1 }) => count * dotSize ** 2);
      const isEven = Math.max(...ink) - Math.min(...ink) < 0.02;
      const isAlike = printed.figures.every(({ dotSize }) => dotSize === undefined);
      expect(isEven || isAlike, name).toBe(true);
    }
  });
});

test('R5 an order is never there already, and every other one comes', () => {
  const orders = Array.from({ length: 400 }, (_, seed) =>
    taskOf(valuesAt(5, { figures: 3 }), seed).answer.join(''),
  );
  expect([...new Set(orders)].sort()).toEqual(['021', '102', '120', '201']);
});

test.each(['biggest', 'smallest', 'middle'] as const)(
  'R6 the %s stands in each place equally often',
  (asked) => {
    const RUNS = 600;
    const places = Array.from(
      { length: RUNS },
      (_, seed) => taskOf(valuesAt(1, { asked }), seed).answer[0],
    );
    for (const place of [0, 1, 2]) {
      const share = places.filter((other) => other === place).length / RUNS;
      // A third is expected; five standard deviations of 600 throws are 0.096.
      expect(Math.abs(share - 1 / 3), `place ${place}`).toBeLessThan(0.096);
    }
  },
);

test('what is described does not tell sizes, and what is answered tells the places', () => {
  const { printed, answer } = taskOf(valuesAt(1), 4);
  const words = sizeOrder.words.en;
  expect(words.describe(printed)).not.toMatch(/big|small|size \d/);
  expect(words.answer(printed, answer)).toContain(['first', 'second', 'third'][answer[0] ?? 0]);
  expect(sizeOrder.read(1, {}, COLOUR).ok).toBe(true);
});
