// How probable each outcome of a task is for a child of known ability: guessing, slips and help included.
import { MOST_CHANCE } from '../activities/index.ts';

/** Right alone; not right alone but then with help; not yet. */
export const OUTCOMES = ['right', 'with-help', 'not-yet'] as const;
export type Outcome = (typeof OUTCOMES)[number];

/** The most help that was given: none; a pointing finger or a hint; shown how on another; done together. */
export const HELP_LEVELS = ['none', 'hint', 'shown', 'together'] as const;
export type HelpLevel = (typeof HELP_LEVELS)[number];

/** What one task showed. */
export interface Answer {
  readonly skill: string;
  /** The task's difficulty. */
  readonly logits: number;
  /** Probability of being right by chance alone, 0 to 1: that of its activity. */
  readonly chance: number;
  readonly outcome: Outcome;
  /** Absent: none for `right` and `not-yet`, a hint for `with-help`. */
  readonly help?: HelpLevel;
  /** Whether help came before the child tried alone. Absent: after. */
  readonly helpedFirst?: boolean;
  /** Probability of a slip at what is easy, 0 to 0.2. Absent: `LAPSE`. */
  readonly lapse?: number;
}

/** By how much help raises the ability at the task, in logits. Common practice, no source: only the order is sure. */
export const HELP_LOGITS: Readonly<Record<HelpLevel, number>> = {
  none: 0,
  hint: 1,
  shown: 2,
  together: 4,
};

/**
 * How often a child slips at what it can do. Wichmann & Hill 2001, Percept. Psychophys. 63, 1293–1313 (from memory)
 * let it range from 0 to 0.06 in adults; the number for children is common practice, no source.
 */
export const LAPSE = 0.05;
/** With help a slip is seen and mended half of the time: common practice, no source. */
const LAPSE_LEFT_BY_HELP = 0.5;

/**
 * Standard deviation, in logits, of what is a sheet's own: the child's form on the day, and how far the sheet is off
 * its reckoned difficulty. The tasks of a sheet share it, so four answers on one sheet tell less than four on four.
 * Common practice, no source.
 */
export const FORM_SD = 0.5;

/** Probability of being right: chance c, slips l, ability raised by help: c + (1 − c − l) logistic(θ + h − b). */
export function rightProbability(
  ability: number,
  { logits, chance, lapse = LAPSE }: Pick<Answer, 'logits' | 'chance' | 'lapse'>,
  help: HelpLevel = 'none',
): number {
  const slips = help === 'none' ? lapse : lapse * LAPSE_LEFT_BY_HELP;
  const known = 1 / (1 + Math.exp(logits - ability - HELP_LOGITS[help]));
  const guessed = Math.min(chance, MOST_CHANCE);
  return guessed + Math.max(0, 1 - guessed - slips) * known;
}

/**
 * Probability of the outcome. Where help came after a try, the three outcomes are steps of one scale (as in the
 * graded model of Samejima 1969, Psychometrika Monogr. 17, from memory): at least with help, less alone, is with
 * help. So help that is given whenever the child fails is not taken for success.
 */
export function outcomeProbability(ability: number, answer: Answer): number {
  const { outcome, helpedFirst = false } = answer;
  const withHelp = rightProbability(ability, answer, helpIn(answer));
  if (outcome === 'not-yet') return 1 - withHelp;
  if (helpedFirst) return withHelp;
  const alone = rightProbability(ability, answer);
  return outcome === 'right' ? alone : withHelp - alone;
}

function helpIn({ outcome, help = 'none' }: Answer): HelpLevel {
  return outcome === 'with-help' && help === 'none' ? 'hint' : help;
}
