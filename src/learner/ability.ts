// What is believed about a child: a general part and one deviation for each skill, and how time loosens it.

/** A normal belief over (general part, deviation of each skill), in logits. Plain data; can be stored. */
export interface Belief {
  /** Skills that have been met, in the order of their deviations. */
  readonly skills: readonly string[];
  /** The general part, then one deviation for each skill. */
  readonly mean: readonly number[];
  readonly covariance: readonly (readonly number[])[];
  /** The day that it speaks of. */
  readonly day: number;
}

/** Ability at one skill, in logits: general part plus deviation. */
export interface Ability {
  readonly mean: number;
  readonly sd: number;
}

/**
 * The general part of a child of whom nothing is known. Below the middle of what is made (0), so that first sheets
 * lie near the easiest steps, about −2.5: common practice, no source.
 */
export const PRIOR_MEAN = -0.75;
/** Standard deviations of the general part and of a skill's deviation: common practice, no source. */
export const PRIOR_SD = { general: 1, skill: 0.8 } as const;
/**
 * Share of what is known that time wears away, per day: variance goes so much of the way to the prior's. From 0 it
 * grows by 0.004 a day in the general part, half a logit in two months: common practice, no source.
 */
export const DRIFT_PER_DAY = { general: 0.004, skill: 0.004 } as const;

/** The 90 % interval of a normal distribution, in standard deviations to each side. */
const NINETY = 1.6449;
/**
 * How much wider what is told is than the belief: real answers are unlike any model, and in simulation with another
 * one the plain interval holds the truth 84 times in 100 (`npm run simulate`); so widened, about 90 times.
 */
const WIDENING = 1.2;

/** A child of whom nothing is known but, where its age is, what `mean` to begin with; logits. */
export function newBelief(day: number, mean = PRIOR_MEAN): Belief {
  return { skills: [], mean: [mean], covariance: [[PRIOR_SD.general ** 2]], day };
}

/** The belief with room for a skill: the same if it has it. */
export function withSkill(belief: Belief, skill: string): Belief {
  if (belief.skills.includes(skill)) return belief;
  const covariance = belief.covariance.map((row) => [...row, 0]);
  const last = [...belief.mean.map(() => 0), PRIOR_SD.skill ** 2];
  return {
    ...belief,
    skills: [...belief.skills, skill],
    mean: [...belief.mean, 0],
    covariance: [...covariance, last],
  };
}

/** Ability at a skill, also at one that has not been met. */
export function abilityOf(belief: Belief, skill: string): Ability {
  const { skills, mean, covariance } = withSkill(belief, skill);
  const index = skills.indexOf(skill) + 1;
  const at = (row: number, column: number) => covariance[row]?.[column] ?? 0;
  const variance = at(0, 0) + 2 * at(0, index) + at(index, index);
  return { mean: (mean[0] ?? 0) + (mean[index] ?? 0), sd: Math.sqrt(Math.max(0, variance)) };
}

/** The ability as it shows on one sheet, with the form of the day. */
export function shown({ mean, sd }: Ability, formSd: number): Ability {
  return { mean, sd: Math.hypot(sd, formSd) };
}

/** Where the ability lies about nine times in ten, in logits. */
export function ninetyPercent({ mean, sd }: Ability): readonly [least: number, most: number] {
  const half = WIDENING * NINETY * sd;
  return [mean - half, mean + half];
}

/**
 * The belief on a later day. Means stay; each part is let go towards the prior's width around its mean:
 * Σ' = Σ₀ + A (Σ − Σ₀) A with A diagonal, √(1 − rate)^days. A random walk at first, never wider than the prior.
 * A day before the belief's (a clock set back) changes nothing.
 */
export function onDay(belief: Belief, day: number): Belief {
  const days = day - belief.day;
  if (!(days > 0)) return belief;
  const kept = belief.mean.map((_, index) => (1 - ratesOf(index)) ** (days / 2));
  const covariance = belief.covariance.map((row, one) =>
    row.map((value, other) => {
      const prior = one === other ? priorVariance(one) : 0;
      return prior + (kept[one] ?? 0) * (value - prior) * (kept[other] ?? 0);
    }),
  );
  return { ...belief, covariance, day };
}

function ratesOf(index: number): number {
  return index === 0 ? DRIFT_PER_DAY.general : DRIFT_PER_DAY.skill;
}

function priorVariance(index: number): number {
  return (index === 0 ? PRIOR_SD.general : PRIOR_SD.skill) ** 2;
}
