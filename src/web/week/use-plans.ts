// What is planned in the week in view, and changes to it, each kept at once.
import type { Child, Id } from '../../records/index.ts';
import { holdWhile } from '../offline/holds.ts';
import { openOf } from '../planning/planned.ts';
import type { Planner } from '../planning/planner.ts';
import { capital } from '../words.ts';
import { type Change, changed, daysChanged, draftsOf, type PlannedDay } from './moves.ts';
import { type CardsByChild, useCards } from './use-cards.ts';
import { type KeepingState, useKeeping } from './use-keeping.ts';
import { useDays, type WeekInView } from './use-week.ts';
import { useWeekPlan, type WeekPlanState } from './use-week-plan.ts';
import { words } from './words.ts';

export interface Plans {
  readonly cards: CardsByChild;
  /** Why plans cannot be read or made, in words; empty where they can. */
  readonly objection: string;
  readonly keeping: KeepingState;
  readonly making: WeekPlanState;
  /** Plans the days to come for the children anew. */
  readonly planFor: (children: readonly Child[]) => Promise<void>;
  readonly change: (child: Id, change: Change) => Promise<void>;
}

export function usePlans(planner: Planner, week: WeekInView): Plans {
  const { today, chosen, columns, planDays, wishes, weekWishes } = week;
  // Today is known even where another week is in view: what was not done may be moved there.
  const days = useDays([...columns, today]);
  const ids = chosen.map(({ id }) => id);
  const { cards, objection, show } = useCards(planner, { children: ids, days, today, wishes });
  const keeping = useKeeping();
  const making = useWeekPlan(planner);
  const planFor = async (children: readonly Child[]) => {
    const { favoured } = weekWishes;
    const made = await making.plan({ children, days: planDays, today, wishes, favoured });
    if (made === undefined) return;
    for (const { child, days: planned } of made) {
      const others = (cards.get(child) ?? []).filter(({ day }) => !planDays.includes(day));
      show(child, [...others, ...planned].sort(byDay));
    }
    const sheets = made.flatMap((each) => each.days).flatMap(openOf);
    await keeping.keep(
      made.flatMap((each) => draftsOf(each.child, each.days)),
      words.planned(
        children.map(({ nickname }) => nickname),
        sheets.length,
      ),
    );
  };
  const change = async (child: Id, what: Change) => {
    const before = cards.get(child) ?? [];
    const after = changed(before, what, today);
    const drafts = draftsOf(child, daysChanged(before, after));
    if (drafts.length === 0) return;
    show(child, after);
    await keeping.keep(drafts, changeWords(what, before));
  };
  return {
    ...{ cards, objection: objection || making.objection, keeping, making, change },
    planFor: (children) => holdWhile(planFor(children)),
  };
}

function byDay(one: PlannedDay, other: PlannedDay): number {
  return Number(one.day > other.day) - Number(one.day < other.day);
}

function changeWords(change: Change, before: readonly PlannedDay[]): string {
  const sheets = before.flatMap(({ sheets }) => sheets);
  const sheet = capital(sheets.find(({ code }) => code === change.code)?.name ?? '');
  if (change.kind === 'take-out') return words.takenOut(sheet, change.from);
  if (change.from === change.to) return words.movedInDay(sheet, (change.place ?? 0) + 1);
  return words.moved(sheet, change.to);
}
