// Which sheet comes next: of a fitting difficulty first, then the one that tells more and whose kind has rested.
import type { Random } from '../base/index.ts';
import { type Ability, abilityOf, type Belief } from './ability.ts';
import { expectedNarrowing } from './ability-update.ts';
import { expectedSuccess, SUCCESS_BAND, WANTED_SUCCESS } from './expected-success.ts';

/** A sheet that could be given. */
export interface Candidate {
  readonly id: string;
  readonly skill: string;
  readonly activity: string;
  /** Mean difficulty of its tasks. */
  readonly logits: number;
  /** Probability of being right by chance alone. */
  readonly chance: number;
  /** Days since the activity was last given; absent: never. */
  readonly restedDays?: number;
}

/**
 * Why this one: nothing is known of the skill yet; no fitting difficulty was there, and this is the nearest; it tells
 * most about the child; its kind has rested longest; or it simply fits.
 */
export type ReasonCode = 'first-of-skill' | 'nearest' | 'tells-more' | 'rested' | 'fits';

export interface Reason {
  readonly code: ReasonCode;
  /** Probability of being right at a task, 0 to 1. */
  readonly success: number;
  /** By how much a task is expected to lessen the variance of the ability, in square logits. */
  readonly narrowing: number;
  /** Days since the activity was last given; absent: never. */
  readonly restedDays?: number;
  readonly ability: Ability;
}

export interface Choice {
  readonly candidate: Candidate;
  readonly reason: Reason;
}

/** At this expected success and up to 0.85 no sheet is better than another: the middle of the band. */
const BEST = { least: 0.8, most: 0.85 } as const;
/** A kind of sheet is as good as rested after about so many days: common practice, no source. */
const REST_DAYS = 3;
/** What counts for how much, each from 0 to 1: common practice, no source. */
const WEIGHT = { fits: 1, tells: 0.6, rested: 0.8 } as const;

interface Scored extends Choice {
  readonly inBand: boolean;
  /** 0 to 1 each, times its weight. */
  readonly tells: number;
  readonly rested: number;
  readonly score: number;
}

/**
 * The next sheet among those whose ids are `allowed` (all where it is absent); `undefined` where none is. Those with
 * an expected success of 0.75 to 0.90 come before all others; failing that, the nearest to `WANTED_SUCCESS`.
 * `random` decides between equals only.
 */
export function chooseSheet(
  belief: Belief,
  candidates: readonly Candidate[],
  random: Random,
  allowed?: ReadonlySet<string>,
): Choice | undefined {
  const free = candidates.filter(({ id }) => allowed?.has(id) ?? true);
  const scored = free.map((candidate) => scoreOf(belief, candidate));
  const fitting = scored.filter(({ inBand }) => inBand);
  const pool = fitting.length > 0 ? fitting : nearestOf(scored);
  const best = Math.max(...pool.map(({ score }) => score));
  const equals = pool.filter(({ score }) => score === best);
  if (equals.length === 0) return undefined;
  const chosen = random.pick(equals);
  return { candidate: chosen.candidate, reason: { ...chosen.reason, code: codeOf(chosen, pool) } };
}

function scoreOf(belief: Belief, candidate: Candidate): Scored {
  const { skill, logits, chance, restedDays } = candidate;
  const ability = abilityOf(belief, skill);
  const success = thousandth(expectedSuccess(ability, logits, chance));
  const narrowing = thousandth(expectedNarrowing(ability, logits, chance));
  const rest = restedDays === undefined ? {} : { restedDays };
  const code = belief.skills.includes(skill) ? 'fits' : 'first-of-skill';
  const inBand = success >= SUCCESS_BAND.least && success <= SUCCESS_BAND.most;
  const off = Math.max(0, BEST.least - success, success - BEST.most);
  const tells = WEIGHT.tells * Math.min(1, narrowing / MOST_NARROWING);
  const rested = WEIGHT.rested * restOf(restedDays);
  const score = thousandth(WEIGHT.fits * (1 - off / OFF_AT_MOST) + tells + rested);
  const reason: Reason = { code, success, narrowing, ...rest, ability };
  return { candidate, reason, inBand, tells, rested, score };
}

/** A task tells no more than about this much of a new child; square logits. */
const MOST_NARROWING = 0.25;
/** From the best success to the end of the band. */
const OFF_AT_MOST = 0.05;

function restOf(days = Number.POSITIVE_INFINITY): number {
  return 1 - Math.exp(-Math.max(0, days) / REST_DAYS);
}

/** Those nearest to the wanted success, out of the band: the score there is of no use. */
function nearestOf(scored: readonly Scored[]): readonly Scored[] {
  const off = ({ reason }: Scored) => thousandth(Math.abs(reason.success - WANTED_SUCCESS));
  const least = Math.min(...scored.map(off));
  return scored.filter((each) => off(each) === least);
}

/** What sets it apart most from the mean of those that it was chosen from. */
function codeOf({ inBand, reason, tells, rested }: Scored, pool: readonly Scored[]): ReasonCode {
  if (!inBand) return 'nearest';
  if (reason.code === 'first-of-skill') return reason.code;
  const above = (own: number, of: 'tells' | 'rested') =>
    own - pool.reduce((sum, each) => sum + each[of], 0) / pool.length;
  const [told, rest] = [above(tells, 'tells'), above(rested, 'rested')];
  if (Math.max(told, rest) < LEAST_TOLD) return 'fits';
  return told >= rest ? 'tells-more' : 'rested';
}

/** Less than this above the mean is no reason; in the unit of the score. */
const LEAST_TOLD = 0.02;

/** Scores are compared rounded, since last digits of exponentials may differ between machines. */
function thousandth(value: number): number {
  return Math.round(1000 * value) / 1000;
}
