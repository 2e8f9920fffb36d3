// What is refused, and every step with every content and response.
import { describe, expect, test } from 'vitest';
import { randomFrom } from '../../base/index.ts';
import { sizeOrder } from './index.ts';
import { LADDER } from './ladder.ts';
import { limitsOf } from './limits.ts';
import { type OrderValues, PARAMETERS } from './task.ts';
import { COLOUR, GREY, valuesAt } from './tasks-to-test.ts';

function refusalsOf(step: number, changes: Partial<OrderValues>) {
  return limitsOf(valuesAt(step, changes), COLOUR);
}

describe('R10 refusals', () => {
  test('R8 name both what is asked for and what the child does', () => {
    expect(refusalsOf(5, { response: 'ring' })).toMatchObject([
      { at: 'size-order › asked', got: 'order', nearest: 'biggest' },
      { at: 'size-order › response', got: 'ring', nearest: 'join' },
    ]);
    expect(refusalsOf(1, { response: 'cut' })).toMatchObject([
      { at: 'size-order › asked', got: 'biggest', nearest: 'order' },
      { at: 'size-order › response', got: 'cut', nearest: 'ring' },
    ]);
  });

  test('R7 let the one between be asked for of odd numbers alone', () => {
    expect(refusalsOf(2, { asked: 'middle' })).toMatchObject([
      { at: 'size-order › figures', got: 4, choices: ['3', '5'], nearest: '3' },
      { at: 'size-order › asked', got: 'middle', nearest: 'biggest' },
    ]);
    expect(refusalsOf(1, { asked: 'middle' })).toEqual([]);
  });

  test('R1 let there be as many quantities as six dots have numbers far enough apart', () => {
    const dots = { content: 'dot-quantities', figures: 5 } as const;
    // 1, 2, 4; 1, 2, 3, 5 or 1, 2, 4, 6; 1, 2, 3, 4, 6.
    expect(refusalsOf(1, dots)).toMatchObject([{ at: 'size-order › figures', max: 3 }]);
    expect(refusalsOf(3, dots)).toMatchObject([{ at: 'size-order › figures', max: 4 }]);
    expect(refusalsOf(9, dots)).toEqual([]);
  });

  test('R9 let no more be cut out than fit a frame', () => {
    expect(refusalsOf(8, { response: 'cut' })).toMatchObject([
      { at: 'size-order › figures', got: 5, max: 4 },
    ]);
  });
});

test('every step with every content and response that is not refused is proven', () => {
  for (const [index] of LADDER.entries()) {
    for (const content of PARAMETERS.content.values) {
      for (const response of PARAMETERS.response.values) {
        const style = (index + content.length) % 2 === 0 ? COLOUR : GREY;
        const read = sizeOrder.read(index + 1, { content, response }, style);
        if (!read.ok) continue;
        const task = sizeOrder.generate(read.value, randomFrom(index), style);
        expect(sizeOrder.prove(task), JSON.stringify(read.value)).toEqual({ proven: true });
      }
    }
  }
});
