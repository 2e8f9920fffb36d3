// The solver against trying every filling, against rows with two readings, and against pages with one rule broken.
import { describe, expect, test } from 'vitest';
import { testSeed } from '../../../tests/seed.ts';
import { randomFrom } from '../../base/index.ts';
import type { Figure } from '../../figures/index.ts';
import type { ColourName } from '../../palette/index.ts';
import { continueRow } from './index.ts';
import { solve } from './solve.ts';
import type { Answer, Printed } from './task.ts';

const COLOURS: Readonly<Record<string, ColourName>> = {
  A: 'red',
  B: 'yellow',
  C: 'blue',
  D: 'pink',
};

/** Dots by letters; a full stop is an empty place. */
function dots(letters: string): readonly (Figure | null)[] {
  return [...letters].map((letter) => {
    const colour = COLOURS[letter];
    return colour ? { form: 'circle', colour } : null;
  });
}

function lettersOf(figures: readonly (Figure | null)[]): string {
  const letter = (figure: Figure | null) =>
    Object.keys(COLOURS).find((name) => COLOURS[name] === figure?.colour) ?? '.';
  return figures.map(letter).join('');
}

/** What may stand in the empty places of a row of dots, in the order of the alphabet. */
function answersTo(letters: string): readonly string[] {
  return solve({ row: dots(letters), response: 'colour-in' })
    .answers.map(({ figures }) => lettersOf(figures))
    .sort();
}

/** Whether a row with one more letter at its end goes on as some reading of what was shown says. */
function isReading(shown: string, next: string): boolean {
  return isRepeat(shown, next) || isTurnedBack(shown + next) || isGrown(shown, next);
}

function isRepeat(shown: string, next: string): boolean {
  const row = shown + next;
  return Array.from({ length: shown.length - 1 }, (_, index) => index + 1).some(
    (period) => row.startsWith(row.slice(period)) && shown.length > period,
  );
}

/** The row ends in something that reads the same backwards, in which more than the new letter has an image. */
function isTurnedBack(row: string): boolean {
  return Array.from({ length: row.length }, (_, start) => row.slice(start)).some(
    (end) => end.length >= 4 && end === [...end].reverse().join(''),
  );
}

/** Some row of two parts that grows begins with this one, and what was shown is not how it began unchanged. */
function isGrown(shown: string, next: string): boolean {
  const sizes = [1, 2, 3, 4, 5, 6, 7, 8];
  const [first = 'A'] = shown;
  const parts = [first, first === 'A' ? 'B' : 'A'];
  return sizes.some((one) =>
    sizes.some((other) => {
      if (one + other >= shown.length || !shown.startsWith(written(parts, [one, other], [0, 0], 2)))
        return false;
      const isNow = shown[one + other] === first;
      const stays = written(parts, [one, other], [0, 0], 9).startsWith(shown);
      const steps = [-2, -1, 0, 1, 2];
      return (
        isNow &&
        !stays &&
        steps.some((step) =>
          steps.some((change) =>
            written(parts, [one, other], [step, change], 18).startsWith(shown + next),
          ),
        )
      );
    }),
  );
}

function written(
  parts: readonly string[],
  sizes: readonly number[],
  steps: readonly number[],
  runs: number,
): string {
  let row = '';
  for (let run = 0; run < runs; run++) {
    const size = (sizes[run % 2] ?? 0) + Math.floor(run / 2) * (steps[run % 2] ?? 0);
    if (size < 1) return row;
    row += (parts[run % 2] ?? '').repeat(size);
  }
  return row;
}

/** The shortest unit that is shown twice says what comes next, or nothing does. */
function hasUnit(shown: string): boolean {
  return Array.from({ length: Math.floor(shown.length / 2) }, (_, index) => index + 1).some(
    (period) => shown.startsWith(shown.slice(period)),
  );
}

describe('the answers of a row', () => {
  test('R1 R2 R3 R4 are those found by trying both colours after every row of four to eight of them', () => {
    for (let length = 4; length <= 8; length++) {
      for (let bits = 0; bits < 2 ** length; bits++) {
        const shown = Array.from({ length }, (_, place) =>
          Math.floor(bits / 2 ** place) % 2 === 0 ? 'A' : 'B',
        ).join('');
        const expected = hasUnit(shown)
          ? ['A', 'B'].filter((next) => shown.includes(next) && isReading(shown, next))
          : [];
        expect(answersTo(`${shown}.`), shown).toEqual(expected);
      }
    }
  });

  test.each([
    ['R2 a longer unit that has just begun again', 'AABAABAA.', ['A', 'B']],
    ['R3 a row that may turn back', 'ABCCABCC.', ['A', 'B']],
    ['R3 a row that may turn back inside its gap', 'ABC...ABC', ['ABC', 'ACB', 'BAC']],
    ['R4 a row that grows', 'ABAABA..', ['AA', 'AB', 'BA']],
    ['R1 a row that shows its unit once', 'ABCDA.', []],
    ['R1 a row that shows its unit twice but for a gap', 'AB.AB', []],
  ])('%s', (_, row, expected) => {
    // Told by hand from the readings that RULES.md lists.
    expect(answersTo(row)).toEqual(expected);
  });

  test.each([
    ['ABAB.', 'A'],
    ['ABBABB..', 'AB'],
    ['ABCABCAB..', 'CA'],
    ['AABB.AABB', undefined],
    ['AABBAABB...', 'AAB'],
    ['ABBC..ABBCA', undefined],
    ['ABBC..BCABBC', 'AB'],
    ['ABACABAC.', 'A'],
  ])('R1 of %s are as a person reads it', (row, expected) => {
    expect(answersTo(row)).toEqual(expected === undefined ? [] : [expected]);
  });

  test('R5 are told by each attribute where whole figures have not come again', () => {
    const form = [...'ABABAB'].map(
      (letter) => (letter === 'A' ? 'heart' : 'star') as Figure['form'],
    );
    const colour = dots('ABCABC').map((figure) => figure?.colour);
    const row = form.map((name, place) => ({ form: name, colour: colour[place] }));
    expect(solve({ row: [...row, null] }).answers).toEqual([
      { figures: [{ form: 'heart', colour: 'red' }] },
    ]);
  });

  test('R5 are several where one attribute can be read in two ways', () => {
    const colour = dots('AABAABAA').map((figure) => figure?.colour);
    const row = colour.map((name, place) => ({
      form: (place % 2 === 0 ? 'heart' : 'star') as Figure['form'],
      colour: name,
    }));
    const found = solve({ row: [...row, null] }).answers.map(({ figures }) => figures[0]?.colour);
    expect([...found].sort()).toEqual(['red', 'yellow']);
  });
});

interface MadeTask {
  readonly printed: Printed;
  readonly answer: Answer;
}

function taskAt(step: number, changes: Readonly<Record<string, unknown>>, seed: number): MadeTask {
  const style = { print: 'colour' } as const;
  const read = continueRow.read(step, changes, style);
  if (!read.ok) throw new Error(JSON.stringify(read.refusals));
  return continueRow.generate(read.value, randomFrom(seed), style) as MadeTask;
}

function replaced<T>(items: readonly T[], at: number, item: T): readonly T[] {
  return items.map((old, index) => (index === at ? item : old));
}

function withRow(task: MadeTask, change: (row: Printed['row']) => Printed['row']): MadeTask {
  return { ...task, printed: { ...task.printed, row: change(task.printed.row) } };
}

function withPrinted(task: MadeTask, change: Partial<Printed>): MadeTask {
  return { ...task, printed: { ...task.printed, ...change } };
}

/** Each breaks one rule of a sound task: three colours in turn, eight shown, one missing, two wrong ones offered. */
const BREAKS: Readonly<Record<string, (task: MadeTask) => MadeTask>> = {
  'R1 the key is another figure of the row': (task) => ({
    ...task,
    answer: { figures: task.printed.row.slice(0, 1).flatMap((figure) => figure ?? []) },
  }),
  'R1 the key is empty': (task) => ({ ...task, answer: { figures: [] } }),
  'R1 two figures of the row change places': (task) =>
    withRow(task, ([first = null, second = null, ...rest]) => [second, first, ...rest]),
  'R1 a figure of the row is another': (task) =>
    withRow(task, (row) => replaced(row, 4, row[0] ?? null)),
  'R1 the first figures are cut off, so that nothing comes twice': (task) =>
    withRow(task, (row) => row.slice(4)),
  'R1 a second place is empty': (task) => withRow(task, (row) => replaced(row, 3, null)),
  'R1 no place is empty': (task) => withRow(task, (row) => row.filter((figure) => figure !== null)),
  'R6 a figure of the row is hardly smaller than its equals': (task) =>
    withRow(task, (row) => replaced(row, 2, { ...row[2], size: 0.95 })),
  'R7 the missing figure is not offered': (task) =>
    withPrinted(task, {
      offered: task.printed.offered?.filter(
        ({ colour }) => colour !== task.answer.figures[0]?.colour,
      ),
    }),
  'R7 a figure is offered twice': (task) =>
    withPrinted(task, {
      offered: [...(task.printed.offered ?? []), ...(task.printed.offered ?? []).slice(0, 1)],
    }),
  'R7 nothing is offered': (task) => withPrinted(task, { offered: undefined }),
  'R7 figures are offered, but the child draws': (task) => withPrinted(task, { response: 'draw' }),
  'R8 a sticker is asked for, but its size is not told': (task) =>
    withPrinted(task, { response: 'sticker', offered: undefined }),
  'R8 colouring in is asked for, but the forms differ': (task) => {
    const coloured = withPrinted(task, { response: 'colour-in', offered: undefined });
    return withRow(coloured, (row) =>
      row.map((figure, place) => figure && { ...figure, form: place % 3 === 1 ? 'star' : 'heart' }),
    );
  },
  'R10 the row begins with an empty place': (task) =>
    withRow(task, (row) => [null, ...row.filter((figure) => figure !== null)]),
  'R10 the row is too long for a line': (task) =>
    withRow(task, (row) => [...row.slice(0, 6), ...row]),
};

describe('a sound task with one rule broken is not proven', () => {
  test.each(Object.keys(BREAKS))('%s', (name) => {
    const seed = testSeed(name);
    for (let run = 0; run < 8; run++) {
      const sound = taskAt(4, { response: 'ring', missing: 1, choices: 3, shown: 8 }, seed + run);
      expect(continueRow.prove(sound), `seed ${seed + run}`).toEqual({ proven: true });
      const broken = BREAKS[name]?.(sound) ?? sound;
      expect(continueRow.prove(broken).proven, `seed ${seed + run}`).toBe(false);
    }
  });

  test('R7 a ring with two empty places', () => {
    const sound = taskAt(5, {}, 3);
    expect(continueRow.prove(sound)).toEqual({ proven: true });
    expect(continueRow.prove(withPrinted(sound, { response: 'ring' })).proven).toBe(false);
  });

  test('R5 one attribute of one figure goes another way', () => {
    const sound = taskAt(11, {}, 5);
    expect(continueRow.prove(sound)).toEqual({ proven: true });
    const [first, second] = sound.printed.row;
    const mixed = { ...first, colour: second?.colour };
    const broken = withRow(sound, (row) => replaced(row, 0, mixed));
    expect(continueRow.prove(broken).proven).toBe(false);
  });
});

test('a row written by hand with figures and answer alone is proven', () => {
  const answer = { figures: dots('A') };
  expect(continueRow.prove({ printed: { row: dots('ABBABB.') }, answer })).toEqual({
    proven: true,
  });
});
