// What is refused, every step with every content, and what is laid out and said.
import { describe, expect, test } from 'vitest';
import { randomFrom } from '../../base/index.ts';
import { CONTENT_IDS, mostForms } from '../../figures/index.ts';
import { endForms } from './figures.ts';
import { followTheLine } from './index.ts';
import { LADDER } from './ladder.ts';
import { limitsOf } from './limits.ts';
import { type LineValues, PARAMETERS } from './task.ts';
import { COLOUR, GREY, taskOf, valuesAt } from './tasks-to-test.ts';

function refusalsOf(step: number, changes: Partial<LineValues>) {
  return limitsOf(valuesAt(step, changes), COLOUR);
}

describe('R9 refusals', () => {
  test('R6 name the most lines that a content can tell apart', () => {
    expect(refusalsOf(7, { content: 'directions', lines: 5 })).toMatchObject([
      { code: 'out-of-range', at: 'follow-the-line › lines', got: 5, min: 2, max: 4 },
    ]);
    expect(refusalsOf(7, { content: 'sizes', lines: 5 })).toMatchObject([{ max: 4 }]);
    expect(refusalsOf(9, { content: 'capitals', lines: 7 })).toEqual([]);
  });

  test('name the most lines that stand beside each other', () => {
    const down = { content: 'shapes-and-sizes', direction: 'down' } as const;
    expect(refusalsOf(7, { ...down, lines: 6 })).toMatchObject([
      { at: 'follow-the-line › lines', max: 5 },
    ]);
    expect(refusalsOf(7, { ...down, lines: 5 })).toEqual([]);
  });

  test('name the most crossings', () => {
    expect(refusalsOf(3, { crossings: 6 })).toMatchObject([
      { at: 'follow-the-line › crossings', got: 6, min: 0, max: 5 },
    ]);
    expect(refusalsOf(3, { crossings: 5 })).toEqual([]);
  });

  test('R7 let two lines cross an odd number of times', () => {
    expect(refusalsOf(1, { crossings: 2 })).toMatchObject([
      { code: 'not-a-choice', at: 'follow-the-line › crossings', got: 2, nearest: '1' },
    ]);
    expect(refusalsOf(1, { crossings: 3 })).toEqual([]);
  });

  test('R7 name as nearest what is not refused itself', () => {
    for (const content of CONTENT_IDS) {
      for (const crossings of [2, 4, 6, 14]) {
        const [refusal] = refusalsOf(1, { content, crossings });
        const nearest = refusal?.code === 'not-a-choice' ? Number(refusal.nearest) : -1;
        expect(refusalsOf(1, { content, crossings: nearest }), `${content}, ${crossings}`).toEqual(
          [],
        );
      }
    }
  });

  test('let stickers go with dots of colour, and colouring in with colours', () => {
    expect(refusalsOf(7, { content: 'shapes-and-colours', response: 'sticker' })).toMatchObject([
      {
        at: 'follow-the-line › response',
        nearest: 'point',
        choices: ['point', 'trace', 'colour-in'],
      },
    ]);
    expect(refusalsOf(7, { content: 'capitals', response: 'colour-in' })).toMatchObject([
      { at: 'follow-the-line › response', choices: ['point', 'trace'] },
    ]);
    expect(refusalsOf(7, { response: 'sticker' })).toEqual([]);
  });
});

test.each(CONTENT_IDS)('R6 %s leave enough different ends for the most lines', (content) => {
  expect(mostForms(endForms(content))).toBeGreaterThanOrEqual(PARAMETERS.lines.max);
});

test.each(CONTENT_IDS)('%s give proven tasks at every step that is not refused', (content) => {
  let made = 0;
  for (const [index] of LADDER.entries()) {
    for (const style of [COLOUR, GREY]) {
      const read = followTheLine.read(index + 1, { content }, style);
      if (!read.ok) continue;
      made++;
      for (let seed = 0; seed < 3; seed++) {
        const task = followTheLine.generate(read.value, randomFrom(seed), style);
        expect(followTheLine.prove(task), `step ${index + 1}, seed ${seed}`).toEqual({
          proven: true,
        });
      }
    }
  }
  expect(made).toBeGreaterThanOrEqual(14);
});

describe('what is laid out', () => {
  const laidOut = (changes: Partial<LineValues>) => {
    const { printed, answer } = taskOf(valuesAt(7, changes), 2);
    return followTheLine.materials({ printed, answer });
  };

  test('are stickers or crayons in the colours of the starts, a pencil, or nothing', () => {
    expect(laidOut({ response: 'point' })).toEqual([]);
    expect(laidOut({ response: 'trace', content: 'capitals' })).toEqual([{ kind: 'pencil' }]);
    expect(laidOut({ response: 'sticker', stickerMm: '13' })).toMatchObject(
      Array.from({ length: 4 }, () => ({ kind: 'sticker', diameterMm: 13, count: 1 })),
    );
    expect(laidOut({ response: 'colour-in' }).map(({ kind }) => kind)).toEqual(
      Array.from({ length: 4 }, () => 'crayon'),
    );
  });
});

test('the task is described without the answer, which names each start with its end', () => {
  const { printed, answer } = taskOf(valuesAt(7, { content: 'sizes', lines: 3 }), 9);
  const { describe: told, answer: solved } = followTheLine.words.en;
  expect(told(printed)).toMatch(
    /^Three lines wind from one side to the other. They start at the left/u,
  );
  expect(solved(printed, answer).match(/ to the /g)?.length).toBe(3);
});
