// The course of a skill as a drawing: places in a square of side 1, for a screen and for paper alike.
import type { ActivityId } from '../activities/index.ts';
import { logitsFor } from '../learner/index.ts';
import type { Day } from '../records/index.ts';
import { dayNumber, mondayOf } from './days.ts';
import {
  askedOf,
  type FittingStep,
  fittingStep,
  type GrowthPoint,
  type GrowthSetting,
} from './growth-course.ts';

/** A day of the course: across from the first day on record, 0, to today, 1; up from easier, 0, to harder, 1. */
export interface ChartPoint {
  readonly across: number;
  readonly mean: number;
  readonly least: number;
  readonly most: number;
}

/** How high a step lies. */
export interface ChartGuide {
  readonly step: number;
  readonly up: number;
}

/** What fitted at the end of a week with records, or today. */
export interface ChartWeek extends Omit<FittingStep, 'activity'> {
  readonly day: Day;
  readonly sheets: number;
}

export interface CourseChart {
  /** The days at both ends. */
  readonly from: Day;
  readonly to: Day;
  readonly points: readonly ChartPoint[];
  /** The activity whose steps are the guides. */
  readonly activity: ActivityId;
  /** Upward, few enough to be read. */
  readonly guides: readonly ChartGuide[];
  /** The course in steps of that activity, week by week. */
  readonly weeks: readonly ChartWeek[];
}

/** Blank above and below, as a share of the height. */
const BLANK = 0.08;
/** Guides are at least so far apart, and so far from the ends, as a share of the height (by eye). */
const GUIDE_GAP = 0.2;
const GUIDE_INSET = 0.15;

/** The drawing of a course from the first day on record; none before sheets of the skill are recorded on a second day. */
export function chartOf(
  course: readonly GrowthPoint[],
  activity: ActivityId,
  from: Day,
  setting: GrowthSetting,
): CourseChart | undefined {
  const to = course.at(-1)?.day;
  const first = course[0]?.day;
  const counts = new Set(course.map(({ sheets }) => sheets).filter((sheets) => sheets > 0));
  if (first === undefined || to === undefined || counts.size < 2) return undefined;
  const upOf = scaleOf(course);
  const days = dayNumber(to) - dayNumber(from);
  return {
    from,
    to,
    points: course.map(({ day, mean, least, most }) => ({
      across: (dayNumber(day) - dayNumber(from)) / days,
      mean: upOf(mean),
      least: upOf(least),
      most: upOf(most),
    })),
    activity,
    guides: guidesOf(activity, upOf, setting),
    weeks: weeksOf(course, activity, setting),
  };
}

/** From logits to shares of the height. */
function scaleOf(course: readonly GrowthPoint[]): (logits: number) => number {
  const bottom = Math.min(...course.map(({ least }) => least));
  const top = Math.max(...course.map(({ most }) => most));
  return (logits) => BLANK + ((1 - 2 * BLANK) * (logits - bottom)) / (top - bottom);
}

/** Where an ability that is surely known would just be enough for each step. */
function guidesOf(
  activity: ActivityId,
  upOf: (logits: number) => number,
  setting: GrowthSetting,
): readonly ChartGuide[] {
  const asked = askedOf(activity, setting);
  const guides: ChartGuide[] = [];
  for (let step = 1; step <= setting.book.count(activity, asked); step++) {
    const { logits, chance } = setting.book.rung(activity, asked, step);
    const up = upOf(logits - logitsFor({ mean: 0, sd: 0 }, chance));
    if (up > 1 - GUIDE_INSET) break;
    if (up >= Math.max(GUIDE_INSET, (guides.at(-1)?.up ?? -1) + GUIDE_GAP))
      guides.push({ step, up });
  }
  return guides;
}

/** The last point of each week. */
function weeksOf(
  course: readonly GrowthPoint[],
  activity: ActivityId,
  setting: GrowthSetting,
): readonly ChartWeek[] {
  const last = new Map(course.map((point) => [mondayOf(point.day), point]));
  return [...last.values()].map((point) => {
    const { activity: _activity, ...fitting } = fittingStep(activity, point, setting);
    return { day: point.day, sheets: point.sheets, ...fitting };
  });
}
