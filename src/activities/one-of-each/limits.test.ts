// What is refused, and every content at every step that it is not refused at.
import { describe, expect, test } from 'vitest';
import { CONTENT_IDS } from '../../figures/index.ts';
import { sheetArea } from '../../page/index.ts';
import { oneOfEach } from './index.ts';
import { LADDER } from './ladder.ts';
import { limitsOf } from './limits.ts';
import type { SquareValues } from './task.ts';
import { COLOUR, taskOf, valuesAt } from './tasks-to-test.ts';

const refusalsOf = (step: number, changes: Partial<SquareValues>) =>
  limitsOf(valuesAt(step, changes), COLOUR);

describe('R9 refusals', () => {
  test('name the most rows that a content has figures for', () => {
    expect(refusalsOf(7, { content: 'directions', response: 'draw' })).toMatchObject([
      { code: 'out-of-range', at: 'one-of-each › order', got: 4, min: 2, max: 3 },
    ]);
    const sizes = { content: 'sizes', response: 'draw', order: 5 } as const;
    expect(refusalsOf(7, sizes)).toMatchObject([{ at: 'one-of-each › order', max: 4 }]);
  });

  test('R6 name another response where only colours can be stuck, laid or coloured in', () => {
    for (const response of ['sticker', 'counters', 'colour-in'] as const) {
      expect(refusalsOf(4, { content: 'shapes', response })).toMatchObject([
        { code: 'not-a-choice', at: 'one-of-each › response', got: response },
      ]);
    }
    expect(refusalsOf(4, { response: 'draw' })).toMatchObject([{ nearest: 'colour-in' }]);
    expect(refusalsOf(4, { content: 'pictures', response: 'draw' })).toMatchObject([
      { nearest: 'cut' },
    ]);
  });

  test('R8 allow blocks with four rows only', () => {
    expect(refusalsOf(4, { boxes: true })).toMatchObject([
      { code: 'not-a-choice', at: 'one-of-each › boxes', got: true, nearest: 'false' },
    ]);
  });

  test('R3 tell which thought an order has grids for, and how many empty cells go with it', () => {
    expect(refusalsOf(11, { logic: 'elsewhere' })).toMatchObject([
      { at: 'one-of-each › logic', choices: ['one-gap', 'row-and-column'] },
    ]);
    expect(refusalsOf(11, { order: 5, logic: 'elsewhere', chain: false })).toMatchObject([
      { at: 'one-of-each › chain', got: false, nearest: 'true' },
    ]);
    // A forest between four rows and four columns has at most seven lines.
    expect(refusalsOf(11, { logic: 'one-gap' })).toMatchObject([
      { at: 'one-of-each › empty', got: 10, min: 3, max: 7 },
    ]);
    expect(refusalsOf(1, { empty: 4 })).toMatchObject([{ at: 'one-of-each › empty', max: 2 }]);
  });

  test('R7 allow as many pieces as have room', () => {
    const many = { content: 'capitals', response: 'cut', order: 5, empty: 15 } as const;
    expect(refusalsOf(11, many)).toMatchObject([{ at: 'one-of-each › empty', got: 15, max: 14 }]);
  });
});

describe('every content', () => {
  test.each(CONTENT_IDS)(
    'gives proven tasks of %s that fit an upright page of either paper',
    (content) => {
      const response = content === 'colours' ? 'sticker' : 'point';
      const possible = LADDER.map((_, index) => valuesAt(index + 1, { content, response })).filter(
        (values) => limitsOf(values, COLOUR).length === 0,
      );
      // Directions are three at most, and the ladder's first six steps have no more rows.
      expect(possible.length).toBe(content.startsWith('directions') ? 6 : LADDER.length);
      for (const values of possible) {
        const made = taskOf(values, 3);
        expect(oneOfEach.prove(made), made.name).toEqual({ proven: true });
        const { widthMm, heightMm } = oneOfEach.room(made.printed);
        for (const paper of ['A4', 'Letter'] as const) {
          const area = sheetArea(paper, 'portrait');
          expect(widthMm, made.name).toBeLessThanOrEqual(area.width);
          expect(heightMm, made.name).toBeLessThanOrEqual(area.height);
        }
      }
    },
  );

  test('fits with pieces, as many as are allowed', () => {
    const values = valuesAt(11, { content: 'capitals', response: 'cut', order: 5, empty: 14 });
    const { widthMm, heightMm } = oneOfEach.room(taskOf(values, 1).printed);
    const area = sheetArea('Letter', 'portrait');
    expect(widthMm).toBeLessThanOrEqual(sheetArea('A4', 'portrait').width);
    expect(heightMm).toBeLessThanOrEqual(area.height);
  });
});
