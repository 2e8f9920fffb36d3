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
  riseOver,
} from '../learner/index.ts';
import { COLOUR_NAMES } from '../palette/index.ts';
import type { Day } from '../records/index.ts';
import { addDays, dayNumber } from './days.ts';
import { looksOf } from './looks.ts';
import { type Known, type Planner, settingFor, type Wishes } from './planner.ts';
import { nearestSteps } from './rung-choice.ts';
import { afterSheet, answersOf, beginning, type GivenSheet, type Standing } from './standing.ts';
import { contentsFor } from './suits.ts';

/** An ability on a day, with the ends of its 90 % interval; logits. */
export interface GrowthPoint {
  readonly day: Day;
  /** Sheets of the skill up to then. */
  readonly sheets: number;
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
  /** How it moved over the last three months; `unknown` before there are enough days, `unclear` where it may be either. */
  readonly trend: Trend;
  /** Whether it fell so much and so surely that a professional may look at it. */
  readonly hasFallen: boolean;
}

export type Trend = 'unknown' | 'rising' | 'unclear' | 'falling';

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
  /** Of all skills together: what one skill is too few answers for, all may show. */
  readonly trend: Trend;
  /** Pairs that were mixed up at least once in the last half year, the most telling first. */
  readonly pairs: readonly ConfusionRow[];
  readonly watch: readonly Watch[];
}

/** Pairs that were overcome do not stay in view for ever. */
const PAIRS_FOR_DAYS = 183;
/** A trend is told over so many days, from so many sheets: common practice, no source. */
const TREND_DAYS = 91;
const LEAST_TREND_DAYS = 14;
const LEAST_TREND_SHEETS = 4;
/** A rise or fall is told where it is so many standard deviations: nine in ten. */
const TREND_SDS = 1.64;
/** A professional may look at a fall of so many logits and standard deviations (98 in 100); common practice, no source. */
const FALL_LOGITS = 1;
const FALL_SDS = 2.33;

interface TrendFacts {
  readonly trend: Trend;
  readonly hasFallen: boolean;
}
const UNKNOWN: TrendFacts = { trend: 'unknown', hasFallen: false };

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
    trend: trendOf(given, setting.standing).trend,
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
  return { skill, sheets: own.length, course, fitting, ...trendOf(own, standing) };
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
  let sheets = 0;
  for (const sheet of given) {
    if (sheet.facts.skill === skill) sheets++;
    belief = afterSheet(belief, sheet);
    if (belief.skills.includes(skill))
      points.set(sheet.result.day, pointOf(belief, skill, sheet.result.day, sheets));
  }
  const last = addDays(day, -1);
  if (points.size > 0)
    points.set(last, pointOf(onDay(belief, dayNumber(last)), skill, last, sheets));
  return [...points.values()];
}

function pointOf(belief: Belief, skill: Skill, day: Day, sheets: number): GrowthPoint {
  const ability = abilityOf(belief, skill);
  const [least, most] = ninetyPercent(ability);
  return { day, sheets, mean: ability.mean, least, most };
}

/** Over the last weeks of sheets, each against what is believed of its skill now. */
function trendOf(own: readonly GivenSheet[], { belief }: Standing): TrendFacts {
  const last = own.at(-1)?.result.day;
  const recent = own.filter(({ result }) => last && result.day >= addDays(last, -TREND_DAYS));
  const from = recent[0]?.result.day;
  if (!last || !from || dayNumber(last) - dayNumber(from) < LEAST_TREND_DAYS) return UNKNOWN;
  const sheets = recent.map(({ result, facts }) => ({
    day: dayNumber(result.day),
    answers: answersOf(result, facts).map((answer) => ({
      ...answer,
      logits: answer.logits - abilityOf(belief, facts.skill).mean,
    })),
  }));
  const rise = riseOver(sheets);
  if (!rise || recent.length < LEAST_TREND_SHEETS) return UNKNOWN;
  const { mean, sd } = rise;
  const isClear = Math.abs(mean) > TREND_SDS * sd;
  const trend = isClear ? (mean > 0 ? 'rising' : 'falling') : 'unclear';
  return { trend, hasFallen: mean < -FALL_LOGITS && mean < -FALL_SDS * sd };
}

/**
 * Patterns of the kind that a professional should look at: two colours or another pair taken for each other more than
 * by chance, or a skill that has clearly fallen over weeks. None says why it is so.
 */
function watchOf(skills: readonly SkillGrowth[], pairs: readonly ConfusionRow[]): readonly Watch[] {
  const isColour = (name: string) => (COLOUR_NAMES as readonly string[]).includes(name);
  const shown = pairs.filter(({ isConfused }) => isConfused);
  const colours = shown.filter(({ pair }) => pair.every(isColour));
  return [
    ...(colours.length > 0 ? (['colours'] as const) : []),
    ...(shown.length > colours.length ? (['pair'] as const) : []),
    ...(skills.some(({ hasFallen }) => hasFallen) ? (['falling'] as const) : []),
  ];
}
