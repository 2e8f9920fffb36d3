// Whose week is in view, and which: the children, the days, and what is wished of it.
import { useMemo } from 'react';
import { z } from 'zod';
import { addDays } from '../../plan/index.ts';
import type { Child, Day, Id, View } from '../../records/index.ts';
import { useGround } from '../children/use-ground.ts';
import { useKept } from '../offline/kept.ts';
import type { PlanWishes } from '../planning/cards.ts';
import { usePlanWishes } from '../planning/wishes.ts';
import { DAYS_A_WEEK, daysNamed, weekToPlan } from './week-days.ts';
import { useWeekWishes, type WeekWishes } from './wishes.ts';

const idsSchema = z.array(z.string());
const mondaySchema = z.iso.date();

export interface WeekInView {
  readonly today: Day;
  readonly monday: Day;
  readonly turnTo: (monday: Day) => void;
  /** Children whose week is in view, in the order of the records. */
  readonly chosen: readonly Child[];
  readonly choose: (ids: readonly Id[]) => void;
  readonly wishes: PlanWishes;
  readonly setWishes: (wishes: PlanWishes) => void;
  readonly weekWishes: WeekWishes;
  readonly setWeekWishes: (wishes: WeekWishes) => void;
  /** The days in view, in order: those wished for, and those with a plan. */
  readonly columns: readonly Day[];
  /** The days that a plan can be made for. */
  readonly planDays: readonly Day[];
  /** Those of the chosen children of whom a plan is kept for one of the days in view. */
  readonly planned: readonly Child[];
  /** Those of the chosen children who have no plan for any of the days to come. */
  readonly lacking: readonly Child[];
}

/** `child` is the one in view when the screen is gone to. */
export function useWeek(view: View, child: Child, today: Day): WeekInView {
  const [chosen, choose] = useChosen(child);
  const [wishes, setWishes] = usePlanWishes();
  const [weekWishes, setWeekWishes] = useWeekWishes();
  const [monday, turnTo] = useKept('week in view', (left) =>
    readMonday(left, weekToPlan(today, weekWishes.weekdays)),
  );
  const wanted = daysNamed(monday, weekWishes.weekdays);
  const columns = useDays([...wanted, ...plannedDays(view, chosen, monday)]);
  const ahead = columns.filter((day) => day >= today);
  return {
    today,
    monday,
    turnTo,
    chosen,
    choose,
    wishes,
    setWishes,
    weekWishes,
    setWeekWishes,
    columns,
    planDays: wanted.filter((day) => day >= today),
    planned: chosen.filter((each) => hasPlan(view, each, columns)),
    lacking: chosen.filter((each) => !hasPlan(view, each, ahead)),
  };
}

/** A Monday that was left, where it is one. */
function readMonday(left: unknown, otherwise: Day): Day {
  const read = mondaySchema.safeParse(left);
  return read.success ? read.data : otherwise;
}

/** The children of the week; one alone is the child of all screens. */
function useChosen(child: Child): [readonly Child[], (ids: readonly Id[]) => void] {
  const { children, choose } = useGround();
  const [ids, setIds] = useKept<readonly Id[]>('children of the week', (left) => {
    const read = idsSchema.safeParse(left);
    return read.success ? read.data : [child.id];
  });
  const chosen = children.filter(({ id }) => ids.includes(id));
  return [
    chosen,
    (next) => {
      setIds(next);
      const [only] = next;
      if (only !== undefined && next.length === 1) choose(only);
    },
  ];
}

/** The days in order, each once; the same list as long as they are the same. */
export function useDays(days: readonly Day[]): readonly Day[] {
  const all = [...new Set(days)].sort().join(' ');
  return useMemo(() => (all === '' ? [] : all.split(' ')), [all]);
}

/** Days of a week on which something is planned for one of the children. */
function plannedDays({ plans }: View, children: readonly Child[], monday: Day): readonly Day[] {
  const end = addDays(monday, DAYS_A_WEEK);
  return children.flatMap(({ id }) =>
    [...(plans.get(id) ?? [])].flatMap(([day, { sheets }]) =>
      day >= monday && day < end && sheets.length > 0 ? day : [],
    ),
  );
}

function hasPlan({ plans }: View, { id }: Child, days: readonly Day[]): boolean {
  return days.some((day) => (plans.get(id)?.get(day)?.sheets.length ?? 0) > 0);
}
