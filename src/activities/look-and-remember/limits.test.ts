// What is refused, and every step with every content.
import { describe, expect, test } from 'vitest';
import { randomFrom } from '../../base/index.ts';
import { lookAndRemember } from './index.ts';
import { LADDER } from './ladder.ts';
import { limitsOf } from './limits.ts';
import { PARAMETERS, type RememberValues } from './task.ts';
import { COLOUR, GREY, valuesAt } from './tasks-to-test.ts';

function refusalsOf(step: number, changes: Partial<RememberValues>) {
  return limitsOf(valuesAt(step, changes), COLOUR);
}

describe('R10 refusals', () => {
  test('R4 ask for one new one at least', () => {
    expect(refusalsOf(3, { set: 4, choices: 4 })).toMatchObject([
      { at: 'look-and-remember › choices', got: 4, min: 5, max: 10 },
    ]);
  });

  test('R3 name the most choices where values run out: up, down and one side', () => {
    expect(refusalsOf(3, { content: 'directions' })).toMatchObject([
      { at: 'look-and-remember › choices', got: 4, min: 3, max: 3 },
    ]);
    expect(refusalsOf(3, { content: 'directions', set: 3 })).toMatchObject([
      { at: 'look-and-remember › set', got: 3, min: 1, max: 2 },
    ]);
  });

  test('R6 name how many near misses there can be', () => {
    expect(refusalsOf(5, { nearMisses: 5 })).toMatchObject([
      { at: 'look-and-remember › nearMisses', got: 5, min: 0, max: 4 },
    ]);
    // Three figures take all three directions, so that every other one shares its direction with one of them.
    expect(refusalsOf(7, { content: 'directions-and-colours' })).toMatchObject([
      { at: 'look-and-remember › nearMisses', got: 1, min: 3, max: 3 },
    ]);
    expect(refusalsOf(5, { nearMisses: 9, content: 'capitals' })).toEqual([]);
  });

  test('R9 leave room for the larger cells of sizes', () => {
    const sized = { content: 'shapes-colours-and-sizes' } as const;
    expect(refusalsOf(13, { ...sized, set: 5, choices: 9 })).toMatchObject([
      { at: 'look-and-remember › set', got: 5, max: 4 },
    ]);
    expect(refusalsOf(13, { ...sized, choices: 9 })).toMatchObject([
      { at: 'look-and-remember › choices', got: 9, max: 8 },
    ]);
  });
});

test('every step with every content that is not refused is proven', () => {
  for (const [index] of LADDER.entries()) {
    for (const content of PARAMETERS.content.values) {
      const style = (index + content.length) % 2 === 0 ? COLOUR : GREY;
      const read = lookAndRemember.read(index + 1, { content }, style);
      if (!read.ok) continue;
      const task = lookAndRemember.generate(read.value, randomFrom(index), style);
      expect(lookAndRemember.prove(task), JSON.stringify(read.value)).toEqual({ proven: true });
    }
  }
});
