// Where a child stands on a day: what is believed of it, and what it was given, from its records alone.
import type { ActivityId } from '../activities/index.ts';
import {
  type Answer,
  afterAnswers,
  afterWholeSheet,
  type Belief,
  newBelief,
  onDay,
  type HelpLevel as Prompt,
} from '../learner/index.ts';
import type { Child, Day, HelpLevel, Month, ResultInView } from '../records/index.ts';
import { ageBandOn, dayNumber } from './days.ts';
import { paceFrom } from './pace.ts';
import type { ReadFacts, SheetFacts } from './sheet-facts.ts';

/** A recorded sheet with what it asked. */
export interface GivenSheet {
  readonly result: ResultInView;
  readonly facts: SheetFacts;
  /** Share of the tasks tried that were right alone, 0 to 1. */
  readonly rightAlone: number;
}

export interface Standing {
  readonly day: Day;
  readonly belief: Belief;
  /** What was tried, in order; results whose code this version cannot read are not among them. */
  readonly given: readonly GivenSheet[];
  /** How many codes could not be read. */
  readonly unread: number;
  /** 1: takes as long as reckoned; see `paceFrom`. */
  readonly pace: number;
}

/** Means of the general part for a child of an age, in logits: common practice, no source; younger starts lower. */
const START_LOGITS: Readonly<Record<number, number>> = { 3: -1.25, 4: -0.5, 5: 0.25 };

/** How a child stands in the morning of `day`: of what was given that day and later nothing is known yet. */
export function standingOn(
  day: Day,
  child: Pick<Child, 'birthMonth'>,
  results: readonly ResultInView[],
  read: ReadFacts,
): Standing {
  const before = results.filter((result) => result.day < day);
  const looked = before.map((result) => ({ result, facts: read(result.code) }));
  const given = looked.flatMap(({ result, facts }) => givenSheet(result, facts));
  const belief = given.reduce(afterSheet, beginning(before[0]?.day ?? day, child.birthMonth));
  return {
    day,
    belief: onDay(belief, dayNumber(day)),
    given,
    unread: looked.filter(({ facts }) => facts === undefined).length,
    pace: paceOf(given),
  };
}

/** What is believed of a child before its first sheet, which is of that day. */
export function beginning(day: Day, birthMonth: Month | undefined): Belief {
  const age = birthMonth === undefined ? undefined : ageBandOn(day, birthMonth);
  return newBelief(dayNumber(day), age === undefined ? undefined : START_LOGITS[age]);
}

function givenSheet(result: ResultInView, facts: SheetFacts | undefined): readonly GivenSheet[] {
  const tried = result.tasks.filter(({ outcome }) => outcome !== 'not-tried');
  if (facts === undefined || tried.length === 0) return [];
  const right = tried.filter(({ outcome }) => outcome === 'right').length;
  return [{ result, facts, rightAlone: right / tried.length }];
}

/** The belief after one recorded sheet. */
export function afterSheet(belief: Belief, { result, facts }: GivenSheet): Belief {
  const answers = answersOf(result, facts);
  const [first] = answers;
  const day = dayNumber(result.day);
  if (!result.atOnce || first === undefined) return afterAnswers(belief, answers, day);
  const chance = answers.reduce((sum, answer) => sum + answer.chance, 0) / answers.length;
  const tasks = answers.map(({ logits }) => logits);
  return afterWholeSheet(belief, { ...first, chance, tasks }, day);
}

/** What each kind of help counts as. */
const PROMPTS: Readonly<Record<HelpLevel, Prompt>> = {
  none: 'none',
  'said-again': 'hint',
  pointed: 'hint',
  'shown-one': 'shown',
  'done-together': 'together',
};

/** The help noted for the sheet is taken for that of each task that was not right alone. */
export function answersOf({ tasks, help }: ResultInView, facts: SheetFacts): readonly Answer[] {
  return tasks.flatMap(({ outcome }, place): readonly Answer[] => {
    const task = facts.tasks[place];
    if (task === undefined || outcome === 'not-tried') return [];
    const { logits, chance } = task;
    const prompt = outcome === 'right' || help === undefined ? {} : { help: PROMPTS[help] };
    return [{ skill: facts.skill, logits, chance, outcome, ...prompt }];
  });
}

function paceOf(given: readonly GivenSheet[]): number {
  const timed = given.filter(({ result }) => (result.minutes ?? 0) > 0);
  const taken = timed.reduce((sum, { result }) => sum + (result.minutes ?? 0), 0);
  return paceFrom(
    taken,
    timed.reduce((sum, { facts }) => sum + facts.minutes, 0),
  );
}

/** The day on which each activity was last given. */
export function lastGiven(given: readonly GivenSheet[]): ReadonlyMap<ActivityId, Day> {
  return new Map(given.map(({ facts, result }) => [facts.activity, result.day]));
}
