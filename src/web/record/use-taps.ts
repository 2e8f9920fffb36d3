// What can be tapped on the picture of a sheet, asked of the planner.
import { useEffect, useState } from 'react';
import type { TapTask } from '../planning/cards.ts';
import type { Planner } from '../planning/planner.ts';

const NONE: readonly TapTask[] = [];

/** By task; none until it is known, or where nothing can be tapped. */
export function useTaps(planner: Planner, code: string | undefined): readonly TapTask[] {
  const [told, setTold] = useState({ code: '', taps: NONE });
  useEffect(() => {
    if (code === undefined) return undefined;
    let isWanted = true;
    void planner.ask('taps', { code }).then((reply) => {
      if (isWanted) setTold({ code, taps: reply.ok ? reply.value : NONE });
    });
    return () => {
      isWanted = false;
    };
  }, [planner, code]);
  return told.code === code ? told.taps : NONE;
}
