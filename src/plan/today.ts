// Today for one child: the plan that stands, or a new one, and the changes that a person makes to it.
import { type ActivityId, activityOf, type Skill } from '../activities/index.ts';
import { accept, type Result } from '../base/index.ts';
import { notch } from '../learner/index.ts';
import type { Day, PlanEntry, PlannedSheet, Why } from '../records/index.ts';
import { readCode, styleOf } from '../sheets/index.ts';
import { nextSheet, type Suggestion, sheetOf, successAt } from './course.ts';
import { FEWEST_SHEETS, planDay } from './day-plan.ts';
import { addDays, dayNumber } from './days.ts';
import { type Known, type Planner, settingFor, type Wishes } from './planner.ts';
import { lastGiven, type Standing } from './standing.ts';

/** Sheets that were not done move on for so many days. */
const MOVES_FOR_DAYS = 7;
/** So many sheets from earlier days stand on a day at most; common practice, no source. */
const MOST_MOVED = 2;

export interface DayWishes extends Wishes {
  readonly day: Day;
  readonly minutes: number;
}

/** A skill that has not come for so many days comes first; common practice, no source. */
const RESTED_DAYS = 7;

/** The day in a place's calendar on which something was recorded, from its milliseconds since 1970. */
export type DayAt = (at: number) => Day;

/**
 * The sheets for a day. A plan that a person made on the day itself stands as it is. One made before is led by what was
 * not done on earlier days; where there is none, or only what was put off to the day, it is made. The same until records
 * of earlier days change.
 */
export function planToday(
  planner: Planner,
  known: Known,
  wishes: DayWishes,
  dayAt: DayAt,
): readonly Suggestion[] {
  const { day, minutes } = wishes;
  const setting = settingFor(planner, known, day, wishes);
  const standing = toSuggestions(planner, setting.standing, standingToday(known, day, dayAt));
  const plan = known.plans.get(day);
  if (plan && !(isOnlyPutOff(plan) && dayAt(plan.at) < day)) return standing;
  const before = givenBefore(planner, known, day);
  const first = skillsRested(setting.standing);
  return planDay(setting, { day, minutes, before, standing, first });
}

/** What stands on a day before anything is made: its plan, led by what moves on to it. */
export function standingToday(known: Known, day: Day, dayAt: DayAt): readonly PlannedSheet[] {
  const plan = known.plans.get(day);
  const moved = plan && dayAt(plan.at) >= day ? [] : movedOn(known, day);
  const sheets = plan?.sheets ?? [];
  return plan && isOnlyPutOff(plan) ? [...sheets, ...moved] : [...moved, ...sheets];
}

/** The first day from `today` on with a sheet that was not done: where it is planned again, or today. */
export function movesOnTo(
  known: Known,
  today: Day,
  dayAt: DayAt,
): (code: string) => Day | undefined {
  const days: readonly (readonly [Day, readonly PlannedSheet[]])[] = [
    [today, standingToday(known, today, dayAt)],
    ...[...known.plans].flatMap(([day, { sheets }]) =>
      day > today ? [[day, sheets] as const] : [],
    ),
  ];
  return (wanted) => days.find(([, sheets]) => sheets.some(({ code }) => code === wanted))?.[0];
}

/** Skills that the child has had before, and not for a week: otherwise one that is hard for it would hardly come. */
function skillsRested({ given, day }: Standing): ReadonlySet<Skill> {
  const last = new Map(given.map(({ facts, result }) => [facts.skill, result.day]));
  return new Set(
    [...last].filter(([, on]) => on < addDays(day, -RESTED_DAYS)).map(([skill]) => skill),
  );
}

function isOnlyPutOff({ sheets }: PlanEntry): boolean {
  return sheets.length > 0 && sheets.every(({ why }) => why === 'moved-on');
}

/** Sheets of the last days that stand on `day` besides its own. */
export function movedOn(
  known: Pick<Known, 'plans' | 'results'>,
  day: Day,
): readonly PlannedSheet[] {
  return leftUndone(known, day)
    .slice(0, MOST_MOVED)
    .map((code) => ({ code, why: 'moved-on' as const }));
}

/**
 * Codes of the sheets that were planned for the last days and neither done before `day` nor planned again, the latest
 * first. What is done on the day itself stays, as all of its plan does.
 */
export function leftUndone(
  { plans, results }: Pick<Known, 'plans' | 'results'>,
  day: Day,
): readonly string[] {
  const from = addDays(day, -MOVES_FOR_DAYS);
  const done = new Set(results.filter((result) => result.day < day).map(({ code }) => code));
  const ahead = [...plans].filter(([on]) => on >= day).flatMap(([, { sheets }]) => sheets);
  const settled = new Set([...done, ...ahead.map(({ code }) => code)]);
  const left = [...plans]
    .filter(([on]) => on >= from && on < day)
    .sort(([one], [other]) => Number(one < other) - Number(one > other))
    .flatMap(([, { sheets }]) => sheets)
    .filter(({ code }) => !settled.has(code));
  return [...new Set(left.map(({ code }) => code))];
}

/**
 * A plan that a person asked for in place of the one with the sheets of `codes`: of none of the activities in `without`
 * where there is enough else, and led by nothing of earlier days.
 */
export function planAnew(
  planner: Planner,
  known: Known,
  wishes: DayWishes,
  codes: readonly string[],
  without: ReadonlySet<ActivityId>,
): readonly Suggestion[] {
  const { day, minutes } = wishes;
  const setting = settingFor(planner, known, day, wishes, codes.join(' '));
  const before = givenBefore(planner, known, day);
  const wanted = { day, minutes, before, standing: [], first: skillsRested(setting.standing) };
  const other = planDay(setting, { ...wanted, without });
  return other.length < FEWEST_SHEETS ? planDay(setting, wanted) : other;
}

/** What was given last before `day`, to follow it with something else. */
export function givenBefore(planner: Planner, { results }: Known, day: Day) {
  const last = results.filter((result) => result.day < day).at(-1);
  const facts = last && planner.read(last.code);
  return facts ? [{ day: last.day, activity: facts.activity }] : [];
}

/** Planned sheets as they look to a child's standing; codes that cannot be read are left out. */
export function toSuggestions(
  planner: Planner,
  standing: Standing,
  sheets: readonly PlannedSheet[],
): readonly Suggestion[] {
  const last = lastGiven(standing.given);
  return sheets.flatMap(({ code, why }) => {
    const facts = planner.read(code);
    if (!facts) return [];
    const day = last.get(facts.activity);
    const rested =
      day === undefined ? {} : { restedDays: dayNumber(standing.day) - dayNumber(day) };
    return [{ facts, why, success: successAt(standing, facts), ...rested }];
  });
}

/** Another sheet in place of the one with `code`, of none of the activities in `without`. */
export function somethingElse(
  planner: Planner,
  known: Known,
  wishes: DayWishes,
  code: string,
  without: ReadonlySet<ActivityId>,
): Suggestion | undefined {
  const setting = settingFor(planner, known, wishes.day, wishes, code);
  return nextSheet(setting, { day: wishes.day, planned: [], without });
}

/** The sheet about half a logit easier or harder. Refuses where there is no such sheet. */
export function notchedSheet(
  planner: Planner,
  known: Known,
  wishes: DayWishes,
  code: string,
  direction: 'easier' | 'harder',
): Result<Suggestion | undefined> {
  const read = readCode(code);
  if (!read.ok) return read;
  const { activity, step, values } = read.value;
  const aim = notch(activityOf(activity), step, values, direction, styleOf(read.value));
  if (!aim.ok) return aim;
  const setting = settingFor(planner, known, wishes.day, wishes, `${code} ${direction}`);
  const facts = sheetOf(setting, { activity, step: aim.value.step, values: aim.value.values });
  const why: Why = 'asked';
  return accept(facts && { facts, why, success: successAt(setting.standing, facts) });
}
