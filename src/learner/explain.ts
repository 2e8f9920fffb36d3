// How hard a task is and why, in plain words for an adult.
import type { FeatureName, Language } from '../activities/index.ts';
import type { Difficulty, DifficultyPart } from './difficulty.ts';
import { WEIGHTS } from './weights.ts';

/** Names for logits, from a least value up. A child at 0 is right about 12, 32, 68 and 88 times in 100 there. */
const LEVELS: readonly (readonly [least: number, name: string])[] = [
  [2, 'Very hard'],
  [0.75, 'Hard'],
  [-0.75, 'Middling'],
  [-2, 'Easy'],
  [Number.NEGATIVE_INFINITY, 'Very easy'],
];

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
  return SENTENCES[language](levelOf(logits), reasonsIn(parts));
}

const SENTENCES: Readonly<Record<Language, (level: string, reasons: readonly Reason[]) => string>> =
  {
    en: (level, reasons) => {
      if (reasons.length === 0) return `${level}. Nothing makes it harder than a first sheet.`;
      const phrases = reasons.map(({ feature, amount }) => WEIGHTS[feature].phrase(amount));
      return `${level}. What makes it harder than a first sheet: ${listed(phrases)}.`;
    },
  };

function levelOf(logits: number): string {
  return LEVELS.find(([least]) => logits >= least)?.[1] ?? '';
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

function listed(phrases: readonly string[]): string {
  const last = phrases.at(-1) ?? '';
  if (phrases.length < 3) return phrases.join(' and ');
  return `${phrases.slice(0, -1).join(', ')}, and ${last}`;
}
