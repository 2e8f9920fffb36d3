// Walks from known values to a wanted difficulty, one change at a time, by the means of samples.
import type { Activity, AgeHint, Values } from '../activities/index.ts';
import type { Random } from '../base/index.ts';
import type { PrintStyle } from '../page/index.ts';
import type { Asked } from './climb.ts';
import { meanDifficulty, type Sample, sampleSeeds } from './mean-difficulty.ts';
import { movesFrom } from './moves.ts';

export interface Found extends Sample {
  readonly values: Values;
  /** Of the rung that the walk to these values began at. */
  readonly age: AgeHint;
}

/** All that a search knows; what was measured is kept, since walks from different rungs meet. */
export interface Search {
  readonly activity: Activity;
  readonly asked: Asked;
  readonly style: PrintStyle;
  readonly seeds: readonly number[];
  readonly known: Map<string, Found>;
  /** Keys of what was measured with all seeds. */
  readonly sure: Set<string>;
}

/** Seeds to find the way with, and to be sure where it ends. */
const SCOUT_SEEDS = 16;
const SURE_SEEDS = 200;
/** Sampled so near to the target, values are worth being sure of; logits. */
const WORTH_A_LOOK = 0.4;
const MOST_MOVES = 16;

/** How far numbers move: by one when a target is near, by more when the end of the reach is looked for. */
export const NEAR: readonly number[] = [-1, 1];
export const FAR: readonly number[] = [-6, -1, 1, 6];

export function searchFor(
  activity: Activity,
  asked: Asked,
  style: PrintStyle,
  random?: Random,
): Search {
  const seeds = sampleSeeds(SURE_SEEDS, random);
  return { activity, asked, style, seeds, known: new Map(), sure: new Set() };
}

/** The difficulty of values as far as it is known, else from a small sample. */
export function scouted(search: Search, values: Values, age: AgeHint): Found {
  return search.known.get(keyOf(values)) ?? measured(search, values, age, SCOUT_SEEDS);
}

/** The difficulty of values from the whole sample. */
export function sureOf(search: Search, { values, age }: Found): Found {
  const key = keyOf(values);
  const before = search.sure.has(key) ? search.known.get(key) : undefined;
  search.sure.add(key);
  return before ?? measured(search, values, age, SURE_SEEDS);
}

function measured(search: Search, values: Values, age: AgeHint, count: number): Found {
  const { activity, style, seeds, known } = search;
  const found = { values, age, ...meanDifficulty(activity, values, seeds.slice(0, count), style) };
  known.set(keyOf(values), found);
  return found;
}

function keyOf(values: Values): string {
  return JSON.stringify(Object.entries(values).sort(([one], [other]) => (one < other ? -1 : 1)));
}

/** Goes to the nearest of all single changes until the target is met within `tolerance` or none comes nearer. */
export function walk(
  search: Search,
  start: Found,
  target: number,
  tolerance: number,
  strides: readonly number[],
): Found {
  let here = start;
  for (let moves = 0; moves < MOST_MOVES; moves++) {
    if (distance(here, target) <= WORTH_A_LOOK) here = sureOf(search, here);
    if (isMet(here, target, tolerance)) return here;
    const next = nearestMove(search, here, target, strides);
    if (!next || distance(next, target) >= distance(here, target)) return here;
    here = next;
  }
  return here;
}

function nearestMove(
  search: Search,
  here: Found,
  target: number,
  strides: readonly number[],
): Found | undefined {
  const { activity, asked, style } = search;
  const next = movesFrom(activity, here.values, here.age, asked, strides, style)
    .map((values) => scouted(search, values, here.age))
    .filter(({ fits }) => fits);
  return byDistance(next, target)[0];
}

export function isMet(found: Found, target: number, tolerance: number): boolean {
  return found.fits && distance(found, target) <= tolerance;
}

function distance({ logits }: Sample, target: number): number {
  return Math.round(100 * Math.abs(logits - target)) / 100;
}

/** The nearest to the target first; of those as near the earlier. */
export function byDistance(found: readonly Found[], target: number): readonly Found[] {
  return [...found].sort((one, other) => distance(one, target) - distance(other, target));
}

/** Whatever was measured on the way that meets the target, the nearest first, and surely so. */
export function metOnTheWay(search: Search, target: number, tolerance: number): Found | undefined {
  const near = byDistance([...search.known.values()], target).filter((found) =>
    isMet(found, target, tolerance),
  );
  return near
    .map((found) => sureOf(search, found))
    .find((found) => isMet(found, target, tolerance));
}
