// How the child in view is getting on, as the planner reckons it from the records; anew when they change.
import { useEffect, useState } from 'react';
import type { Entry, Id, Shelf } from '../../records/index.ts';
import type { Reply } from '../making/protocol.ts';
import type { GrowthView } from '../planning/cards.ts';
import type { Planner } from '../planning/planner.ts';
import { USUAL_WISHES } from '../planning/wishes.ts';

export interface GrowthAsked {
  readonly entries: readonly Entry[];
  readonly shelf: Shelf;
  readonly child: Id;
  readonly day: string;
}

/** Absent until the first reply has come. */
export function useGrowth(
  planner: Planner,
  { entries, shelf, child, day }: GrowthAsked,
): Reply<GrowthView> | undefined {
  const [reply, setReply] = useState<Reply<GrowthView>>();
  useEffect(() => {
    let isWanted = true;
    // Nothing said of growth hangs on what a person wishes of plans.
    const asked = { entries, shelf, child, day, wishes: USUAL_WISHES };
    void planner.ask('growth', asked).then((answer) => {
      if (isWanted) setReply(answer);
    });
    return () => {
      isWanted = false;
    };
  }, [planner, entries, shelf, child, day]);
  return reply;
}
