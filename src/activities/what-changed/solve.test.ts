// The solver on pages made and on pages with one rule broken, which must not be proven.
import { describe, expect, test } from 'vitest';
import { said } from '../../../tests/said.ts';
import { testSeed } from '../../../tests/seed.ts';
import type { Figure } from '../../figures/index.ts';
import { whatChanged } from './index.ts';
import { solve as findings } from './solve.ts';
import type { Printed } from './task.ts';
import { taskOf, valuesAt } from './tasks-to-test.ts';

const solve = (...page: Parameters<typeof findings>) => said(findings(...page));

const RED: Figure = { form: 'circle', colour: 'red' };
const BLUE: Figure = { form: 'square', colour: 'blue' };
const STAR: Figure = { form: 'star', colour: 'yellow' };
const HEART: Figure = { form: 'heart', colour: 'green' };
const FIRST = [RED, BLUE, STAR, HEART] as const;

/** The four figures, some of them other ones in the second picture. */
function page(
  changes: Readonly<Record<number, Figure | null>>,
  asked: number,
  more: Partial<Printed> = {},
): Printed {
  const second = FIRST.map((figure, place) =>
    Object.hasOwn(changes, place) ? (changes[place] ?? null) : figure,
  );
  return { first: FIRST, second, asked, ...more };
}

function proves(printed: Printed, answer: readonly number[]): boolean {
  return whatChanged.prove({ printed, answer }).proven;
}

test('a task written by hand with two pictures, the number and the answer is proven', () => {
  expect(proves(page({ 1: { ...BLUE, form: 'star' } }, 1), [1])).toBe(true);
  expect(proves(page({ 1: null, 3: { ...HEART, colour: 'pink' } }, 2), [3, 1])).toBe(true);
});

describe('one rule broken is not proven', () => {
  test('R1 the key names another place, or not all', () => {
    const printed = page({ 1: null, 3: { ...HEART, colour: 'pink' } }, 2);
    for (const key of [[0, 1], [1], [], [0, 1, 3]]) expect(proves(printed, key)).toBe(false);
  });

  test('R1 the child is told another number, or there is nothing to find', () => {
    expect(proves(page({ 1: null }, 2), [1])).toBe(false);
    expect(proves(page({}, 1), [])).toBe(false);
  });

  test('R2 the pictures do not have the same places', () => {
    const printed = { first: FIRST, second: FIRST.slice(0, 3), asked: 1 };
    expect(solve(printed).faults).toEqual(['the pictures do not have the same places']);
  });

  test.each<[string, Figure, Figure]>([
    ['hardly smaller', RED, { ...RED, size: 0.9 }],
    ['pentagon and hexagon', { form: 'pentagon' }, { form: 'hexagon' }],
    ['turned by a little', { form: 'arrow' }, { form: 'arrow', turn: 15 }],
    ['b and d', { form: 'small-b' }, { form: 'small-d' }],
    ['a and o', { form: 'small-a' }, { form: 'small-o' }],
  ])('R3 a change too small: %s', (_, before, after) => {
    const printed = { first: [before, STAR, HEART], second: [after, STAR, HEART], asked: 1 };
    expect(proves(printed, [0])).toBe(false);
  });

  test('R4 a figure changes in two attributes', () => {
    expect(proves(page({ 0: STAR }, 1), [0])).toBe(false);
    expect(proves(page({ 0: { ...RED, colour: 'black', size: 0.5 } }, 1), [0])).toBe(false);
  });

  test('R5 two figures change places and the child is told of differences', () => {
    expect(proves(page({ 0: BLUE, 1: RED }, 2), [0, 1])).toBe(false);
  });

  test('R5 a figure moves to an empty place', () => {
    const printed = {
      first: [RED, null, STAR, HEART],
      second: [null, RED, STAR, HEART],
      asked: 2,
    };
    expect(proves(printed, [0, 1])).toBe(false);
    const changed = { ...printed, second: [null, { ...RED, size: 0.95 }, STAR, HEART] };
    expect(proves(changed, [0, 1])).toBe(false);
  });

  test('R6 the child is told of swaps, and something else has changed', () => {
    expect(proves(page({ 0: BLUE, 1: RED }, 2, { told: 'swaps' }), [0, 1])).toBe(true);
    expect(proves(page({ 0: BLUE, 1: STAR }, 2, { told: 'swaps' }), [0, 1])).toBe(false);
    expect(proves(page({ 0: null }, 1, { told: 'swaps' }), [0])).toBe(false);
  });

  test('R7 more than half of the places differ', () => {
    const printed = page({ 0: null, 1: null, 2: null }, 3);
    expect(proves(printed, [0, 1, 2])).toBe(false);
  });

  test('R8 figures touch, or not all have their spot', () => {
    const still = { across: 0, down: 0 };
    const nudged = (across: number) => [{ across, down: 0 }, still, still, still];
    const printed = page({ 1: null }, 1);
    expect(proves({ ...printed, nudges: nudged(0.15) }, [1])).toBe(true);
    expect(proves({ ...printed, nudges: nudged(0.45) }, [1])).toBe(false);
    expect(proves({ ...printed, nudges: nudged(0).slice(1) }, [1])).toBe(false);
  });
});

test('a made page with one more figure changed, taken away or put back is not proven', () => {
  const seed = testSeed('what-changed, broken pages');
  for (let run = 0; run < 30; run++) {
    const { printed, answer, name } = taskOf(valuesAt(10), seed + run);
    expect(proves(printed, answer), name).toBe(true);
    const other = printed.first.findIndex((_, place) => !answer.includes(place));
    const put = (place: number, figure: Figure | null) =>
      proves({ ...printed, second: printed.second.with(place, figure) }, answer);
    expect(put(other, null), name).toBe(false);
    expect(put(other, { form: 'numeral-8' }), name).toBe(false);
    const [changed = 0] = answer;
    expect(put(changed, printed.first[changed] ?? null), name).toBe(false);
  }
});

test('a circle that is turned, or a field that says its default, is no difference', () => {
  const second = [{ ...RED, turn: 90, size: 1 }, { ...BLUE, fill: 'solid' as const }, null, HEART];
  expect(solve({ first: FIRST, second, asked: 1 })).toEqual({ answers: [[2]], faults: [] });
});

test('what is answered names each place and what stands there before and after', () => {
  const words = whatChanged.words.en;
  const printed = page({ 1: null, 3: { ...HEART, colour: 'pink' } }, 2);
  expect(words.answer(printed, [1, 3])).toBe(
    'Two places are different, counted along the rows: the second (first blue square, then nothing) and the fourth (first green heart, then pink heart).',
  );
  expect(words.say(printed)).toContain('The second picture is different in two places.');
  expect(words.say({ ...printed, told: 'swaps' })).toContain(
    'In the second picture two have changed places.',
  );
});
