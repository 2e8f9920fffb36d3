// The plan of a day as the planner has it: asked again whenever records or wishes change, the last one kept meanwhile.
import { useEffect, useRef, useState } from 'react';
import { sentencesOf } from '../making/reply-form.ts';
import type { DayCards, TodayAsked } from '../planning/cards.ts';
import type { Planner } from '../planning/planner.ts';
import { capital } from '../words.ts';

export interface DayState {
  /** Absent until the first plan is there. */
  readonly cards?: DayCards;
  /** Why there is no plan, in words; empty where all is well. */
  readonly objection: string;
  readonly isPlanning: boolean;
}

export function useDay(planner: Planner, asked: TodayAsked): DayState {
  const { entries, shelf, child, day, wishes } = asked;
  const [state, setState] = useState<DayState>({ objection: '', isPlanning: true });
  const before = useRef<Promise<void>>(Promise.resolve());
  useEffect(() => {
    let isWanted = true;
    setState((last) => ({ ...last, isPlanning: true }));
    // One at a time: what was asked for and changed again meanwhile is never planned.
    before.current = before.current.then(async () => {
      if (!isWanted) return;
      const reply = await planner.ask('today', { entries, shelf, child, day, wishes });
      if (!isWanted) return;
      setState((last) =>
        reply.ok
          ? { cards: reply.value, objection: '', isPlanning: false }
          : { ...last, objection: objectionIn(reply), isPlanning: false },
      );
    });
    return () => {
      isWanted = false;
    };
  }, [planner, entries, shelf, child, day, wishes]);
  return state;
}

function objectionIn({ objections }: { objections: readonly { sentence: string }[] }): string {
  return capital(sentencesOf(objections));
}
