// The solver against pages of which the answer is plain, and against pages with one rule broken.
import { describe, expect, test } from 'vitest';
import { testSeed } from '../../../tests/seed.ts';
import type { Figure } from '../../figures/index.ts';
import { mirrorHalf } from './index.ts';
import { solve } from './solve.ts';
import { type Cells, type Part, type Printed, printedSchema } from './task.ts';
import { taskOf, valuesAt } from './tasks-to-test.ts';

const RED: Figure = { form: 'circle', colour: 'red' };
const BLUE: Figure = { form: 'circle', colour: 'blue' };

/** A part from rows of letters: r red, b blue, a point for nothing. */
function partOf(...rows: readonly string[]): Part {
  return { rows: rows.length, columns: rows[0]?.length ?? 0, cells: cellsOf(...rows) };
}

function cellsOf(...rows: readonly string[]): Cells {
  const figures: Readonly<Record<string, Figure>> = { r: RED, b: BLUE };
  return [...rows.join('')].map((letter) => figures[letter] ?? null);
}

function only(printed: Printed): string {
  const { answers, faults } = solve(printed);
  expect(faults).toEqual([]);
  expect(answers).toHaveLength(1);
  const [answer] = answers;
  if (!answer || 'choice' in answer) return String(answer?.choice);
  const letter = (figure: Figure | null) =>
    figure === null ? '.' : figure.colour === 'red' ? 'r' : 'b';
  return answer.cells.map(letter).join('');
}

describe('R1 the answer of a page', () => {
  test('is the part and its image left and right of an upright line', () => {
    expect(only({ part: partOf('rb', '.r'), axis: 'upright' })).toBe('rbbr.rr.');
    expect(only({ part: partOf('rb', '.r'), axis: 'upright', given: 'second' })).toBe('brrbr..r');
  });

  test('is the part and its image above and below a level line', () => {
    expect(only({ part: partOf('rb', '.r'), axis: 'level' })).toBe('rb.r.rrb');
    expect(only({ part: partOf('rb', '.r'), axis: 'level', given: 'second' })).toBe('.rrbrb.r');
  });

  test('is four parts about both lines', () => {
    expect(only({ part: partOf('rb', '.b'), axis: 'both' })).toBe('rbbr.bb..bb.rbbr');
  });

  test('has an arrow that points left where the given one points right', () => {
    const arrow: Figure = { form: 'arrow', turn: 90 };
    const printed: Printed = {
      part: { rows: 2, columns: 2, cells: [arrow, null, null, RED] },
      axis: 'upright',
    };
    const key = [arrow, null, null, { form: 'arrow', turn: 270 }, null, RED, RED, null] as const;
    expect(mirrorHalf.prove({ printed, answer: { cells: key } })).toEqual({ proven: true });
    const unturned = key.map((figure) => (figure && figure.form === 'arrow' ? arrow : figure));
    expect(mirrorHalf.prove({ printed, answer: { cells: unturned } }).proven).toBe(false);
  });
});

describe('R6 of offered halves', () => {
  const part = partOf('rb', '.r');
  const right = { cells: cellsOf('br', 'r.') };
  const shifted = { cells: cellsOf('rb', '.r') };
  const near = { cells: cellsOf('br', '.r') };

  test('the one that is the mirror image is the answer, wherever it stands', () => {
    expect(only({ part, axis: 'upright', offered: [near, shifted, right] })).toBe('2');
    expect(only({ part, axis: 'upright', offered: [right, near] })).toBe('0');
  });

  test('there is no answer without it, and a fault where it comes twice', () => {
    expect(solve({ part, axis: 'upright', offered: [near, shifted] }).answers).toEqual([]);
    const twice = solve({ part, axis: 'upright', offered: [right, near, right] });
    expect(twice.answers).toHaveLength(2);
    expect(twice.faults).toHaveLength(1);
  });

  test('one that is hardly different is a second answer', () => {
    const small: Figure = { ...RED, size: 0.9 };
    const hardly = {
      cells: right.cells.map((figure) => (figure?.colour === 'red' ? small : figure)),
    };
    expect(solve({ part, axis: 'upright', offered: [hardly, right] }).answers).toHaveLength(2);
  });

  test.each<readonly [string, Partial<Printed>]>([
    ['both lines', { axis: 'both', offered: [right, near] }],
    ['a single half', { offered: [right] }],
    ['a half of another size', { offered: [right, { cells: cellsOf('rb') }] }],
    ['halves that nobody chooses', { offered: [right, near], response: 'draw' }],
    ['none to choose from', { response: 'ring' }],
  ])('%s make a page unfit', (_name, changes) => {
    expect(solve({ part, axis: 'upright', ...changes }).faults).toHaveLength(1);
  });
});

const F: Figure = { form: 'capital-F' };
const STRIPED: Figure = { form: 'square', fill: 'slanted-stripes' };

describe('a page with one rule broken', () => {
  test.each<readonly [string, Printed]>([
    ['R2 a part that looks right shifted', { part: partOf('rr', '..'), axis: 'upright' }],
    ['R2 a part that looks right turned', { part: partOf('rb', 'rb'), axis: 'upright' }],
    [
      'R2 a part that looks right shifted across both lines',
      { part: partOf('r.', '.r'), axis: 'both' },
    ],
    ['R2 a part that looks right shifted below', { part: partOf('rb', 'rb'), axis: 'level' }],
    [
      'R4 a slanted arrow',
      {
        part: { rows: 2, columns: 2, cells: [{ form: 'arrow', turn: 45 }, null, null, RED] },
        axis: 'upright',
      },
    ],
    [
      'R4 a texture that leans',
      { part: { rows: 2, columns: 2, cells: [STRIPED, null, null, null] }, axis: 'upright' },
    ],
    [
      'R5 two sizes hardly apart',
      {
        part: { rows: 2, columns: 2, cells: [RED, null, null, { ...RED, size: 0.9 }] },
        axis: 'upright',
      },
    ],
    [
      'R5 a white dot',
      {
        part: { rows: 2, columns: 2, cells: [{ colour: 'white' }, null, null, RED] },
        axis: 'upright',
      },
    ],
    [
      'R1 a place too many',
      { part: { rows: 2, columns: 2, cells: cellsOf('rb', '.r', 'r') }, axis: 'upright' },
    ],
    ['R1 nothing given', { part: partOf('..', '..'), axis: 'upright' }],
    [
      'R8 stickers for a dot and a heart',
      {
        part: { rows: 2, columns: 2, cells: [RED, null, null, { form: 'heart', colour: 'blue' }] },
        axis: 'upright',
        response: 'sticker',
      },
    ],
  ])('%s is unfit', (_name, printed) => {
    expect(solve(printed).faults.length).toBeGreaterThan(0);
  });

  test('R3 a letter that a mirror changes has two answers: mirrored, and as it is written', () => {
    const part: Part = { rows: 2, columns: 2, cells: [F, null, null, { form: 'capital-A' }] };
    const { answers } = solve({ part, axis: 'upright' });
    expect(answers).toHaveLength(2);
    const same: Part = {
      ...part,
      cells: [{ form: 'capital-H' }, null, null, { form: 'capital-A' }],
    };
    expect(solve({ part: same, axis: 'upright' }).answers).toHaveLength(1);
    expect(solve({ part: same, axis: 'level' }).answers).toHaveLength(2);
  });

  test('R1 a sound task with another key, or a cell of its key changed, is not proven', () => {
    const seed = testSeed('mirror-half, broken keys');
    for (const step of [4, 9, 13]) {
      const sound = taskOf(valuesAt(step), seed + step);
      expect(mirrorHalf.prove(sound), sound.name).toEqual({ proven: true });
      if (!('cells' in sound.answer)) throw new Error('the key is no picture');
      const { cells } = sound.answer;
      for (let place = 0; place < cells.length; place++) {
        const other = cells.map((figure, at) => (at !== place ? figure : figure ? null : RED));
        const broken = { ...sound, answer: { cells: other } };
        expect(mirrorHalf.prove(broken).proven, `${sound.name}, place ${place}`).toBe(false);
      }
      expect(mirrorHalf.prove({ ...sound, answer: { choice: 0 } }).proven).toBe(false);
    }
  });

  test('R1 a page without its line is refused when it is read', () => {
    expect(printedSchema.safeParse({ part: partOf('rb', '.r') }).success).toBe(false);
  });
});
