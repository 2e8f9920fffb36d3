// The mean difficulty of the tasks that values give, from a sample of seeds, and whether they have room on paper.
import type { Activity, Values } from '../activities/index.ts';
import { MAX_SEED, type Random, randomFrom } from '../base/index.ts';
import { HOME_PAPERS, ORIENTATIONS, type PrintStyle, sheetArea } from '../page/index.ts';
import { difficultyOf } from './difficulty.ts';

export interface Sample {
  /** Mean over the sample, to 0.01. */
  readonly logits: number;
  /** Whether every task of the sample fits every paper, upright or lying. */
  readonly fits: boolean;
}

/** The same seeds for all values, so that what differs between two means is the values' doing. */
export function sampleSeeds(count: number, random?: Random): readonly number[] {
  return Array.from({ length: count }, (_, seed) => random?.int(0, MAX_SEED) ?? seed);
}

export function meanDifficulty(
  activity: Activity,
  values: Values,
  seeds: readonly number[],
  style: PrintStyle,
): Sample {
  const tasks = seeds.map((seed) => activity.generate(values, randomFrom(seed), style));
  const sum = tasks.reduce(
    (total, { printed }) => total + difficultyOf(activity, printed).logits,
    0,
  );
  return {
    logits: Math.round((100 * sum) / tasks.length) / 100,
    fits: tasks.every(({ printed }) => fitsPaper(activity, printed)),
  };
}

function fitsPaper(activity: Activity, printed: unknown): boolean {
  const { widthMm, heightMm } = activity.room(printed);
  return HOME_PAPERS.every((paper) =>
    ORIENTATIONS.some((orientation) => {
      const area = sheetArea(paper, orientation);
      return widthMm <= area.width && heightMm <= area.height;
    }),
  );
}
