// One sheet after another: which comes next, after what was given and what is planned so far.
import {
  ACTIVITY_IDS,
  type ActivityId,
  activityOf,
  SKILLS,
  type Skill,
} from '../activities/index.ts';
import { MAX_SEED, type Random } from '../base/index.ts';
import { abilityOf, type Candidate, chooseSheet, expectedSuccess } from '../learner/index.ts';
import type { PageChoice, PrintStyle } from '../page/index.ts';
import type { Day, Stock, Why } from '../records/index.ts';
import { changesOf, makeSheet, printChoicesOf } from '../sheets/index.ts';
import { makeSheetAtHand } from '../supplies/index.ts';
import { dayNumber } from './days.ts';
import type { Rung, RungBook } from './rung-book.ts';
import { rungFor } from './rung-choice.ts';
import { factsOf, type SheetFacts } from './sheet-facts.ts';
import { lastGiven, type Standing } from './standing.ts';
import { type Bounds, contentsFor, isSeen } from './suits.ts';

/** A sheet that is meant to be given, and why. */
export interface Suggestion {
  readonly facts: SheetFacts;
  readonly why: Why;
  /** Expected share of right answers, 0 to 1. */
  readonly success: number;
  /** Days since the activity was last given or planned; absent: never. */
  readonly restedDays?: number;
}

/** Everything that a choice hangs on and that stays while a plan is made. */
export interface Setting {
  readonly standing: Standing;
  readonly bounds: Bounds;
  readonly book: RungBook;
  readonly page: PageChoice;
  readonly print: PrintStyle['print'];
  /** The hand that writes, where it is not the right one. */
  readonly hand?: 'left';
  readonly random: Random;
  /** What is left in the house for the next sheet; absent: it was never counted. */
  readonly stock?: Stock;
  /** What is planned for days before and was not given yet, in order: it rests its activity and content; absent: nothing. */
  readonly foreseen?: readonly Foreseen[];
}

/** A sheet that a plan counts on. */
export interface Foreseen {
  readonly day: Day;
  readonly activity: ActivityId;
  readonly content: string;
}

/** What is ruled out or preferred for the next sheet. */
export interface Wanted {
  readonly day: Day;
  /** Sheets planned so far, in order, with their days. */
  readonly planned: readonly { readonly day: Day; readonly activity: ActivityId }[];
  readonly without?: ReadonlySet<ActivityId>;
  /** Only these, where one of them can be had. */
  readonly skills?: ReadonlySet<Skill>;
}

interface RungCandidate extends Candidate {
  readonly rung: Rung;
}

/** Contents of one activity that are compared; those that have rested longest. */
const CONTENTS_COMPARED = 2;
/** Draws for one sheet before its colours count as too alike for the child's eyes. */
const MOST_DRAWS = 8;

/** The next sheet, or `undefined` where nothing suits. */
export function nextSheet(setting: Setting, wanted: Wanted): Suggestion | undefined {
  const free = candidatesFor(setting, wanted);
  const skilled = free.filter(({ skill }) => wanted.skills?.has(skill as Skill) ?? true);
  let pool = skilled.length > 0 ? skilled : free;
  while (pool.length > 0) {
    const choice = chooseSheet(setting.standing.belief, pool, setting.random);
    const chosen = pool.find(({ id }) => id === choice?.candidate.id);
    if (!choice || !chosen) return undefined;
    const facts = sheetOf(setting, chosen.rung);
    const { code: why, success, restedDays } = choice.reason;
    if (facts) {
      return { facts, why, success, ...(restedDays === undefined ? {} : { restedDays }) };
    }
    pool = pool.filter((candidate) => candidate !== chosen);
  }
  return undefined;
}

/** Every activity that is not ruled out, with contents that have rested, at its fitting rungs. */
export function candidatesFor(
  setting: Setting,
  { day, planned, without }: Wanted,
): readonly RungCandidate[] {
  const last = new Map<ActivityId, Day>([
    ...lastGiven(setting.standing.given),
    ...foreseenDays(setting),
    ...planned.map(({ activity, day }) => [activity, day] as const),
  ]);
  return ACTIVITY_IDS.filter((id) => !without?.has(id)).flatMap((id) => {
    const lastDay = last.get(id);
    const rested = lastDay === undefined ? {} : { restedDays: dayNumber(day) - dayNumber(lastDay) };
    return contentsRested(setting, id)
      .flatMap((content) => rungFor(setting, id, content))
      .map((rung) => candidateOf(rung, rested));
  });
}

function foreseenDays({ foreseen = [] }: Setting): readonly (readonly [ActivityId, Day])[] {
  return foreseen.map(({ activity, day }) => [activity, day] as const);
}

function candidateOf(rung: Rung, rested: Pick<Candidate, 'restedDays'>): RungCandidate {
  const { activity, step, logits, chance, values } = rung;
  const id = `${activity} ${String(values.content)} ${String(values.response)} ${step}`;
  return { id, skill: activityOf(activity).skill, activity, logits, chance, rung, ...rested };
}

/** Contents that the child has not had with the activity for longest, in random order where it has had neither. */
function contentsRested(
  { standing: { given }, bounds, random, foreseen = [] }: Setting,
  id: ActivityId,
): readonly string[] {
  const had = given.map(({ facts: { activity, content }, result: { day } }) => {
    return { activity, content, day };
  });
  const last = new Map(
    [...had, ...foreseen]
      .filter(({ activity }) => activity === id)
      .map(({ content, day }) => [content, day]),
  );
  const dayOf = (content: string) => last.get(content) ?? '';
  return random
    .shuffle(contentsFor(activityOf(id), bounds))
    .sort((one, other) => Number(dayOf(one) > dayOf(other)) - Number(dayOf(one) < dayOf(other)))
    .slice(0, CONTENTS_COMPARED);
}

/** A sheet of the rung whose colours the child can tell apart and the house has; `undefined` after many draws. */
export function sheetOf(
  { bounds, random, stock, ...setting }: Omit<Setting, 'standing' | 'book'>,
  { activity, step, values }: Pick<Rung, 'activity' | 'step' | 'values'>,
): SheetFacts | undefined {
  for (let draw = 0; draw < MOST_DRAWS; draw++) {
    const seed = random.int(0, MAX_SEED);
    const changes = changesOf({ activity, step }, values);
    const request = { ...printChoicesOf(setting), activity, step, values: changes, seed };
    const made = stock === undefined ? makeSheet(request) : makeSheetAtHand(request, stock);
    // What the house has too little for it has at no seed.
    if (!made.ok && stock !== undefined) return undefined;
    if (made.ok && isSeen(made.value, bounds)) return factsOf(made.value);
  }
  return undefined;
}

/** The expected share of right answers on a sheet. */
export function successAt({ belief }: Standing, { skill, tasks }: SheetFacts): number {
  const ability = abilityOf(belief, skill);
  const sum = tasks.reduce(
    (total, { logits, chance }) => total + expectedSuccess(ability, logits, chance),
    0,
  );
  return sum / tasks.length;
}

/** Skills that are not among those of the activities. */
export function skillsLeft(activities: readonly ActivityId[]): ReadonlySet<Skill> {
  const had = new Set(activities.map((id) => activityOf(id).skill));
  return new Set(SKILLS.filter((skill) => !had.has(skill)));
}
