// Draws for the simulation from a seeded stream.
import { MAX_SEED, type Random } from '../../src/base/index.ts';

/** Above 0 and below 1, all equally likely. */
export function unit(random: Random): number {
  return (random.int(0, MAX_SEED) + 0.5) / (MAX_SEED + 1);
}

export function between(random: Random, least: number, most: number): number {
  return least + (most - least) * unit(random);
}

/** Normal (Box & Muller 1958). */
export function normal(random: Random, mean: number, sd: number): number {
  const radius = Math.sqrt(-2 * Math.log(unit(random)));
  return mean + sd * radius * Math.cos(2 * Math.PI * unit(random));
}

export function isSo(random: Random, probability: number): boolean {
  return unit(random) < probability;
}

/** The standard normal distribution function (Abramowitz & Stegun 1964, 26.2.17: off by less than 10⁻⁷). */
export function normalShare(z: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(z));
  const series =
    t *
    (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  const tail = (Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)) * series;
  return z > 0 ? 1 - tail : tail;
}

/** An index, each as likely as its pull (above 0) among all. */
export function drawn(random: Random, pulls: readonly number[]): number {
  const at = unit(random) * pulls.reduce((sum, pull) => sum + pull, 0);
  let passed = 0;
  return pulls.findIndex((pull) => {
    passed += pull;
    return at < passed;
  });
}
