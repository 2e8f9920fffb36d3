// How a child is getting on: each skill over time with how sure that is, and what is mixed up with what.
import { ACTIVITY_IDS, type ActivityId, SKILLS, type Skill } from '../activities/index.ts';
import { colourName } from '../figures/index.ts';
import type { Language } from '../languages/index.ts';
import { abilityOf, type ConfusionRow, confusionsIn, riseOver } from '../learner/index.ts';
import { COLOUR_NAMES } from '../palette/index.ts';
import type { Day } from '../records/index.ts';
import { addDays, dayNumber } from './days.ts';
import { type CourseChart, chartOf } from './growth-chart.ts';
import {
  type Believed,
  believedAfter,
  courseOf,
  type FittingStep,
  fittingStep,
  type GrowthPoint,
  type GrowthSetting,
} from './growth-course.ts';
import { looksOf } from './looks.ts';
import { type Known, type Planner, settingFor, type Wishes } from './planner.ts';
import { answersOf, type GivenSheet, type Standing } from './standing.ts';

export interface SkillGrowth {
  readonly skill: Skill;
  /** Sheets recorded of the skill. */
  readonly sheets: number;
  /** After each day on which a sheet of any skill was given, from the first of this one on; then today. */
  readonly course: readonly GrowthPoint[];
  /** The course drawn, with the activity given most often as its measure; absent before there are two days. */
  readonly chart?: CourseChart;
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

/** What the records of a child say on the evening of `day`, with pairs named in `language`. */
export function growthOf(
  planner: Planner,
  known: Known,
  day: Day,
  wishes: Wishes,
  language: Language = 'en',
): Growth {
  const setting = settingFor(planner, known, addDays(day, 1), wishes);
  const { given, unread } = setting.standing;
  const believed = believedAfter(setting.standing, known.child.birthMonth);
  const skills = SKILLS.map((skill) => skillGrowth(skill, believed, setting));
  const recent = given.filter(({ result }) => result.day > addDays(day, -PAIRS_FOR_DAYS));
  const pairs = confusionsIn(looksOf(recent, language)).filter(({ times }) => times > 0);
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
    watch: watchOf(skills, pairs, language),
  };
}

function skillGrowth(
  skill: Skill,
  believed: readonly Believed[],
  setting: GrowthSetting,
): SkillGrowth {
  const { standing } = setting;
  const own = standing.given.filter(({ facts }) => facts.skill === skill);
  const course = courseOf(skill, believed, standing);
  const times = timesGiven(own);
  const now = abilityOf(standing.belief, skill);
  const fitting = [...times.keys()].map((activity) => fittingStep(activity, now, setting));
  const [measure] = [...times].sort(([, one], [, other]) => other - one);
  const from = standing.given[0]?.result.day;
  const chart = measure && from ? chartOf(course, measure[0], from, setting) : undefined;
  return {
    skill,
    sheets: own.length,
    course,
    ...(chart === undefined ? {} : { chart }),
    fitting,
    ...trendOf(own, standing),
  };
}

/** How often each activity was given, of those that were, in the order of the activities. */
function timesGiven(own: readonly GivenSheet[]): ReadonlyMap<ActivityId, number> {
  const times = ACTIVITY_IDS.map(
    (id) => [id, own.filter(({ facts }) => facts.activity === id).length] as const,
  );
  return new Map(times.filter(([, count]) => count > 0));
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
function watchOf(
  skills: readonly SkillGrowth[],
  pairs: readonly ConfusionRow[],
  language: Language,
): readonly Watch[] {
  const colourNames = COLOUR_NAMES.map((colour) => colourName(colour, language));
  const isColour = (name: string) => colourNames.includes(name);
  const shown = pairs.filter(({ isConfused }) => isConfused);
  const colours = shown.filter(({ pair }) => pair.every(isColour));
  return [
    ...(colours.length > 0 ? (['colours'] as const) : []),
    ...(shown.length > colours.length ? (['pair'] as const) : []),
    ...(skills.some(({ hasFallen }) => hasFallen) ? (['falling'] as const) : []),
  ];
}
