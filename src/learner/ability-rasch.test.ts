// Beliefs about a child with one skill, against the exact Rasch posterior.
import { describe, expect, test } from 'vitest';
import { testSeed } from '../../tests/seed.ts';
import { type Random, randomFrom } from '../base/index.ts';
import { type Ability, abilityOf, newBelief, PRIOR_MEAN, PRIOR_SD } from './ability.ts';
import { afterAnswers } from './ability-update.ts';
import type { Answer } from './response-model.ts';

const SEED = testSeed('ability and Rasch');
const THETA_SD = Math.hypot(PRIOR_SD.general, PRIOR_SD.skill);
const NEW = newBelief(0);

function rasch(logits: number, right: boolean): Answer {
  return { skill: 'colour', logits, chance: 0, lapse: 0, outcome: right ? 'right' : 'not-yet' };
}

/** Mean and sd of the exact Rasch posterior by Simpson's rule over ten prior sds to each side, in logarithms. */
function exactPosterior(answers: readonly Answer[]): Ability {
  const half = 10 * THETA_SD;
  const steps = 2000;
  const logs = Array.from({ length: steps + 1 }, (_, step) => {
    const theta = PRIOR_MEAN - half + (2 * half * step) / steps;
    const likelihood = answers.reduce((sum, { logits, outcome }) => {
      const gap = outcome === 'right' ? logits - theta : theta - logits;
      return sum - Math.log1p(Math.exp(gap));
    }, 0);
    return { theta, log: likelihood - ((theta - PRIOR_MEAN) / THETA_SD) ** 2 / 2 };
  });
  const top = Math.max(...logs.map(({ log }) => log));
  const sums = logs.reduce(
    ([mass, first, second], { theta, log }, step) => {
      const simpson = step === 0 || step === steps ? 1 : step % 2 === 0 ? 2 : 4;
      const share = simpson * Math.exp(log - top);
      return [mass + share, first + share * theta, second + share * theta * theta] as const;
    },
    [0, 0, 0] as readonly [number, number, number],
  );
  const mean = sums[1] / sums[0];
  return { mean, sd: Math.sqrt(sums[2] / sums[0] - mean * mean) };
}

function randomAnswers(random: Random, count: number): readonly Answer[] {
  return Array.from({ length: count }, () =>
    rasch(random.int(-350, 350) / 100, random.int(0, 1) === 1),
  );
}

/** Answers of a child drawn from the belief about a new one, to sheets near its ability, as Rasch has it. */
function naturalAnswers(random: Random, sheets: number): readonly Answer[] {
  const unit = () => random.int(1, 99_999) / 100_000;
  const normal = Math.sqrt(-2 * Math.log(unit())) * Math.cos(2 * Math.PI * unit());
  const theta = PRIOR_MEAN + THETA_SD * normal;
  return Array.from({ length: 4 * sheets }, () => {
    const logits = Math.round(100 * (theta - 3 + 4 * unit())) / 100;
    return rasch(logits, unit() < 1 / (1 + Math.exp(logits - theta)));
  });
}

function sheetBySheet(answers: readonly Answer[], tasks: number): Ability {
  let belief = NEW;
  for (let at = 0; at < answers.length; at += tasks) {
    belief = afterAnswers(belief, answers.slice(at, at + tasks), 0, 0);
  }
  return abilityOf(belief, 'colour');
}

interface Distances {
  /** Root mean square of the distances in mean, and in sd. */
  readonly usual: Ability;
  readonly largest: Ability;
}

/** How far mean and sd lie from the exact posterior, in its sds. */
function distances(patterns: readonly (readonly Answer[])[], tasks: number): Distances {
  const each = patterns.map((answers) => {
    const exact = exactPosterior(answers);
    const ours = sheetBySheet(answers, tasks);
    return { mean: (ours.mean - exact.mean) / exact.sd, sd: (ours.sd - exact.sd) / exact.sd };
  });
  const usual = (of: keyof Ability) =>
    Math.hypot(...each.map((one) => one[of])) / each.length ** 0.5;
  const largest = (of: keyof Ability) => Math.max(...each.map((one) => Math.abs(one[of])));
  return {
    usual: { mean: usual('mean'), sd: usual('sd') },
    largest: { mean: largest('mean'), sd: largest('sd') },
  };
}

describe('with one skill, no time, form of the day, guessing or help', () => {
  const random = randomFrom(SEED);
  const rounds = (make: () => readonly Answer[]) => Array.from({ length: 200 }, make);
  const coins = rounds(() => randomAnswers(random, random.int(1, 40)));
  const natural = rounds(() => naturalAnswers(random, random.int(1, 10)));

  /** In sds of the exact posterior; as stated in docs/learner.md. */
  test.each([
    ['taken in together, coin tosses', coins, 40, 1e-5, 1e-5],
    ['sheet by sheet, answers of a child', natural, 4, 0.15, 1],
    ['sheet by sheet, coin tosses', coins, 4, 0.15, 0.6],
  ] as const)(
    '%s: mean and sd are those of the Rasch posterior',
    (name, patterns, tasks, usual, largest) => {
      const found = distances(patterns, tasks);
      console.log(`${name}: off the Rasch posterior by ${JSON.stringify(found)}`);
      expect(found.usual.mean).toBeLessThan(usual);
      expect(found.usual.sd).toBeLessThan(usual);
      expect(found.largest.mean).toBeLessThan(largest);
      expect(found.largest.sd).toBeLessThan(largest);
    },
  );

  test('right at a difficulty and not yet at its mirror image about the mean are mirror images', () => {
    const up = abilityOf(afterAnswers(NEW, [rasch(PRIOR_MEAN + 1, true)], 0, 0), 'colour');
    const down = abilityOf(afterAnswers(NEW, [rasch(PRIOR_MEAN - 1, false)], 0, 0), 'colour');
    expect(up.mean - PRIOR_MEAN).toBeCloseTo(PRIOR_MEAN - down.mean, 10);
    expect(up.sd).toBeCloseTo(down.sd, 10);
  });

  test('the order of sheets hardly matters: usually less than a sixth of an sd', () => {
    const shuffling = randomFrom(SEED + 2);
    const gaps = natural.map((answers) => {
      const one = sheetBySheet(answers, 4);
      return (one.mean - sheetBySheet(shuffling.shuffle(answers), 4).mean) / one.sd;
    });
    expect(Math.hypot(...gaps) / gaps.length ** 0.5).toBeLessThan(1 / 6);
  });
});
