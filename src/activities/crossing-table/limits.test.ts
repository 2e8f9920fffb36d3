// What is refused, and every content at every step that it is not refused at.
import { describe, expect, test } from 'vitest';
import { sheetArea } from '../../page/index.ts';
import { crossingTable } from './index.ts';
import { LADDER } from './ladder.ts';
import { limitsOf } from './limits.ts';
import { CONTENTS, type TableValues } from './task.ts';
import { COLOUR, makeTasks, taskOf, valuesAt } from './tasks-to-test.ts';

const refusalsOf = (step: number, changes: Partial<TableValues>) =>
  limitsOf(valuesAt(step, changes), COLOUR);

describe('R9 refusals', () => {
  test('name the most rows and columns that a content has', () => {
    expect(refusalsOf(14, { content: 'directions-and-colours' })).toMatchObject([
      { code: 'out-of-range', at: 'crossing-table › rows', got: 4, min: 2, max: 3 },
    ]);
    expect(refusalsOf(12, { content: 'shapes-and-sizes' })).toMatchObject([
      { code: 'out-of-range', at: 'crossing-table › columns', got: 4, min: 2, max: 3 },
    ]);
  });

  test('R3 name the most empty cells from which the heads can still be found', () => {
    expect(refusalsOf(9, { heads: 'none' })).toMatchObject([
      { code: 'out-of-range', at: 'crossing-table › empty', got: 6, min: 1, max: 5 },
    ]);
    expect(refusalsOf(9, { heads: 'one', empty: 7 })).toMatchObject([{ max: 6 }]);
    expect(refusalsOf(9, { empty: 10 })).toMatchObject([{ max: 9 }]);
  });

  test('R8 name how many lines and pieces have room', () => {
    expect(refusalsOf(9, { response: 'join', empty: 7 })).toMatchObject([
      { at: 'crossing-table › empty', got: 7, max: 6 },
    ]);
    expect(refusalsOf(15, { heads: 'both', extra: 2, empty: 11 })).toMatchObject([{ max: 10 }]);
    expect(refusalsOf(9, { content: 'colours-and-sizes', empty: 9 })).toMatchObject([{ max: 8 }]);
  });

  test('R5 offer nothing where the child draws, and draw no patterns', () => {
    expect(refusalsOf(10, { response: 'draw' })).toMatchObject([
      { at: 'crossing-table › extra', got: 1, min: 0, max: 0 },
    ]);
    expect(refusalsOf(9, { response: 'draw', content: 'textures' })).toMatchObject([
      { code: 'not-a-choice', at: 'crossing-table › response', nearest: 'cut' },
    ]);
  });

  test('a content of one thing that cannot be crossed is refused with those that can', () => {
    const read = crossingTable.read(1, { content: 'shapes' }, COLOUR);
    expect(read.ok ? [] : read.refusals).toMatchObject([
      { code: 'not-a-choice', at: 'crossing-table › content', choices: CONTENTS },
    ]);
  });
});

function expectToFit(made: ReturnType<typeof taskOf>): void {
  const { widthMm, heightMm } = crossingTable.room(made.printed);
  for (const paper of ['A4', 'Letter'] as const) {
    const area = sheetArea(paper, 'portrait');
    expect(widthMm, made.name).toBeLessThanOrEqual(area.width);
    expect(heightMm, made.name).toBeLessThanOrEqual(area.height);
  }
}

test.each(CONTENTS)(
  'gives proven tasks of %s that fit an upright page of either paper',
  (content) => {
    const possible = LADDER.map((_, index) => valuesAt(index + 1, { content })).filter(
      (values) => limitsOf(values, COLOUR).length === 0,
    );
    expect(possible.length).toBeGreaterThanOrEqual(11);
    for (const values of possible) {
      const made = taskOf(values, 3);
      expect(crossingTable.prove(made), made.name).toEqual({ proven: true });
      expectToFit(made);
    }
  },
);

test('R8 whatever is not refused fits an upright page of either paper', () => {
  for (const made of makeTasks(250, 77)) expectToFit(made);
});
