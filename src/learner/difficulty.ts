// How hard a printed task is, in logits, part by part.
import {
  type Activity,
  FEATURE_NAMES,
  type FeatureName,
  type Features,
} from '../activities/index.ts';
import { BASE_LOGITS, WEIGHTS } from './weights.ts';

/** What one feature adds. */
export interface DifficultyPart {
  readonly feature: FeatureName;
  /** In the feature's own unit. */
  readonly amount: number;
  /** To 0.01. */
  readonly logits: number;
}

export interface Difficulty {
  /** A child whose ability is as many logits is right half the time, guessing aside; to 0.01. */
  readonly logits: number;
  /** Every feature that adds something, the greatest first; with `BASE_LOGITS` they come to `logits`. */
  readonly parts: readonly DifficultyPart[];
}

/** The difficulty of one printed task. */
export function difficultyOf(activity: Activity, printed: unknown): Difficulty {
  return difficultyFrom(activity.features(printed));
}

/** The difficulty of measured features: the base and the sum of amount times weight. */
export function difficultyFrom(features: Features): Difficulty {
  const parts = FEATURE_NAMES.map((feature) => partOf(feature, features[feature] ?? 0));
  return totalOf(parts);
}

/** The difficulty of a sheet: the mean over its tasks, part by part. A sheet has at least one task. */
export function sheetDifficulty(tasks: readonly Difficulty[]): Difficulty {
  if (tasks.length === 0)
    throw new Error('learner › difficulty: expected at least one task, got none');
  const amountIn = (task: Difficulty, feature: FeatureName) =>
    task.parts.find((part) => part.feature === feature)?.amount ?? 0;
  const parts = FEATURE_NAMES.map((feature) => {
    const sum = tasks.reduce((total, task) => total + amountIn(task, feature), 0);
    return partOf(feature, sum / tasks.length);
  });
  return totalOf(parts);
}

function partOf(feature: FeatureName, amount: number): DifficultyPart {
  return { feature, amount: rounded(amount), logits: rounded(amount * WEIGHTS[feature].logits) };
}

/** Sums rounded parts, so that the parts shown come to the sum shown. */
function totalOf(parts: readonly DifficultyPart[]): Difficulty {
  const adding = parts
    .filter(({ logits }) => logits !== 0)
    .sort((one, other) => other.logits - one.logits);
  const sum = adding.reduce((total, { logits }) => total + logits, BASE_LOGITS);
  return { logits: rounded(sum), parts: adding };
}

function rounded(value: number): number {
  return Math.round(value * 100) / 100;
}
