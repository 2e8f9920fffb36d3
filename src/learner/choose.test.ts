// Choosing the next sheet: success first, then what tells more and what has rested; and the reason given.
import { describe, expect, test } from 'vitest';
import { testSeed } from '../../tests/seed.ts';
import { randomFrom } from '../base/index.ts';
import { abilityOf, newBelief } from './ability.ts';
import { afterAnswers } from './ability-update.ts';
import { type Candidate, chooseSheet } from './choose.ts';
import { expectedSuccess, logitsFor } from './expected-success.ts';
import type { Answer } from './response-model.ts';

const SEED = testSeed('choose');
const NEW = newBelief(0);
const KNOWN = afterAnswers(NEW, answersOf('colour', 40), 0);

function answersOf(skill: string, count: number): readonly Answer[] {
  return Array.from({ length: count }, (_, index) => ({
    skill,
    logits: -0.5,
    chance: 0.25,
    outcome: index % 5 === 0 ? 'not-yet' : 'right',
  }));
}

function candidate(id: string, more: Partial<Candidate> = {}): Candidate {
  return { id, skill: 'colour', activity: id, logits: 0, chance: 0.25, restedDays: 2, ...more };
}

function chosenId(candidates: readonly Candidate[], belief = KNOWN, allowed?: readonly string[]) {
  return chooseSheet(belief, candidates, randomFrom(SEED), allowed && new Set(allowed))?.candidate
    .id;
}

/** The difficulty at which the known child has that success. */
function at(success: number): number {
  return logitsFor(abilityOf(KNOWN, 'colour'), 0.25, success);
}

describe('success', () => {
  test('within 0.75 to 0.90 comes before all else', () => {
    const far = candidate('far', { logits: at(0.6), restedDays: 90 });
    const near = candidate('near', { logits: at(0.83), restedDays: 0 });
    expect(chosenId([far, near])).toBe('near');
  });

  test('of 0.80 to 0.85 comes before the ends of the band, all else equal', () => {
    const candidates = [0.76, 0.825, 0.89].map((success) =>
      candidate(String(success), { logits: at(success) }),
    );
    expect(chosenId(candidates)).toBe('0.825');
  });

  test('out of the band is the nearest, and said to be', () => {
    const candidates = [-9, -7, 6, 9].map((logits) => candidate(String(logits), { logits }));
    const choice = chooseSheet(KNOWN, candidates, randomFrom(SEED));
    expect(choice?.candidate.id).toBe('-7');
    expect(choice?.reason.code).toBe('nearest');
  });

  test('of a new child is as wanted too, so it starts low', () => {
    const ladder = Array.from({ length: 25 }, (_, step) =>
      candidate(String(step), { logits: step / 4 - 3.5 }),
    );
    const choice = chooseSheet(NEW, ladder, randomFrom(SEED));
    expect(choice?.candidate.logits).toBeLessThan(-1.5);
    expect(choice?.reason.code).toBe('first-of-skill');
    const { logits = 0, chance = 0 } = choice?.candidate ?? {};
    const success = expectedSuccess(abilityOf(NEW, 'colour'), logits, chance);
    expect(choice?.reason.success).toBeCloseTo(success, 3);
    expect(success).toBeGreaterThanOrEqual(0.75);
  });
});

describe('among those that fit', () => {
  test('what has rested comes first', () => {
    const candidates = [0, 1, 30].map((restedDays) =>
      candidate(String(restedDays), { logits: at(0.82), restedDays }),
    );
    const choice = chooseSheet(KNOWN, candidates, randomFrom(SEED));
    expect(choice?.candidate.id).toBe('30');
    expect(choice?.reason).toMatchObject({ code: 'rested', restedDays: 30 });
  });

  test('what was never given has rested most', () => {
    const { restedDays: _, ...never } = candidate('never', { logits: at(0.82) });
    expect(chosenId([candidate('given', { logits: at(0.82), restedDays: 3 }), never])).toBe(
      'never',
    );
  });

  test('the skill of which less is known comes first', () => {
    const belief = afterAnswers(KNOWN, answersOf('size', 2), 0);
    const size = logitsFor(abilityOf(belief, 'size'), 0.25);
    const candidates = [
      candidate('known', { logits: at(0.82) }),
      candidate('less-known', { skill: 'size', logits: size }),
    ];
    const choice = chooseSheet(belief, candidates, randomFrom(SEED));
    expect(choice?.candidate.id).toBe('less-known');
    expect(choice?.reason.code).toBe('tells-more');
  });

  test('few choices to guess from tell more than two', () => {
    const logits = (chance: number) => logitsFor(abilityOf(KNOWN, 'colour'), chance);
    const candidates = [0.5, 0.1].map((chance) =>
      candidate(String(chance), { chance, logits: logits(chance) }),
    );
    expect(chosenId(candidates)).toBe('0.1');
  });
});

describe('the caller', () => {
  const candidates = [candidate('a', { logits: at(0.82) }), candidate('b', { logits: at(0.5) })];

  test('says what is allowed', () => {
    expect(chosenId(candidates, KNOWN, ['b'])).toBe('b');
    expect(chosenId(candidates, KNOWN, [])).toBeUndefined();
    expect(chosenId([])).toBeUndefined();
  });

  test('gives the chance that decides between equals, and nothing else', () => {
    const equals = ['x', 'y', 'z'].map((id) => candidate(id, { logits: at(0.82) }));
    const ids = Array.from({ length: 30 }, (_, seed) => {
      return chooseSheet(KNOWN, equals, randomFrom(SEED + seed))?.candidate.id;
    });
    expect(new Set(ids)).toEqual(new Set(['x', 'y', 'z']));
    for (let seed = 0; seed < 10; seed++) {
      expect(chooseSheet(KNOWN, candidates, randomFrom(seed))?.candidate.id).toBe('a');
      const once = chooseSheet(KNOWN, equals, randomFrom(seed));
      expect(chooseSheet(KNOWN, equals, randomFrom(seed))).toEqual(once);
    }
  });
});
