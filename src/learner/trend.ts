// Whether an ability moved over some weeks: a straight line through the answers themselves, with how sure that is.
import type { Ability } from './ability.ts';
import { type Answer, FORM_SD, outcomeProbability } from './response-model.ts';

/** The answers of one sheet; difficulties may be taken against what is believed of each skill. */
export interface DatedSheet {
  readonly day: number;
  readonly answers: readonly Answer[];
}

/** Before the answers are seen: the middle of the line anywhere near 0, its rise as likely down as up; logits. */
const PRIOR_SD = { middle: 2, rise: 1.5 } as const;
/** Standard deviations on both sides of the prior, and nodes over them. */
const REACH = 3;
const NODES = 31;

/**
 * How much an ability rose from the first sheet's day to the last one's, in logits: mean and standard deviation of the
 * rise of a straight line θ(t) = middle + rise · (t − ½) under normal priors, by the trapezoid rule over a grid of
 * both. Answers of a sheet share the form of the day, so n of them count as n / (1 + (n − 1) ρ), with ρ the share of
 * `FORM_SD`² in it and the variance of a logistic answer, π² / 3 (design effect of clusters: Kish 1965, from memory).
 * `undefined` where all sheets are of one day.
 */
export function riseOver(sheets: readonly DatedSheet[]): Ability | undefined {
  const days = sheets.map(({ day }) => day);
  const [first, last] = [Math.min(...days), Math.max(...days)];
  if (!(last > first)) return undefined;
  const placed = sheets.map(({ day, answers }) => ({
    time: (day - first) / (last - first) - 1 / 2,
    answers,
    weight: 1 / (1 + (answers.length - 1) * SHARE_OF_FORM),
  }));
  const logLikelihood = (middle: number, rise: number) =>
    placed.reduce((sum, { time, answers, weight }) => {
      const ability = middle + rise * time;
      return sum + weight * answers.reduce((logs, each) => logs + logOf(ability, each), 0);
    }, 0);
  return meanOf(logLikelihood);
}

const SHARE_OF_FORM = FORM_SD ** 2 / (FORM_SD ** 2 + Math.PI ** 2 / 3);

/** Keeps an answer that the model holds impossible from ruling out everything. */
const LEAST_PROBABILITY = 1e-6;

function logOf(ability: number, answer: Answer): number {
  return Math.log(Math.max(LEAST_PROBABILITY, outcomeProbability(ability, answer)));
}

/** Mean and standard deviation of the rise. */
function meanOf(logLikelihood: (middle: number, rise: number) => number): Ability {
  const cells = nodesOf(PRIOR_SD.middle).flatMap((middle) =>
    nodesOf(PRIOR_SD.rise).map((rise) => ({
      rise,
      log:
        logLikelihood(middle, rise) -
        (middle / PRIOR_SD.middle) ** 2 / 2 -
        (rise / PRIOR_SD.rise) ** 2 / 2,
    })),
  );
  const most = Math.max(...cells.map(({ log }) => log));
  let [mass, sum, squares] = [0, 0, 0];
  for (const { rise, log } of cells) {
    const weight = Math.exp(log - most);
    mass += weight;
    sum += weight * rise;
    squares += weight * rise * rise;
  }
  const mean = sum / mass;
  return { mean, sd: Math.sqrt(Math.max(0, squares / mass - mean * mean)) };
}

function nodesOf(sd: number): readonly number[] {
  return Array.from({ length: NODES }, (_, node) => sd * REACH * ((2 * node) / (NODES - 1) - 1));
}
