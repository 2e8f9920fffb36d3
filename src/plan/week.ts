// A week for one child: short plans for its days, varied, and what was not done first.
import type { ActivityId, Skill } from '../activities/index.ts';
import { SKILLS } from '../activities/index.ts';
import type { Day, PlannedSheet } from '../records/index.ts';
import type { Suggestion } from './course.ts';
import { after, planDay } from './day-plan.ts';
import { type Known, type Planner, settingFor, type Wishes } from './planner.ts';
import { givenBefore, movedOn, toSuggestions } from './today.ts';

export interface WeekWishes extends Wishes {
  /** The days to plan for, in order. */
  readonly days: readonly Day[];
  /** Minutes on each of them. */
  readonly minutes: number;
  readonly favoured?: ReadonlySet<Skill>;
  /** The day on which the plan is made; absent: the first of the days. */
  readonly today?: Day;
}

/**
 * Sheets for each day, in order. No activity comes twice in a row, from one day to the next either; each skill comes
 * at least once where there are sheets enough and something of it suits. What is done already on one of the days stays
 * there; what was not done before `today` leads the first day.
 */
export function planWeek(
  planner: Planner,
  known: Known,
  { days, minutes, favoured, today = days[0], ...wishes }: WeekWishes,
): ReadonlyMap<Day, readonly Suggestion[]> {
  const week = new Map<Day, readonly Suggestion[]>();
  const [start] = days;
  if (start === undefined || today === undefined) return week;
  const undone = movedOn(withoutPlans(known, days), today);
  const before: { day: Day; activity: ActivityId }[] = [
    ...lastPlanned(planner, known, today, start),
  ];
  const had = new Set<Skill>();
  let left: Wishes = wishes;
  for (const [place, day] of days.entries()) {
    const setting = settingFor(planner, known, day, left, 'week');
    const done = doneOn(known, day);
    const moved = place === 0 ? undone.filter(({ code }) => !isAmong(done, code)) : [];
    const first = new Set(SKILLS.filter((skill) => !had.has(skill)));
    const sheets = planDay(setting, {
      day,
      minutes,
      before,
      standing: toSuggestions(planner, setting.standing, [...done, ...moved]),
      first,
      ...(favoured === undefined ? {} : { favoured }),
    });
    week.set(day, sheets);
    left = after(left, sheets);
    for (const { facts } of sheets) {
      had.add(facts.skill);
      before.push({ day, activity: facts.activity });
    }
  }
  return week;
}

/** The child as it is known without what is planned for the days: they are planned anew. */
function withoutPlans(known: Known, days: readonly Day[]): Known {
  return { ...known, plans: new Map([...known.plans].filter(([day]) => !days.includes(day))) };
}

/** What stands last in the plans from `today` on that stay, else what was given last. */
function lastPlanned(planner: Planner, known: Known, today: Day, start: Day) {
  const codes = [...known.plans]
    .filter(([day]) => day >= today && day < start)
    .flatMap(([day, { sheets }]) => sheets.map(({ code }) => ({ day, code })));
  const last = codes.at(-1);
  const facts = last && planner.read(last.code);
  return facts ? [{ day: last.day, activity: facts.activity }] : givenBefore(planner, known, start);
}

/** The sheets of a day's plan that are recorded already. */
function doneOn({ plans, results }: Known, day: Day): readonly PlannedSheet[] {
  const done = results.filter((result) => result.day >= day);
  return (plans.get(day)?.sheets ?? []).filter(({ code }) => isAmong(done, code));
}

function isAmong(sheets: readonly { readonly code: string }[], wanted: string): boolean {
  return sheets.some(({ code }) => code === wanted);
}
