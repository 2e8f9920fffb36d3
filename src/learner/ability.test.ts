// Beliefs about a child: help, sharing between skills, and time.
import { describe, expect, test } from 'vitest';
import { testSeed } from '../../tests/seed.ts';
import { randomFrom } from '../base/index.ts';
import {
  abilityOf,
  type Belief,
  newBelief,
  ninetyPercent,
  onDay,
  PRIOR_MEAN,
  PRIOR_SD,
} from './ability.ts';
import { afterAnswers, afterWholeSheet } from './ability-update.ts';
import { type Answer, HELP_LEVELS, type Outcome } from './response-model.ts';

const SEED = testSeed('ability');
const THETA_SD = Math.hypot(PRIOR_SD.general, PRIOR_SD.skill);
const NEW = newBelief(0);

function rasch(logits: number, right: boolean, skill = 'colour'): Answer {
  return { skill, logits, chance: 0, lapse: 0, outcome: right ? 'right' : 'not-yet' };
}

/** The variance of every ability that the belief speaks of. */
function varianceOf(belief: Belief, skill: string): number {
  return abilityOf(belief, skill).sd ** 2;
}

describe('what answers teach', () => {
  const answer = { skill: 'colour', logits: -0.5, chance: 0.25 } as const;
  const meanAfter = (more: Partial<Answer> & { outcome: Outcome }) =>
    abilityOf(afterAnswers(NEW, [{ ...answer, ...more }], 0), 'colour').mean;

  test('the more help, the less: from right alone down to not yet', () => {
    const helped = (['hint', 'shown', 'together'] as const).map((help) =>
      meanAfter({ outcome: 'with-help', help }),
    );
    const means = [meanAfter({ outcome: 'right' }), ...helped, meanAfter({ outcome: 'not-yet' })];
    expect(means).toEqual([...means].sort((one, other) => other - one));
    expect(new Set(means).size).toBe(5);
  });

  test('not yet in spite of help tells more against than not yet alone', () => {
    const [alone = 0, ...helped] = HELP_LEVELS.map((help) =>
      meanAfter({ outcome: 'not-yet', help }),
    );
    for (const mean of helped) expect(mean).toBeLessThan(alone);
  });

  test('help before a try leaves some praise, the less the more help', () => {
    const means = HELP_LEVELS.map((help) =>
      meanAfter({ outcome: 'right', help, helpedFirst: true }),
    );
    expect(means).toEqual([...means].sort((one, other) => other - one));
    expect(means[0]).toBeCloseTo(meanAfter({ outcome: 'right' }), 12);
    expect(means.at(-1)).toBeGreaterThan(PRIOR_MEAN);
  });

  test('right among few choices teaches less than right among many', () => {
    const means = [0.5, 0.25, 0.1, 0].map((chance) => meanAfter({ outcome: 'right', chance }));
    expect(means).toEqual([...means].sort((one, other) => one - other));
  });

  test('a child always helped after a failed try is not taken for one who can', () => {
    const helped = Array.from({ length: 30 }, () => ({ ...answer, outcome: 'with-help' }) as const);
    const { mean } = abilityOf(afterAnswers(NEW, helped, 0), 'colour');
    expect(mean).toBeLessThan(answer.logits);
  });

  test('one tap for a sheet moves the same way as a tap for each task, and less', () => {
    for (const outcome of ['right', 'not-yet'] as const) {
      const { logits, ...rest } = { ...answer, outcome };
      const whole = { ...rest, tasks: [logits, logits, logits, logits] };
      const each = whole.tasks.map((task) => ({ ...rest, logits: task }));
      const tapped = abilityOf(afterWholeSheet(NEW, whole, 0), 'colour').mean - PRIOR_MEAN;
      const single = abilityOf(afterAnswers(NEW, each, 0), 'colour').mean - PRIOR_MEAN;
      expect(tapped / single).toBeGreaterThan(0.3);
      expect(tapped / single).toBeLessThan(1);
    }
  });

  test('four answers of one sheet tell less than four of four sheets', () => {
    const right = { ...answer, outcome: 'right' } as const;
    const together = afterAnswers(NEW, [right, right, right, right], 0);
    const apart = [right, right, right, right].reduce((b, each) => afterAnswers(b, [each], 0), NEW);
    expect(abilityOf(together, 'colour').mean).toBeLessThan(abilityOf(apart, 'colour').mean);
  });

  test('what cannot go wrong and yet does is borne', () => {
    const belief = afterAnswers(NEW, [{ ...answer, chance: 1, outcome: 'not-yet' }], 0);
    expect(abilityOf(belief, 'colour').mean).toBeCloseTo(PRIOR_MEAN, 0);
  });

  test('a belief is plain data: what is stored and read again goes on alike', () => {
    const belief = afterAnswers(NEW, [{ ...answer, outcome: 'right' }], 3);
    const again: Belief = JSON.parse(JSON.stringify(belief));
    const more: readonly Answer[] = [{ ...answer, skill: 'size', outcome: 'not-yet' }];
    expect(afterAnswers(again, more, 9)).toEqual(afterAnswers(belief, more, 9));
  });

  test('without guessing and slips no answer widens any skill, met or not', () => {
    const random = randomFrom(SEED);
    let belief = NEW;
    for (let round = 0; round < 120; round++) {
      const answer = rasch(random.int(-350, 350) / 100, random.int(0, 1) === 1);
      const skill = random.pick(['colour', 'size', 'number']);
      const next = afterAnswers(belief, [{ ...answer, skill }], 0);
      for (const each of ['colour', 'size', 'number', 'never met']) {
        expect(varianceOf(next, each)).toBeLessThanOrEqual(varianceOf(belief, each) + 1e-12);
      }
      belief = next;
    }
  });

  test('skills share: other skills follow half-way, one skill’s own part stays its own', () => {
    const right = Array.from({ length: 12 }, () => rasch(0, true));
    const belief = afterAnswers(NEW, right, 0);
    const own = abilityOf(belief, 'colour').mean - PRIOR_MEAN;
    const other = abilityOf(belief, 'never met').mean - PRIOR_MEAN;
    // Regression on the general part: its share of the prior variance.
    expect(other / own).toBeCloseTo(PRIOR_SD.general ** 2 / THETA_SD ** 2, 10);
    expect(abilityOf(belief, 'colour').sd).toBeLessThan(abilityOf(belief, 'never met').sd);
  });
});

describe('time', () => {
  const ANSWERS = Array.from({ length: 40 }, (_, index) => rasch(index / 10 - 3, index < 20));
  const known = afterAnswers(NEW, ANSWERS, 10);

  test('leaves means and widens, towards the prior and never beyond', () => {
    const sds = [10, 20, 60, 365, 3650].map((day) => abilityOf(onDay(known, day), 'colour').sd);
    expect(sds).toEqual([...sds].sort((one, other) => one - other));
    expect(sds.at(-1)).toBeLessThanOrEqual(THETA_SD);
    expect(sds.at(-1)).toBeCloseTo(THETA_SD, 3);
    const later = abilityOf(onDay(known, 60), 'colour').mean;
    expect(later).toBe(abilityOf(known, 'colour').mean);
  });

  test('in two steps is time in one', () => {
    const once = abilityOf(onDay(known, 90), 'colour').sd;
    expect(abilityOf(onDay(onDay(known, 37), 90), 'colour').sd).toBeCloseTo(once, 12);
  });

  test('set back changes nothing', () => {
    expect(onDay(known, 3)).toBe(known);
    expect(onDay(known, Number.NaN)).toBe(known);
  });

  test('leaves a child of whom nothing is known as it is', () => {
    expect(abilityOf(onDay(NEW, 400), 'colour').sd).toBeCloseTo(THETA_SD, 12);
  });

  test('the interval that is told is a fifth wider than the belief’s 90 %', () => {
    const [least, most] = ninetyPercent({ mean: 1, sd: 2 });
    expect([least, most]).toEqual([1 - 2.4 * 1.6449, 1 + 2.4 * 1.6449]);
  });
});
