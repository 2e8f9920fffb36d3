// What sheets take of the house, reckoned by the worker: the last answer stays while the next is on its way.
import { useEffect, useRef, useState } from 'react';
import type { Use } from '../../supplies/index.ts';
import type { UsesAsked } from '../planning/cards.ts';
import type { Planner } from '../planning/planner.ts';

/** Absent as long as nothing is asked for or can be told. */
export function useUses(
  planner: Planner,
  asked: UsesAsked | undefined,
): readonly Use[] | undefined {
  const [uses, setUses] = useState<readonly Use[]>();
  const before = useRef<Promise<void>>(Promise.resolve());
  const key = JSON.stringify(asked);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the text says whether it asks for anything else
  useEffect(() => {
    if (asked === undefined) {
      setUses(undefined);
      return;
    }
    let isWanted = true;
    // One at a time: what was asked for and changed again meanwhile is never reckoned.
    before.current = before.current.then(async () => {
      if (!isWanted) return;
      const reply = await planner.ask('uses', asked);
      if (isWanted) setUses(reply.ok ? reply.value : undefined);
    });
    return () => {
      isWanted = false;
    };
  }, [planner, key]);
  return uses;
}
