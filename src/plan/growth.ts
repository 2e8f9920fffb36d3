// How a child is getting on: each skill over time with how sure that is, and what is mixed up with what.
import {
  ACTIVITY_IDS,
  type ActivityId,
  activityOf,
  SKILLS,
  type Skill,
} from '../activities/index.ts';
import {
  abilityOf,
  type Belief,
  type ConfusionRow,
  confusionsIn,
  ninetyPercent,
  onDay,
} from '../learner/index.ts';
import { COLOUR_NAMES } from '../palette/index.ts';
import type { Day } from '../records/index.ts';
import { addDays, dayNumber } from './days.ts';
import { looksOf } from './looks.ts';
import { type Known, type Planner, settingFor, type Wishes } from './planner.ts';
import { nearestSteps } from './rung-choice.ts';
import { afterSheet, beginning, type Standing } from './standing.ts';
import { contentsFor } from './suits.ts';

/** An ability on a day, with the ends of its 90 % interval; logits. */
export interface GrowthPoint {
  readonly day: Day;
  readonly mean: number;
  readonly least: number;
  readonly most: number;
}

/** The step of an activity that fits now, of so many. */
export interface FittingStep {
  readonly activity: ActivityId;
  readonly step: number;
  readonly steps: number;
}

export interface SkillGrowth {
  readonly skill: Skill;
  /** Sheets recorded of the skill. */
  readonly sheets: number;
  /** After each day on which a sheet of any skill was given, from the first of this one on; then today. */
  readonly course: readonly GrowthPoint[];
  /** Of each activity of the skill that has been given, in the order of the activities. */
  readonly fitting: readonly FittingStep[];
  /** How it moved over the last weeks, as far as can be said; `unknown` before there are enough days. */
  readonly trend: Trend;
}

export type Trend = 'unknown' | 'rising' | 'level' | 'falling';

/** What is worth a professional's look; see `watchOf`. */
export type Watch = 'colours' | 'pair' | 'falling';

export interface Growth {
  /** First and last day of a recorded sheet; absent where there is none. */
  readonly from?: Day;
  readonly to?: Day;
  readonly sheets: number;
  /** Days on which sheets were given. */
  readonly days: number;
  /** Results whose code this version cannot read; they are left out. */
  readonly unread: number;
  readonly skills: readonly SkillGrowth[];
  /** Pairs that were mixed up at least once in the last half year, the most telling first. */
  readonly pairs: readonly ConfusionRow[];
  readonly watch: readonly Watch[];
}

/** Pairs that were overcome do not stay in view for ever. */
const PAIRS_FOR_DAYS = 183;
/** A trend is told over so many days: common practice, no source. */
const TREND_DAYS = 42;
const LEAST_TREND_DAYS = 14;
/** A change must be so many standard deviations of the difference, and so many logits. */
const TREND_SDS = 1.64;
const FALL_LOGITS = 1;

/** What the records of a child say on the evening of `day`. */
export function growthOf(planner: Planner, known: Known, day: Day, wishes: Wishes): Growth {
  const setting = settingFor(planner, known, addDays(day, 1), wishes);
  const { given, unread } = setting.standing;
  const skills = SKILLS.map((skill) => skillGrowth(skill, known, setting));
  const recent = given.filter(({ result }) => result.day > addDays(day, -PAIRS_FOR_DAYS));
  const pairs = confusionsIn(looksOf(recent)).filter(({ times }) => times > 0);
  const days = [...new Set(given.map(({ result }) => result.day))];
  const [from, to] = [days[0], days.at(-1)];
  return {
    ...(from === undefined ? {} : { from }),
    ...(to === undefined ? {} : { to }),
    sheets: given.length,
    days: days.length,
    unread,
    skills,
    pairs,
    watch: watchOf(skills, pairs),
  };
}

type GrowthSetting = ReturnType<typeof settingFor>;

function skillGrowth(skill: Skill, { child }: Known, setting: GrowthSetting): SkillGrowth {
  const { standing, bounds, book } = setting;
  const own = standing.given.filter(({ facts }) => facts.skill === skill);
  const course = courseOf(skill, standing, child.birthMonth);
  const met = new Set(own.map(({ facts }) => facts.activity));
  const fitting = ACTIVITY_IDS.filter((id) => met.has(id)).map((activity) => {
    const [content] = contentsFor(activityOf(activity), bounds);
    const asked = content === undefined ? {} : { content };
    const [step = 1] = nearestSteps({ standing, book }, activity, asked);
    return { activity, step, steps: book.count(activity, asked) };
  });
  return { skill, sheets: own.length, course, fitting, trend: trendOf(course) };
}

/** The ability after each day's sheets, each day once. */
function courseOf(
  skill: Skill,
  { given, day }: Standing,
  birthMonth: string | undefined,
): readonly GrowthPoint[] {
  const first = given[0]?.result.day;
  if (first === undefined) return [];
  let belief = beginning(dayNumber(first), birthMonth === undefined ? {} : { birthMonth }, first);
  const points = new Map<Day, GrowthPoint>();
  for (const sheet of given) {
    belief = afterSheet(belief, sheet);
    if (belief.skills.includes(skill))
      points.set(sheet.result.day, pointOf(belief, skill, sheet.result.day));
  }
  const last = addDays(day, -1);
  if (points.size > 0) points.set(last, pointOf(onDay(belief, dayNumber(last)), skill, last));
  return [...points.values()];
}

function pointOf(belief: Belief, skill: Skill, day: Day): GrowthPoint {
  const ability = abilityOf(belief, skill);
  const [least, most] = ninetyPercent(ability);
  return { day, mean: ability.mean, least, most };
}

function trendOf(course: readonly GrowthPoint[]): Trend {
  const last = course.at(-1);
  const from = last && course.filter(({ day }) => day <= addDays(last.day, -TREND_DAYS)).at(-1);
  const start = from ?? course[0];
  if (!last || !start || dayNumber(last.day) - dayNumber(start.day) < LEAST_TREND_DAYS) {
    return 'unknown';
  }
  const change = last.mean - start.mean;
  const sd = Math.hypot(sdOf(last), sdOf(start)) * SHARED;
  if (Math.abs(change) < TREND_SDS * sd) return 'level';
  return change > 0 ? 'rising' : 'falling';
}

/** Two beliefs about one child share most of what they do not know; a half of it is taken to be their own. */
const SHARED = 0.5;
const NINETY = 1.6449;

function sdOf({ least, most }: GrowthPoint): number {
  return (most - least) / 2 / NINETY;
}

/**
 * Patterns of the kind that a professional should look at: two colours or another pair taken for each other more than
 * by chance, or a skill that has clearly fallen over weeks. None says why it is so.
 */
function watchOf(skills: readonly SkillGrowth[], pairs: readonly ConfusionRow[]): readonly Watch[] {
  const isColour = (name: string) => (COLOUR_NAMES as readonly string[]).includes(name);
  const shown = pairs.filter(({ isConfused }) => isConfused);
  const colours = shown.filter(({ pair }) => pair.every(isColour));
  const fallen = skills.some(({ trend, course }) => trend === 'falling' && hasFallen(course));
  return [
    ...(colours.length > 0 ? (['colours'] as const) : []),
    ...(shown.length > colours.length ? (['pair'] as const) : []),
    ...(fallen ? (['falling'] as const) : []),
  ];
}

function hasFallen(course: readonly GrowthPoint[]): boolean {
  const best = Math.max(...course.map(({ mean }) => mean));
  return best - (course.at(-1)?.mean ?? best) >= FALL_LOGITS;
}
