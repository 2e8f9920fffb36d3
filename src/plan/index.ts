// What to give to whom and when: today, the week, and how a child is getting on.
export type { Setting, Suggestion } from './course.ts';
export { FEWEST_SHEETS, MOST_SHEETS_A_DAY, minutesOf, USUAL_MINUTES } from './day-plan.ts';
export { addDays, dayNumber, dayOf, mondayOf, weekdayOf } from './days.ts';
export { type Growth, growthOf, type SkillGrowth, type Trend, type Watch } from './growth.ts';
export type { ChartGuide, ChartPoint, ChartWeek, CourseChart } from './growth-chart.ts';
export type { FittingStep, GrowthPoint } from './growth-course.ts';
export { looksOf } from './looks.ts';
export { pairNames } from './pair-names.ts';
export {
  type Known,
  knownOf,
  newPlanner,
  type Planner,
  settingFor,
  type Wishes,
} from './planner.ts';
export type {
  Report,
  ReportChart,
  ReportItems,
  ReportNotes,
  ReportPart,
  ReportRemarks,
  ReportSkill,
} from './report.ts';
export { reportPages } from './report-pages.ts';
export type { BookPages } from './rung-book.ts';
export { factsReader, type ReadFacts, type SheetFacts, type TaskFacts } from './sheet-facts.ts';
export { type GivenSheet, type Standing, standingOn } from './standing.ts';
export type { MaterialKind } from './suits.ts';
export {
  type DayAt,
  type DayWishes,
  leftUndone,
  movedOn,
  movesOnTo,
  notchedSheet,
  planAnew,
  planToday,
  somethingElse,
  standingToday,
  toSuggestions,
} from './today.ts';
export { planWeek, type WeekWishes } from './week.ts';

/** The invented group for trying out is fetched only when someone asks for it. */
export const loadDemo = () => import('./demo/demo-entries.ts');
export { abilityForStep } from './step-ability.ts';
export {
  LONGEST_YEAR,
  MOST_SHEETS_A_WEEK,
  measureForYear,
  planYear,
  type YearWeek,
  type YearWishes,
} from './year.ts';
