// How hard a task is and why, in plain words for an adult.
import { type FeatureName, type Language, WORDINGS } from '../activities/index.ts';
import { inEachLanguage, sayIn } from '../languages/index.ts';
import type { Difficulty, DifficultyPart } from './difficulty.ts';
import { MESSAGES } from './messages-en.ts';
import { WEIGHTS } from './weights.ts';

/** Names for logits, from a least value up. A child at 0 is right about 12, 32, 68 and 88 times in 100 there. */
const LEVELS = [
  [2, 'level.5'],
  [0.75, 'level.4'],
  [-0.75, 'level.3'],
  [-2, 'level.2'],
] as const;
const LOWEST = 'level.1';

const SAYS = inEachLanguage((language) => sayIn(language, 'learner', MESSAGES));

const MOST_REASONS = 3;
/** Less than this above an easiest sheet is not what makes a task hard; logits. */
const LEAST_TOLD = 0.2;
/** Nor is what is this much smaller than the greatest. */
const LEAST_SHARE = 0.25;

interface Reason {
  readonly feature: FeatureName;
  readonly amount: number;
  /** What it adds to an easiest sheet. */
  readonly logits: number;
}

/**
 * How hard the task is and what makes it harder than an easiest sheet: the greatest parts, three at most, in one
 * or two sentences.
 */
export function explainDifficulty({ logits, parts }: Difficulty, language: Language): string {
  const say = SAYS[language];
  const level = say(LEVELS.find(([least]) => logits >= least)?.[1] ?? LOWEST);
  const [first, second, third] = reasonsIn(parts).map(({ feature, amount }) =>
    reasonText(feature, amount, language),
  );
  if (first === undefined) return say('nothing', { level });
  if (second === undefined) return say('because.1', { level, first });
  if (third === undefined) return say('because.2', { level, first, second });
  return say('because.3', { level, first, second, third });
}

/** Why a task is hard, told of an amount of the feature in its unit: a clause. */
export function reasonText(feature: FeatureName, amount: number, language: Language): string {
  const { number, grade } = WEIGHTS[feature];
  const count = number?.(amount) ?? 0;
  return SAYS[language](feature, {
    count,
    number: WORDINGS[language].number(count),
    grade: grade?.(amount) ?? '',
  });
}

function reasonsIn(parts: readonly DifficultyPart[]): readonly Reason[] {
  const reasons = parts
    .filter(({ feature }) => WEIGHTS[feature].toldWith === undefined)
    .map((part) => reasonOf(part, parts))
    .sort((one, other) => other.logits - one.logits);
  const least = Math.max(LEAST_TOLD, LEAST_SHARE * (reasons[0]?.logits ?? 0));
  return reasons.filter(({ logits }) => logits >= least).slice(0, MOST_REASONS);
}

/** The part above what is usual, with those that are told in its phrase. */
function reasonOf({ feature, amount }: DifficultyPart, parts: readonly DifficultyPart[]): Reason {
  const told = parts.filter((part) => part.feature === feature || isToldWith(feature, part));
  const logits = told.reduce((total, part) => total + aboveUsual(part), 0);
  return { feature, amount, logits: Math.round(100 * logits) / 100 };
}

function isToldWith(feature: FeatureName, part: DifficultyPart): boolean {
  return WEIGHTS[part.feature].toldWith === feature;
}

function aboveUsual({ feature, logits }: DifficultyPart): number {
  const { usual = 0, logits: weight } = WEIGHTS[feature];
  return logits - usual * weight;
}
