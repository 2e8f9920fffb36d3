// A week for one child: short plans for its days, varied, and what was not done first.
import type { ActivityId, Skill } from '../activities/index.ts';
import { SKILLS } from '../activities/index.ts';
import type { Day } from '../records/index.ts';
import type { Suggestion } from './course.ts';
import { planDay } from './day-plan.ts';
import { type Known, type Planner, settingFor, type Wishes } from './planner.ts';
import { movedOn, toSuggestions } from './today.ts';

export interface WeekWishes extends Wishes {
  /** The days to plan for, in order. */
  readonly days: readonly Day[];
  /** Minutes on each of them. */
  readonly minutes: number;
  readonly favoured?: ReadonlySet<Skill>;
}

/**
 * Sheets for each day, in order. No activity comes twice in a row, from one day to the next either; each skill comes
 * at least once where there are sheets enough and something of it suits. What was not done lately leads the first day.
 */
export function planWeek(
  planner: Planner,
  known: Known,
  { days, minutes, favoured, ...wishes }: WeekWishes,
): ReadonlyMap<Day, readonly Suggestion[]> {
  const week = new Map<Day, readonly Suggestion[]>();
  const before: { day: Day; activity: ActivityId }[] = [];
  const had = new Set<Skill>();
  for (const [place, day] of days.entries()) {
    const setting = settingFor(planner, known, day, wishes, 'week');
    const moved = place === 0 ? toSuggestions(planner, setting.standing, movedOn(known, day)) : [];
    const first = new Set(SKILLS.filter((skill) => !had.has(skill)));
    const sheets = planDay(setting, {
      day,
      minutes,
      before,
      standing: moved,
      first,
      ...(favoured === undefined ? {} : { favoured }),
    });
    week.set(day, sheets);
    for (const { facts } of sheets) {
      had.add(facts.skill);
      before.push({ day, activity: facts.activity });
    }
  }
  return week;
}
