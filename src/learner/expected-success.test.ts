// Expected success: against plain summation, and the difficulty that gives a wanted success.
import { expect, test } from 'vitest';
import { testSeed } from '../../tests/seed.ts';
import { randomFrom } from '../base/index.ts';
import { abilityOf, newBelief } from './ability.ts';
import { expectedSuccess, logitsFor, SUCCESS_BAND, WANTED_SUCCESS } from './expected-success.ts';
import { LAPSE } from './response-model.ts';

const SEED = testSeed('expected success');

test('of a child whose ability is sure is chance, slips and the logistic', () => {
  // Rasch 1960: a logit above the difficulty, 0.7311.
  const sure = expectedSuccess({ mean: 1, sd: 0 }, 0, 0.25, 0);
  expect(sure).toBeCloseTo(0.25 + (1 - 0.25 - LAPSE) * 0.7311, 4);
});

test('is the mean over the abilities that the child may have', () => {
  const ability = { mean: -0.4, sd: 1.2 };
  const count = 20001;
  let [mass, sum] = [0, 0];
  for (let index = 0; index < count; index++) {
    const z = (16 * index) / (count - 1) - 8;
    const weight = Math.exp((-z * z) / 2);
    mass += weight;
    sum += weight / (1 + Math.exp(0.3 - ability.mean - ability.sd * z));
  }
  const exact = 0.2 + (1 - 0.2 - LAPSE) * (sum / mass);
  expect(expectedSuccess(ability, 0.3, 0.2, 0)).toBeCloseTo(exact, 9);
});

test('is as wanted at the difficulty found, for any belief and number of choices', () => {
  const random = randomFrom(SEED);
  for (let round = 0; round < 200; round++) {
    const ability = { mean: random.int(-300, 300) / 100, sd: random.int(0, 130) / 100 };
    const chance = random.pick([0, 0.1, 0.25, 1 / 3, 0.5]);
    const success = expectedSuccess(ability, logitsFor(ability, chance), chance);
    expect(Math.abs(success - WANTED_SUCCESS)).toBeLessThan(0.002);
  }
});

test('the less is known, the easier the first sheet', () => {
  const at = (sd: number) => logitsFor({ mean: 0, sd }, 0.25);
  expect([at(0), at(0.5), at(1), at(1.3)]).toEqual(
    [at(0), at(0.5), at(1), at(1.3)].sort((one, other) => other - one),
  );
});

test('a new child starts near the easiest steps', () => {
  const target = logitsFor(abilityOf(newBelief(0), 'colour'), 0.25);
  expect(target).toBeLessThan(-2);
  expect(target).toBeGreaterThan(-3.6);
});

test('what cannot be had gets the nearest', () => {
  const ability = { mean: 0, sd: 0.5 };
  expect(logitsFor(ability, 0.9)).toBeGreaterThan(5);
  expect(logitsFor(ability, 0, 0.999)).toBeLessThan(-5);
});

test('the band holds what is wanted', () => {
  expect(SUCCESS_BAND.least).toBeLessThan(WANTED_SUCCESS);
  expect(SUCCESS_BAND.most).toBeGreaterThan(WANTED_SUCCESS);
});
