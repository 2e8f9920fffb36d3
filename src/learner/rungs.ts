// The rungs that a ladder really has with a content asked for, and how hard each is on the mean.
import type { Activity, Values } from '../activities/index.ts';
import { accept, type Result, randomFrom } from '../base/index.ts';
import type { PrintStyle } from '../page/index.ts';
import { type Asked, climb } from './climb.ts';
import { meanDifficulty, sampleSeeds } from './mean-difficulty.ts';

/** So many tasks that are alike one by one make two rungs the same. */
const COMPARED = 40;

/** The climb without the rungs that make the very same tasks as the one before. Refuses what `climb` refuses. */
export function differentRungs(
  activity: Activity,
  asked: Asked,
  style: PrintStyle,
): Result<readonly Values[]> {
  const climbed = climb(activity, asked, style);
  if (!climbed.ok) return climbed;
  const rungs = climbed.value.filter((values, index) => {
    const before = climbed.value[index - 1];
    return before === undefined || !makeTheSame(activity, before, values, style);
  });
  return accept(rungs);
}

function makeTheSame(activity: Activity, one: Values, other: Values, style: PrintStyle): boolean {
  if (JSON.stringify(one) === JSON.stringify(other)) return true;
  const taskOf = (values: Values, seed: number) =>
    JSON.stringify(activity.generate(values, randomFrom(seed), style));
  return sampleSeeds(COMPARED).every((seed) => taskOf(one, seed) === taskOf(other, seed));
}

/** The mean difficulty of each rung over so many seeds, in logits to 0.01. */
export function meansOf(
  activity: Activity,
  rungs: readonly Values[],
  seeds: number,
  style: PrintStyle,
): readonly number[] {
  return rungs.map((values) => meanDifficulty(activity, values, sampleSeeds(seeds), style).logits);
}

/** The first place, 1 upward, whose mean is not at least `leastRise` above the one before; 0 where all are. */
export function placeThatFails(means: readonly number[], leastRise: number): number {
  const place = means.findIndex((mean, index) => {
    const before = means[index - 1];
    // Hundredths as whole numbers: a rise of just the least is enough.
    return before !== undefined && Math.round(100 * (mean - before)) < Math.round(100 * leastRise);
  });
  return place + 1;
}
