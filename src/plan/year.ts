// A whole year for one child, planned ahead of all records: week by week, varied, for what is believed on its first day.
import { type ActivityId, activityOf, SKILLS, type Skill } from '../activities/index.ts';
import { newBelief } from '../learner/index.ts';
import type { Day } from '../records/index.ts';
import type { Foreseen, Suggestion } from './course.ts';
import { FEWEST_SHEETS, planDay } from './day-plan.ts';
import { addDays, dayNumber, mondayOf } from './days.ts';
import { type Known, type Planner, settingAt, type Wishes } from './planner.ts';
import { rungFor } from './rung-choice.ts';
import { type Standing, standingOn } from './standing.ts';
import { contentsFor } from './suits.ts';
import { givenBefore } from './today.ts';

export interface YearWishes extends Omit<Wishes, 'stock'> {
  /** The first week is the one of this day. */
  readonly from: Day;
  /** 1 to `LONGEST_YEAR`. */
  readonly weeks: number;
  /** Sheets in each of them, 1 to `MOST_SHEETS_A_WEEK`. */
  readonly sheets: number;
  /** Mean of the ability to begin with, in logits, over what the month of birth lets expect. */
  readonly ability?: number;
}

export interface YearWeek {
  /** 1 upward. */
  readonly week: number;
  readonly sheets: readonly { readonly day: Day; readonly planned: Suggestion }[];
}

const DAYS_A_WEEK = 7;
/** Sheets are planned for Monday to Friday. */
const WORKDAYS = 5;
export const LONGEST_YEAR = 53;
export const MOST_SHEETS_A_WEEK = WORKDAYS * FEWEST_SHEETS;

/**
 * The weeks in order, each made when it is asked for. What is believed of the child stays as it is on the first day:
 * nothing is learnt from sheets that are not given yet, and nothing is forgotten. The age goes on, and with it what is
 * fair; activities and contents rest as if all before had been given. Each week hangs on those before alone, so that
 * its sheets stay when more weeks are asked for. Plans and sheets not done of earlier days are not regarded.
 */
export function* planYear(
  planner: Planner,
  known: Known,
  { from, weeks, sheets: wanted, ability, ...wishes }: YearWishes,
): Generator<YearWeek> {
  const first = mondayOf(from);
  const standing = standingToBegin(planner, known, first, ability);
  const foreseen: Foreseen[] = [];
  let last: readonly Pick<Foreseen, 'day' | 'activity'>[] = givenBefore(planner, known, first);
  for (let week = 1; week <= weeks; week++) {
    const monday = addDays(first, DAYS_A_WEEK * (week - 1));
    const sheets: YearWeek['sheets'][number][] = [];
    for (const [place, day] of daysOf(monday, wanted).entries()) {
      const setting = settingAt(planner, known.child, { ...standing, day }, wishes, 'year');
      const before = [...last, ...sheets.map(foreseenOf)];
      const plan = planDay(
        { ...setting, foreseen },
        { day, minutes: 0, before, standing: [], first: skillsLacking(sheets) },
      );
      const room = Math.min(FEWEST_SHEETS, wanted - FEWEST_SHEETS * place);
      sheets.push(...plan.slice(0, room).map((planned) => ({ day, planned })));
    }
    yield { week, sheets };
    const planned = sheets.map(foreseenOf);
    foreseen.push(...planned);
    last = planned.slice(-1);
  }
}

/** Measures, for the planner's book, what the year will ask of an activity as the child stands on its first day. */
export function measureForYear(
  planner: Planner,
  known: Known,
  { from, ability, ...wishes }: YearWishes,
  activity: ActivityId,
): void {
  const standing = standingToBegin(planner, known, mondayOf(from), ability);
  const setting = settingAt(planner, known.child, standing, wishes, 'year');
  for (const content of contentsFor(activityOf(activity), setting.bounds)) {
    rungFor(setting, activity, content);
  }
}

/** Without records, a child of a given ability stands there. */
function standingToBegin(
  planner: Planner,
  { child, results }: Known,
  day: Day,
  ability: number | undefined,
): Standing {
  const standing = standingOn(day, child, results, planner.read);
  if (ability === undefined) return standing;
  return { ...standing, belief: newBelief(dayNumber(day), ability) };
}

/** As many days as it takes, spread over the week. */
function daysOf(monday: Day, sheets: number): readonly Day[] {
  const count = Math.ceil(sheets / FEWEST_SHEETS);
  return Array.from({ length: count }, (_, place) =>
    addDays(monday, Math.floor((place * WORKDAYS) / count)),
  );
}

function skillsLacking(sheets: YearWeek['sheets']): ReadonlySet<Skill> {
  const had = new Set(sheets.map(({ planned }) => planned.facts.skill));
  return new Set(SKILLS.filter((skill) => !had.has(skill)));
}

function foreseenOf({ day, planned }: YearWeek['sheets'][number]): Foreseen {
  const { activity, content } = planned.facts;
  return { day, activity, content };
}
