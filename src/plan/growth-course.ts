// The course of a skill over the days, and which steps of an activity fitted at each point of it.
import { type ActivityId, activityOf, type Skill } from '../activities/index.ts';
import {
  type Ability,
  type Asked,
  abilityOf,
  type Belief,
  ninetyPercent,
  onDay,
} from '../learner/index.ts';
import type { Day, Month } from '../records/index.ts';
import { addDays, dayNumber } from './days.ts';
import type { settingFor } from './planner.ts';
import { hardestStep } from './rung-choice.ts';
import { afterSheet, beginning, type GivenSheet, type Standing } from './standing.ts';
import { contentsFor } from './suits.ts';

/** An ability on a day, with the ends of its 90 % interval; logits. */
export interface GrowthPoint extends Ability {
  readonly day: Day;
  /** Sheets of the skill up to then. */
  readonly sheets: number;
  readonly least: number;
  readonly most: number;
}

/** The step of an activity that fits, of so many, and those that fit the ends of the interval. */
export interface FittingStep {
  readonly activity: ActivityId;
  readonly step: number;
  readonly least: number;
  readonly most: number;
  readonly steps: number;
}

export type GrowthSetting = ReturnType<typeof settingFor>;

/** A recorded sheet, and what is believed after it. */
export interface Believed {
  readonly sheet: GivenSheet;
  readonly belief: Belief;
}

/** What is believed after each sheet, of all skills at once. */
export function believedAfter(
  { given }: Standing,
  birthMonth: Month | undefined,
): readonly Believed[] {
  const first = given[0]?.result.day;
  if (first === undefined) return [];
  let belief = beginning(first, birthMonth);
  return given.map((sheet) => {
    belief = afterSheet(belief, sheet);
    return { sheet, belief };
  });
}

/** The ability after each day's sheets, each day once; then today. */
export function courseOf(
  skill: Skill,
  believed: readonly Believed[],
  { day }: Standing,
): readonly GrowthPoint[] {
  const points = new Map<Day, GrowthPoint>();
  let sheets = 0;
  for (const { sheet, belief } of believed) {
    if (sheet.facts.skill === skill) sheets++;
    if (belief.skills.includes(skill))
      points.set(sheet.result.day, pointOf(belief, skill, sheet.result.day, sheets));
  }
  const [last, final] = [addDays(day, -1), believed.at(-1)];
  if (final !== undefined && points.size > 0)
    points.set(last, pointOf(onDay(final.belief, dayNumber(last)), skill, last, sheets));
  return [...points.values()];
}

function pointOf(belief: Belief, skill: Skill, day: Day, sheets: number): GrowthPoint {
  const ability = abilityOf(belief, skill);
  const [least, most] = ninetyPercent(ability);
  return { day, sheets, ...ability, least, most };
}

/** What an activity is asked for when its steps are told: the first content that is for the child. */
export function askedOf(activity: ActivityId, { bounds }: GrowthSetting): Asked {
  const [content] = contentsFor(activityOf(activity), bounds);
  return content === undefined ? {} : { content };
}

/** The step of the activity that fits an ability; no lower than the first. */
export function fittingStep(
  activity: ActivityId,
  ability: Ability,
  setting: GrowthSetting,
): FittingStep {
  const asked = askedOf(activity, setting);
  const stepAt = (at: Ability) => Math.max(1, hardestStep(setting.book, activity, asked, at));
  const [least, most] = ninetyPercent(ability);
  return {
    activity,
    step: stepAt(ability),
    least: stepAt({ mean: least, sd: 0 }),
    most: stepAt({ mean: most, sd: 0 }),
    steps: setting.book.count(activity, asked),
  };
}
