// Difficulty as a sum of parts, the mean of a sheet, the table behind it, and the words for it.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { testSeed } from '../../tests/seed.ts';
import { activityOf, FEATURE_NAMES, type Features } from '../activities/index.ts';
import { randomFrom } from '../base/index.ts';
import { difficultyFrom, difficultyOf, sheetDifficulty } from './difficulty.ts';
import { explainDifficulty, reasonText } from './explain.ts';
import { BASE_LOGITS, WEIGHTS } from './weights.ts';

const features: fc.Arbitrary<Features> = fc.dictionary(
  fc.constantFrom(...FEATURE_NAMES),
  fc.integer({ min: 0, max: 300 }).map((hundredths) => hundredths / 100),
);
const RUNS = { numRuns: 200, seed: testSeed('difficulty') };

describe('the table', () => {
  test('has a weight of 0 or more and a source for every feature', () => {
    for (const name of FEATURE_NAMES) {
      const { logits, source } = WEIGHTS[name];
      expect(logits, name).toBeGreaterThan(0);
      expect(source, name).toMatch(/\d{4}|common practice, no source|from memory|tradition/);
    }
  });

  test('says each feature as a plain clause, whatever its amount', () => {
    for (const name of FEATURE_NAMES) {
      for (const amount of [0, 0.3, 1, 2.5, 5]) {
        expect(reasonText(name, amount, 'en'), name).toMatch(/^[a-z0-9][a-z0-9 ,-]*[a-z]$/);
      }
    }
  });
});

describe('difficulty', () => {
  test('is the base and the sum of amount times weight', () => {
    const { logits, parts } = difficultyFrom({ nearMisses: 2, likeness: 0.5 });
    const expected = BASE_LOGITS + 2 * WEIGHTS.nearMisses.logits + 0.5 * WEIGHTS.likeness.logits;
    expect(logits).toBeCloseTo(expected, 2);
    expect(parts.map(({ feature, amount }) => [feature, amount])).toEqual([
      ['nearMisses', 2],
      ['likeness', 0.5],
    ]);
    expect(difficultyFrom({})).toEqual({ logits: BASE_LOGITS, parts: [] });
  });

  test('has parts, the greatest first, that come to the whole, all to 0.01', () => {
    fc.assert(
      fc.property(features, (given) => {
        const { logits, parts } = difficultyFrom(given);
        const amounts = parts.map((part) => part.logits);
        const sum = amounts.reduce((total, part) => total + part, BASE_LOGITS);
        expect(logits).toBeCloseTo(sum, 6);
        expect(amounts).toEqual([...amounts].sort((one, other) => other - one));
        for (const value of [logits, ...amounts]) {
          expect(Math.abs(100 * value - Math.round(100 * value))).toBeLessThan(1e-9);
        }
      }),
      RUNS,
    );
  });

  test('grows with every feature', () => {
    fc.assert(
      fc.property(features, fc.constantFrom(...FEATURE_NAMES), (given, name) => {
        const more = { ...given, [name]: (given[name] ?? 0) + 0.5 };
        expect(difficultyFrom(more).logits).toBeGreaterThan(difficultyFrom(given).logits);
      }),
      RUNS,
    );
  });

  test('of a sheet is the mean of its tasks', () => {
    const [one, other] = [
      difficultyFrom({ compared: 1 }),
      difficultyFrom({ compared: 2, idle: 1 }),
    ];
    const sheet = sheetDifficulty([one, other]);
    expect(sheet.logits).toBeCloseTo((one.logits + other.logits) / 2, 1);
    expect(sheet.parts.map(({ feature, amount }) => [feature, amount])).toEqual([
      ['compared', 1.5],
      ['idle', 0.5],
    ]);
    expect(sheetDifficulty([one])).toEqual(one);
    expect(() => sheetDifficulty([])).toThrow('at least one task');
  });

  test('is read from the printed facts alone', () => {
    const activity = activityOf('by-key');
    const values = activity.ladder[8]?.values ?? {};
    const { printed } = activity.generate(values, randomFrom(5), { print: 'colour' });
    expect(difficultyOf(activity, printed)).toEqual(difficultyFrom(activity.features(printed)));
  });
});

describe('the explanation', () => {
  test('names the greatest parts above an easiest sheet, three at most', () => {
    const sentence = explainDifficulty(
      difficultyFrom({
        compared: Math.log(12),
        conjunction: 1,
        conjunctionCompared: Math.log(12),
        keySize: Math.log(3),
        idle: 1,
        mirrored: 0.1,
      }),
      'en',
    );
    expect(sentence.replace(/^[A-Z][a-z ]*\. /, '')).toBe(
      'What makes it harder than a first sheet: two things matter at once, there are twelve figures to compare, and one thing changes that must be left out of mind.',
    );
  });

  test('has little to say of a first sheet', () => {
    const first = difficultyFrom({ compared: Math.log(6), keySize: Math.log(2) });
    expect(explainDifficulty(first, 'en')).toBe(
      'Very easy. Nothing makes it harder than a first sheet.',
    );
  });

  test('calls a harder task by a harder word', () => {
    const levels = [1, 2, 3, 4, 5, 6, 7, 8].map((nearMisses) =>
      explainDifficulty(difficultyFrom({ nearMisses }), 'en').replace(/\..*/, ''),
    );
    const order = ['Very easy', 'Easy', 'Middling', 'Hard', 'Very hard'];
    const places = levels.map((level) => order.indexOf(level));
    expect(places).toEqual([...places].sort((one, other) => one - other));
    expect(places[0]).toBe(0);
  });
});
