// Confusions: counts, the promise about false alarms, and that a real confusion is found.
import { describe, expect, test } from 'vitest';
import { testSeed } from '../../tests/seed.ts';
import { type Random, randomFrom } from '../base/index.ts';
import { partOf } from './confusion-evidence.ts';
import { ALARM, confusionsIn, type Look, offeredByLikeness } from './confusions.ts';

const SEED = testSeed('confusions');
const SHEETS = 60;
const TASKS = 4;
/** The table is looked at after every so many sheets. */
const LOOKED_AT = 3;

const LABELS: readonly string[] = [
  'red',
  'orange',
  'yellow',
  'green',
  'blue',
  'purple',
  'brown',
  'black',
];
/** Likeness of the hues in a ring: an invention of this test. */
function likenessOf(one: string, other: string): number {
  const gap = Math.abs(LABELS.indexOf(one) - LABELS.indexOf(other));
  return Math.exp(-Math.min(gap, LABELS.length - gap) / 1.5);
}

interface Child {
  readonly errors: number;
  /** The pair that is mixed up, and how often one is then taken for the other. */
  readonly mixedUp?: readonly [string, string];
  readonly taken: number;
  /** How much the child's own idea of what is like what differs, as factors from 1/x to x. */
  readonly own: number;
}

function unit(random: Random): number {
  return random.int(0, 999_999) / 1_000_000;
}

function lookOf(random: Random, child: Child): Look {
  const [right = '', ...wrong] = random.sample(LABELS, 4);
  const offered = offeredByLikeness(
    Object.fromEntries(wrong.map((label) => [label, likenessOf(right, label)])),
  );
  const other = child.mixedUp?.find((label) => label !== right);
  const isPair = child.mixedUp?.includes(right) && wrong.includes(other ?? '');
  if (isPair && other && unit(random) < child.taken) return { right, offered, chosen: other };
  if (unit(random) >= child.errors) return { right, offered };
  const pulls = offered.map(({ share }) => share * child.own ** (2 * unit(random) - 1));
  let rest = unit(random) * pulls.reduce((sum, pull) => sum + pull, 0);
  const at = pulls.findIndex((pull) => {
    rest -= pull;
    return rest < 0;
  });
  return { right, offered, chosen: offered[at]?.label ?? offered[0]?.label ?? '' };
}

/** Whether the child is ever flagged when one looks again and again. */
function everFlagged(random: Random, child: Child): readonly string[] {
  const looks: Look[] = [];
  for (let sheet = 0; sheet < SHEETS; sheet++) {
    for (let task = 0; task < TASKS; task++) looks.push(lookOf(random, child));
    if (sheet % LOOKED_AT !== LOOKED_AT - 1) continue;
    const found = confusionsIn(looks).filter(({ isConfused }) => isConfused);
    if (found.length > 0) return found.map(({ pair }) => pair.join('/'));
  }
  return [];
}

function flagged(children: number, child: Child, seed: number): readonly (readonly string[])[] {
  const random = randomFrom(seed);
  return Array.from({ length: children }, () => everFlagged(random, child)).filter(
    (pairs) => pairs.length > 0,
  );
}

describe('counts', () => {
  const offered = offeredByLikeness({ orange: 0.6, blue: 0.2 });
  const looks: readonly Look[] = [
    { right: 'red', offered },
    { right: 'red', offered, chosen: 'orange' },
    { right: 'orange', offered: offeredByLikeness({ red: 0.6, blue: 0.2 }), chosen: 'red' },
    { right: 'red', offered: offeredByLikeness({ blue: 0.2 }), chosen: 'blue' },
  ];

  test('both ways round together, with the opportunities', () => {
    const rows = confusionsIn(looks).map(({ pair, times, opportunities, telling }) => [
      pair.join('/'),
      times,
      opportunities,
      telling,
    ]);
    expect(rows).toEqual([
      ['orange/red', 2, 3, 2],
      ['blue/red', 1, 3, 1],
      ['blue/orange', 0, 1, 1],
    ]);
  });

  test('an error with one wrong figure to choose tells no confusion from chance', () => {
    const one = { right: 'b', offered: offeredByLikeness({ d: 0.9 }), chosen: 'd' };
    const [row] = confusionsIn(Array.from({ length: 50 }, () => one));
    expect(row).toMatchObject({ times: 50, opportunities: 50, telling: 0, isConfused: false });
  });

  test('nothing recorded is nothing found', () => {
    expect(confusionsIn([])).toEqual([]);
  });

  test('what is chosen but was not there is no error', () => {
    const [row] = confusionsIn([{ right: 'red', offered, chosen: 'green' }]);
    expect(row).toMatchObject({ times: 0, telling: 0 });
  });

  test('the parts of the stake never come to more than one', () => {
    const parts = Array.from({ length: 100_000 }, (_, place) => partOf(place));
    const sum = parts.reduce((total, part) => total + part, 0);
    expect(sum).toBeLessThan(1);
    expect(sum).toBeGreaterThan(0.999);
  });
});

describe(`over ${SHEETS} sheets of ${TASKS} tasks, looked at again and again`, () => {
  test.each([
    ['errors by likeness', { errors: 0.2, taken: 0, own: 1 }],
    ['many errors by likeness', { errors: 0.6, taken: 0, own: 1 }],
    ['errors by a likeness of the child’s own', { errors: 0.4, taken: 0, own: 3 }],
  ] as const)('%s: at most one child in twenty is ever flagged', (_name, child) => {
    const count = 120;
    const share = flagged(count, child, SEED).length / count;
    console.log(`${_name}: ${share} of ${count} flagged, limit ${1 / ALARM}`);
    expect(share).toBeLessThanOrEqual(1 / ALARM);
  });

  test('a confusion of one pair is found, and that pair is named', () => {
    const child: Child = { errors: 0.15, mixedUp: ['orange', 'red'], taken: 0.7, own: 1 };
    const found = flagged(60, child, SEED + 1);
    console.log(`real confusion: ${found.length} of 60 found`);
    expect(found.length).toBeGreaterThan(30);
    expect(found.filter((pairs) => !pairs.includes('orange/red')).length).toBeLessThanOrEqual(3);
  });
});
