// The sheets that are likely to be recorded next: those of today, and those of the last days that are not done.
import { useEffect, useState } from 'react';
import { leftUndone } from '../../plan/index.ts';
import type { Child, Day, Id, View } from '../../records/index.ts';
import { today } from '../children/today.ts';
import { useGround } from '../children/use-ground.ts';
import type { Planner } from '../planning/planner.ts';
import { usePlanWishes } from '../planning/wishes.ts';

const NONE: readonly string[] = [];

export interface Pick {
  readonly code: string;
  /** Whether it is recorded for today or later. */
  readonly isDone: boolean;
}

export interface Picks {
  readonly today: readonly Pick[];
  /** The latest first. */
  readonly earlier: readonly Pick[];
  /** Whether what is suggested for today is still on its way. */
  readonly isLooking: boolean;
}

export function usePicks(planner: Planner, { id }: Child): Picks {
  const { view } = useGround();
  const day = today();
  const kept = view?.plans
    .get(id)
    ?.get(day)
    ?.sheets.map(({ code }) => code);
  const suggested = useSuggested(planner, id, day, kept === undefined);
  const codes = kept ?? suggested ?? NONE;
  const isDone = (code: string) =>
    view?.results.get(id)?.some((result) => result.code === code && result.day >= day) ?? false;
  return {
    today: [...new Set(codes)].map((code) => ({ code, isDone: isDone(code) })),
    earlier: (view === undefined ? NONE : undoneBefore(view, id, day))
      .filter((code) => !codes.includes(code))
      .map((code) => ({ code, isDone: false })),
    isLooking: kept === undefined && suggested === undefined,
  };
}

function undoneBefore({ plans, results }: View, child: Id, day: Day): readonly string[] {
  const known = { plans: plans.get(child) ?? new Map(), results: results.get(child) ?? [] };
  return leftUndone(known, day);
}

/** The codes of what Today suggests for the day, where it is wanted; absent until they are known. */
function useSuggested(
  planner: Planner,
  child: Id,
  day: Day,
  isWanted: boolean,
): readonly string[] | undefined {
  const { entries, shelf } = useGround();
  const [wishes] = usePlanWishes();
  const [told, setTold] = useState<{ readonly of: string; readonly codes: readonly string[] }>();
  const of = `${child} ${day}`;
  useEffect(() => {
    if (!isWanted || entries === undefined) return undefined;
    let isLatest = true;
    void planner.ask('today', { entries, shelf, child, day, wishes }).then((reply) => {
      const codes = reply.ok ? reply.value.sheets.map(({ code }) => code) : NONE;
      if (isLatest) setTold({ of: `${child} ${day}`, codes });
    });
    return () => {
      isLatest = false;
    };
  }, [planner, entries, shelf, child, day, wishes, isWanted]);
  return told?.of === of ? told.codes : undefined;
}
