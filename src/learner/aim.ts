// Finds values of a wanted difficulty: from the ladder's nearest rung by single changes, and a notch up or down.
import type { Activity, AgeHint, Values } from '../activities/index.ts';
import { accept, asGot, type Random, type Result, refuse, told } from '../base/index.ts';
import type { PrintStyle } from '../page/index.ts';
import { type Asked, changesFrom, climb } from './climb.ts';
import {
  byDistance,
  FAR,
  type Found,
  isMet,
  metOnTheWay,
  NEAR,
  type Search,
  scouted,
  searchFor,
  sureOf,
  walk,
} from './search.ts';

/** Values of a known difficulty. */
export interface Aim {
  /** The rung that the values share most with, 1 upward. */
  readonly step: number;
  /** All values of the activity. */
  readonly values: Values;
  /** Mean difficulty of the tasks that they give, over 200 seeds. */
  readonly logits: number;
}

/** A target is met within this many logits. */
export const AIM_TOLERANCE = 0.25;
/** What the sample may be off the target: the rest of the tolerance is for the chance of the sample. */
const SAMPLE_TOLERANCE = 0.19;
/** How much a notch moves the mean difficulty, in logits: from 0.5 to 0.62 of right answers, or to 0.38. */
export const NOTCH_LOGITS = 0.5;
/** So many rungs are started from before a target counts as out of reach. */
const MOST_STARTS = 4;

/**
 * Values whose mean difficulty is within `AIM_TOLERANCE` of the target, with those of `asked` as they are and
 * content and response as at the rung that it starts from. Refuses what the activity refuses, and a target
 * out of reach, with the range that can be reached. The same sample of seeds unless `random` gives another.
 */
export function aimAt(
  activity: Activity,
  targetLogits: number,
  asked: Asked,
  style: PrintStyle,
  random?: Random,
): Result<Aim> {
  if (!Number.isFinite(targetLogits)) {
    const at = `${activity.id} › difficulty`;
    return refuse({
      code: 'wrong-type',
      at,
      got: asGot(targetLogits),
      expected: told('reasons', 'expected.number'),
    });
  }
  const rungs = climb(activity, asked, style);
  if (!rungs.ok) return rungs;
  const search = searchFor(activity, asked, style, random);
  const starts = rungs.value.map((values, index) =>
    scouted(search, values, ageAt(activity, index + 1)),
  );
  return aimFrom(search, starts, targetLogits);
}

/**
 * Values about `NOTCH_LOGITS` harder or easier than those of a sheet, content and response as they are.
 * `values` may be all of them or those that differ from the step's. Refuses where no more can be reached.
 */
export function notch(
  activity: Activity,
  step: number,
  values: Asked,
  direction: 'harder' | 'easier',
  style: PrintStyle,
): Result<Aim> {
  const read = activity.read(step, values, style);
  if (!read.ok) return read;
  const search = searchFor(activity, {}, style);
  const start = sureOf(search, scouted(search, read.value, ageAt(activity, step)));
  const target = start.logits + (direction === 'harder' ? NOTCH_LOGITS : -NOTCH_LOGITS);
  return aimFrom(search, [start], Math.round(100 * target) / 100);
}

function ageAt({ ladder }: Activity, step: number): AgeHint {
  return ladder[step - 1]?.age ?? 3;
}

function aimFrom(search: Search, starts: readonly Found[], target: number): Result<Aim> {
  const sides = starts.map(({ logits }) => Math.sign(logits - target));
  // Beyond all starts every walk climbs the same slope, and one will do.
  const isBeyond = sides.every((side) => side === sides[0]);
  for (const start of byDistance(starts, target).slice(0, isBeyond ? 1 : MOST_STARTS)) {
    const found = walk(search, start, target, SAMPLE_TOLERANCE, isBeyond ? FAR : NEAR);
    if (isMet(found, target, SAMPLE_TOLERANCE)) return accept(aimOf(search, found));
  }
  const [least, most] = reachFrom(search, starts);
  const found = metOnTheWay(search, target, SAMPLE_TOLERANCE);
  return found ? accept(aimOf(search, found)) : refuseTarget(search, target, least, most);
}

/** The rung that shares most values with what was found. */
function aimOf({ activity }: Search, { values, logits }: Found): Aim {
  const changes = activity.ladder.map(
    (rung) => Object.keys(changesFrom(rung.values, values)).length,
  );
  return { step: changes.indexOf(Math.min(...changes)) + 1, values, logits };
}

/** A target that no task comes near, for walks that go as far as they can; logits. */
const BEYOND = 99;

/** The least and the most that can be reached, by walks from the easiest and the hardest start. */
function reachFrom(search: Search, starts: readonly Found[]): readonly [number, number] {
  const endOf = (beyond: number) => {
    const [start] = byDistance(starts, beyond);
    if (!start) throw new Error('learner › aim: expected at least one start, got none');
    return sureOf(search, walk(search, start, beyond, SAMPLE_TOLERANCE, FAR)).logits;
  };
  return [endOf(-BEYOND), endOf(BEYOND)];
}

/** Names the range that can be reached or, within it, the nearest difficulties below and above. */
function refuseTarget(search: Search, got: number, min: number, max: number): Result<never> {
  const at = `${search.activity.id} › difficulty`;
  if (got < min || got > max) {
    const because = told('reasons', 'difficulty.range');
    return refuse({ code: 'out-of-range', at, got, min, max, because });
  }
  const reached = [...search.known.values()].filter(({ fits }) => fits).map(({ logits }) => logits);
  const below = Math.max(...reached.filter((logits) => logits <= got));
  const above = Math.min(...reached.filter((logits) => logits >= got));
  const nearest = got - below <= above - got ? below : above;
  const because = told('reasons', 'difficulty.nearest');
  const choices = [below, above].map(String);
  return refuse({ code: 'not-a-choice', at, got, choices, nearest: String(nearest), because });
}
