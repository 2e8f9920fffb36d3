// What is refused, and that each refusal names what would do.
import { describe, expect, test } from 'vitest';
import { randomFrom } from '../../base/index.ts';
import { fitsUpright } from '../upright-room.ts';
import { limits } from './limits.ts';
import { room } from './room.ts';
import type { Parameters } from './task.ts';
import { anyValues, COLOUR, GREY, goodValues, made, seeds, valuesAt } from './tasks-to-test.ts';

function refused(changes: Partial<Parameters>, style = COLOUR): readonly string[] {
  return limits(valuesAt(2, changes), style).map(({ at }) => at);
}

describe('R11 refusals', () => {
  test('R11 an odd attribute that the content does not look at', () => {
    expect(refused({ content: 'shapes', odd: 'colour' })).toEqual(['odd-one-out › odd']);
    expect(refused({ content: 'shapes-and-colours', odd: 'colour' })).toEqual([]);
    expect(refused({ content: 'picture-kinds', odd: 'form' })).toEqual(['odd-one-out › odd']);
  });

  test('R11 nothing can change beside pictures, nor colours beside letters in grey print', () => {
    expect(refused({ content: 'pictures', vary: true, figures: 6 })).toEqual([
      'odd-one-out › vary',
    ]);
    const letters = { content: 'capitals', vary: true, figures: 6 } as const;
    expect(refused(letters, GREY)).toEqual(['odd-one-out › vary']);
    expect(refused(letters)).toEqual([]);
    expect(refused({ content: 'shapes', vary: true, figures: 6 }, GREY)).toEqual([]);
  });

  test('R3 fewer than five figures leave another without its like', () => {
    expect(refused({ vary: true, figures: 4 })).toEqual(['odd-one-out › figures']);
    expect(refused({ vary: true, figures: 5 })).toEqual([]);
  });

  test('R6 three figures in two rows leave one alone', () => {
    expect(refused({ layout: 'grid', figures: 3 })).toEqual(['odd-one-out › figures']);
    expect(refused({ layout: 'loose', figures: 4 })).toEqual([]);
  });

  test('R8 mirrors are only for what points', () => {
    expect(refused({ mirrors: true })).toEqual(['odd-one-out › mirrors']);
    expect(refused({ mirrors: true, content: 'directions-and-colours' })).toEqual([]);
  });

  test('R11 whatever is refused for its number is accepted at the ends of the range it names', () => {
    let tried = 0;
    for (const seed of seeds(3000)) {
      const values = anyValues(randomFrom(seed));
      const [refusal] = limits(values, COLOUR);
      if (refusal?.code !== 'out-of-range') continue;
      tried++;
      for (const figures of [refusal.min, refusal.max]) {
        expect(limits({ ...values, figures }, COLOUR), `seed ${seed}`).toEqual([]);
      }
    }
    expect(tried).toBeGreaterThan(50);
  });

  test('R11 whatever is refused as a choice is accepted with the nearest that it names', () => {
    let tried = 0;
    for (const seed of seeds(1500)) {
      const values = anyValues(randomFrom(seed));
      for (const refusal of limits(values, GREY)) {
        if (refusal.code !== 'not-a-choice') continue;
        tried++;
        const name = refusal.at.split(' › ')[1] ?? '';
        const nearest = refusal.nearest === 'false' ? false : refusal.nearest;
        const ats = limits({ ...values, [name]: nearest }, GREY).map(({ at }) => at);
        expect(ats, `seed ${seed}`).not.toContain(refusal.at);
      }
    }
    expect(tried).toBeGreaterThan(50);
  });

  test('R12 whatever is accepted has room on a page', () => {
    for (const [seed, values] of goodValues(200)) {
      expect(fitsUpright(room(made(values, seed).printed)), `seed ${seed}`).toBe(true);
    }
  });
});
