// Making the plans of a week, child by child, so that the screen stays alive and can say how far it is.
import { useEffect, useRef, useState } from 'react';
import type { Skill } from '../../activities/index.ts';
import type { Child, Id } from '../../records/index.ts';
import { useGround } from '../children/use-ground.ts';
import { sentencesOf } from '../making/reply-form.ts';
import type { SheetCard, WeekCards } from '../planning/cards.ts';
import type { Planner } from '../planning/planner.ts';
import { ownEntries } from './own-entries.ts';
import type { CardsAsked } from './use-cards.ts';

export interface WeekWanted extends Omit<CardsAsked, 'children'> {
  readonly children: readonly Child[];
  readonly favoured: readonly Skill[];
}

export interface WeekRun {
  readonly child: Child;
  /** Children planned for so far. */
  readonly done: number;
  readonly total: number;
}

export interface WeekPlanState {
  /** Absent: nothing runs. */
  readonly run: WeekRun | undefined;
  /** Why no plan could be made, in words; empty where one could. */
  readonly objection: string;
  /** Answers the weeks of all children; none where it was stopped or could not be. */
  readonly plan: (wanted: WeekWanted) => Promise<readonly WeekCards[] | undefined>;
  readonly stop: () => void;
}

const codeOf = ({ code }: SheetCard) => code;

export function useWeekPlan(planner: Planner): WeekPlanState {
  const { entries = [], shelf } = useGround();
  const [run, setRun] = useState<WeekRun>();
  const [objection, setObjection] = useState('');
  /** The number of the run that is wanted; a later one, or stopping, ends those before. */
  const latest = useRef(0);
  useEffect(
    () => () => {
      latest.current += 1;
    },
    [],
  );
  const plan = async ({ children, ...wanted }: WeekWanted) => {
    latest.current += 1;
    const own = latest.current;
    setObjection('');
    const house = await planner.ask('stock', { entries, shelf });
    if (latest.current !== own) return undefined;
    const stock = house.ok ? house.value.stock?.left : undefined;
    const wishes = { ...wanted.wishes, ...(stock === undefined ? {} : { stock }) };
    const weeks: WeekCards[] = [];
    for (const [done, child] of children.entries()) {
      setRun({ child, done, total: children.length });
      const records = { entries: ownEntries(entries, child.id), shelf };
      const ids: readonly Id[] = [child.id];
      const taken = weeks.flatMap((week) => week.days.flatMap(({ sheets }) => sheets.map(codeOf)));
      const asked = { ...wanted, ...records, wishes, children: ids, taken };
      const reply = await planner.ask('week', asked);
      if (latest.current !== own) return undefined;
      if (!reply.ok) {
        setRun(undefined);
        setObjection(sentencesOf(reply.objections));
        return undefined;
      }
      weeks.push(...reply.value);
    }
    setRun(undefined);
    return weeks;
  };
  const stop = () => {
    latest.current += 1;
    setRun(undefined);
  };
  return { run, objection, plan, stop };
}
