// Whether a rise that is there is found, and one that is not is not made up.
import { describe, expect, test } from 'vitest';
import { testSeed } from '../../tests/seed.ts';
import { type Random, randomFrom } from '../base/index.ts';
import { rightProbability } from './response-model.ts';
import { type DatedSheet, riseOver } from './trend.ts';

const SEED = testSeed('trend');
const SHEETS = 80;
const DAYS = 91;

/** A child whose ability rises so much, and whose sheets follow it. */
function sheetsOf(random: Random, rise: number, start = -1): readonly DatedSheet[] {
  return Array.from({ length: SHEETS }, (_, place) => {
    const ability = start + (rise * place) / (SHEETS - 1);
    const logits = ability - 1.5;
    const asked = { skill: 'x', logits, chance: 0.25 };
    const answers = Array.from({ length: 3 }, () => ({
      ...asked,
      outcome:
        random.int(0, 9999) / 10_000 < rightProbability(ability, asked)
          ? ('right' as const)
          : ('not-yet' as const),
    }));
    return { day: Math.round((DAYS * place) / (SHEETS - 1)), answers };
  });
}

const shareOf = (rise: number, isIt: (z: number) => boolean) => {
  const random = randomFrom(SEED);
  const rises = Array.from({ length: 60 }, () => riseOver(sheetsOf(random.fork(), rise)));
  return rises.filter((found) => found && isIt(found.mean / found.sd)).length / rises.length;
};

describe('the rise of an ability', () => {
  test('that stays as it is counts as clear in few children', () => {
    expect(shareOf(0, (z) => Math.abs(z) > 1.64)).toBeLessThan(0.2);
  });

  test('of three logits over eighty sheets is clear in most children, and never a fall', () => {
    expect(shareOf(3, (z) => z > 1.64)).toBeGreaterThan(0.6);
    expect(shareOf(3, (z) => z < -1.64)).toBe(0);
  });

  test('is not told of a single day', () => {
    const [first] = sheetsOf(randomFrom(SEED), 0);
    expect(first && riseOver([first, first])).toBeUndefined();
  });
});
