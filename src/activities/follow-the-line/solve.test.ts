// The solver on sound pages, on pages written by hand, and on pages with one rule broken.
import { describe, expect, test } from 'vitest';
import { said } from '../../../tests/said.ts';
import { testSeed } from '../../../tests/seed.ts';
import type { Task } from '../activity.ts';
import { followTheLine } from './index.ts';
import type { Answer, Curve, Printed } from './task.ts';
import { anyTasks, taskOf, valuesAt } from './tasks-to-test.ts';

/** A straight line, as a curve. */
function straight(fromY: number, toY: number, lengthMm = 120): Curve {
  const at = (share: number): readonly [number, number] => [
    share * lengthMm,
    fromY + share * (toY - fromY),
  ];
  return [at(0), at(1 / 3), at(2 / 3), at(1)];
}

/** A line that steps from one height to another about a place along, steeply. */
function stepping(fromY: number, toY: number, about: number, reach = 10): Curve {
  return [
    [0, fromY],
    [10, fromY],
    [about - reach - 10, fromY],
    [about - reach, fromY],
    [about, fromY],
    [about, toY],
    [about + reach, toY],
    [about + reach + 10, toY],
    [110, toY],
    [120, toY],
  ];
}

const STARTS = [{ colour: 'red' }, { colour: 'blue' }] as const;
const CROSSED: Printed = {
  starts: STARTS,
  laneMm: 20,
  lengthMm: 120,
  lines: [stepping(10, 30, 60), stepping(30, 10, 60)],
};

test('a page written by hand is proven, crossed or not', () => {
  expect(followTheLine.prove({ printed: CROSSED, answer: [1, 0] })).toEqual({ proven: true });
  const level = { ...CROSSED, lines: [straight(10, 10), straight(30, 30)] };
  expect(followTheLine.prove({ printed: level, answer: [0, 1] })).toEqual({ proven: true });
});

test('R2 of lines that cross at a slant, both readings are found', () => {
  const lines = [straight(10, 30), straight(30, 10)];
  const { answers, faults } = said(followTheLine.solve({ ...CROSSED, lines }));
  expect([...answers].sort()).toEqual([
    [0, 1],
    [1, 0],
  ]);
  expect(faults.join()).toContain('cross at less than 45 degrees');
});

test('R3 of lines that come near and part again, both readings are found', () => {
  const bent = (fromY: number, towards: number): Curve => [
    [0, fromY],
    [20, fromY],
    [40, towards],
    [60, towards],
    [80, towards],
    [100, fromY],
    [120, fromY],
  ];
  const { answers, faults } = said(
    followTheLine.solve({ ...CROSSED, lines: [bent(10, 18), bent(30, 22)] }),
  );
  expect(answers.length).toBe(2);
  expect(faults.join()).toContain('run less than 6 mm apart');
});

test('R3 a line through the crossing of two others is found', () => {
  const starts = [...STARTS, { colour: 'yellow' }] as const;
  const lines = [stepping(10, 50, 60, 14), straight(30, 30), stepping(50, 10, 60, 14)];
  const proof = followTheLine.prove({ printed: { ...CROSSED, starts, lines }, answer: [2, 1, 0] });
  expect(proof.proven).toBe(false);
});

/** Each breaks one rule of a sound task of four lines that cross, which lead to shapes. */
const BREAKS: Readonly<Record<string, (printed: Printed, answer: Answer) => unknown>> = {
  'R1 the key is turned round': (printed, answer) => ({ printed, answer: [...answer].reverse() }),
  'R1 one line is missing': (printed, answer) => ({
    printed: { ...printed, lines: printed.lines.slice(1) },
    answer,
  }),
  'R1 one line is there twice': (printed, answer) => ({
    printed: {
      ...printed,
      lines: printed.lines.map((line, index) => (index === 1 ? (printed.lines[0] ?? line) : line)),
    },
    answer,
  }),
  'R1 one end is missing': (printed, answer) => ({
    printed: { ...printed, ends: printed.ends?.slice(1) },
    answer,
  }),
  'R1 a line ends between two ends': (printed, answer) => ({
    printed: {
      ...printed,
      lines: printed.lines.map(
        (line, index): Curve =>
          index === 0 ? line.map(([x, y]) => [x, y + printed.laneMm / 2]) : line,
      ),
    },
    answer,
  }),
  'R2 the page is pulled out to six times its length': (printed, answer) => ({
    printed: {
      ...printed,
      lengthMm: 3 * printed.lengthMm,
      laneMm: printed.laneMm - 8,
      lines: printed.lines.map((line) =>
        line.map(([x, y]) => [3 * x, (y * (printed.laneMm - 8)) / printed.laneMm]),
      ),
    },
    answer,
  }),
  'R4 the page is pushed together': (printed, answer) => ({
    printed: {
      ...printed,
      lengthMm: 0.3 * printed.lengthMm,
      lines: printed.lines.map((line) => line.map(([x, y]) => [0.3 * x, y])),
    },
    answer,
  }),
  'R5 a line turns back': (printed, answer) => ({
    printed: {
      ...printed,
      lines: printed.lines.map(
        (line, index): Curve =>
          index === 0 ? line.map(([x, y], place) => (place === 3 ? [x - 45, y] : [x, y])) : line,
      ),
    },
    answer,
  }),
  'R6 two starts are alike': (printed, answer) => ({
    printed: {
      ...printed,
      starts: printed.starts.map((_, place) => printed.starts[place === 1 ? 0 : place]),
    },
    answer,
  }),
  'R6 an end is of the colour of a start': (printed, answer) => ({
    printed: {
      ...printed,
      ends: printed.ends?.map((end, place) =>
        place === 0 ? { ...end, colour: printed.starts[0]?.colour } : end,
      ),
    },
    answer,
  }),
  'R6 an end is round like the starts': (printed, answer) => ({
    printed: {
      ...printed,
      ends: printed.ends?.map((end, place) => (place === 2 ? { form: 'capital-O' } : end)),
    },
    answer,
  }),
};

describe('a sound task with one rule broken is not proven', () => {
  test.each(Object.keys(BREAKS))('%s', (name) => {
    const seed = testSeed(name);
    for (let run = 0; run < 10; run++) {
      const { printed, answer } = taskOf(valuesAt(7, { crossings: 5 }), seed + run);
      expect(followTheLine.prove({ printed, answer }), `seed ${seed + run}`).toEqual({
        proven: true,
      });
      const broken = BREAKS[name]?.(printed, answer) as Task;
      expect(followTheLine.prove(broken).proven, `seed ${seed + run}`).toBe(false);
    }
  });
});

test('R6 a line that is blue from a red dot is found, whichever line begins there', () => {
  const { printed } = taskOf(valuesAt(3), testSeed('follow-the-line, colours'));
  const [first, second, ...others] = printed.colours ?? [];
  if (!first || !second) throw new Error('expected lines in colours');
  const colours = [second, first, ...others];
  expect(said(followTheLine.solve({ ...printed, colours })).faults).toEqual([
    'a line has another colour than its start',
  ]);
  const lines = printed.lines.map((_, index) => printed.lines[[1, 0, 2][index] ?? 0] ?? []);
  expect(followTheLine.solve({ ...printed, colours, lines }).faults).toEqual([]);
});

test('R1 the solver finds the key of any task, the lines in any order', () => {
  for (const { printed, answer, name } of anyTasks(60, testSeed('follow-the-line, solved'))) {
    const colours = printed.colours && [...printed.colours].reverse();
    const turned = { ...printed, colours, lines: [...printed.lines].reverse() };
    expect(followTheLine.solve(turned), name).toEqual({ answers: [answer], faults: [] });
  }
});

test('a curve whose points do not make whole cubics is refused when it is read', () => {
  const lines = CROSSED.lines.map((line) => line.slice(1));
  expect(followTheLine.printed.safeParse({ ...CROSSED, lines }).success).toBe(false);
});
