// Invented records for the tests of plans: children who answer by a true ability, given what is planned for them.
import { type Random, randomFrom } from '../base/index.ts';
import { rightProbability } from '../learner/index.ts';
import type { Child, Day, PlannedSheet, ResultInView } from '../records/index.ts';
import { DEFAULT_PAGE, DEFAULT_PRINT } from '../sheets/index.ts';
import type { Suggestion } from './course.ts';
import { addDays } from './days.ts';
import type { Known, Planner, Wishes } from './planner.ts';
import { planToday } from './today.ts';

export const WISHES: Wishes = { page: DEFAULT_PAGE, print: DEFAULT_PRINT };
export const MINUTES = 10;
/** A Monday. */
export const START: Day = '2026-09-07';

/** Every record was made on the day that it is about. */
export const dayAtNever = (): Day => '0000-00-00';

export function newKnown(facts: Omit<Child, 'id' | 'nickname'> = {}, id = 'a-child'): Known {
  return { child: { id, nickname: 'Fern', ...facts }, results: [], plans: new Map() };
}

/** The result of a sheet for a child of an ability, in logits. */
export function resultOf(
  { facts }: Pick<Suggestion, 'facts'>,
  child: string,
  day: Day,
  right: (task: number) => boolean,
): ResultInView {
  return {
    id: `${day} ${facts.code}`,
    at: 0,
    kind: 'result',
    child,
    code: facts.code,
    day,
    tasks: facts.tasks.map((_, task) => ({ outcome: right(task) ? 'right' : 'not-yet' })),
    alsoRecorded: [],
  };
}

export function withResults(known: Known, results: readonly ResultInView[]): Known {
  return { ...known, results: [...known.results, ...results] };
}

export function withPlan(known: Known, day: Day, sheets: readonly PlannedSheet[], at = 0): Known {
  const plan = { id: `plan ${day}`, at, kind: 'plan', child: known.child.id, day, sheets } as const;
  return { ...known, plans: new Map([...known.plans, [day, plan]]) };
}

/** The child after so many days, every other day one, on which all that is planned is done. */
export function afterDays(
  planner: Planner,
  known: Known,
  days: number,
  ability: (day: number) => number,
  random: Random = randomFrom(days),
): Known {
  let now = known;
  for (let number = 0; number < days; number++) {
    const day = addDays(START, 2 * number);
    const plan = planToday(planner, now, { ...WISHES, day, minutes: MINUTES }, dayAtNever);
    const results = plan.map((sheet) =>
      resultOf(sheet, known.child.id, day, (task) => {
        const asked = sheet.facts.tasks[task];
        if (!asked) return false;
        return random.int(0, 999) / 1000 < rightProbability(ability(number), asked);
      }),
    );
    now = withResults(now, results);
  }
  return now;
}

/** The first day after `afterDays`. */
export function dayAfter(days: number): Day {
  return addDays(START, 2 * days);
}
