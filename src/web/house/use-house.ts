// What is in the house, for Make: looked for once the first page lies on the table, so that it waits for nothing.
import { useEffect, useState } from 'react';
import type { Planner } from '../planning/planner.ts';
import { type House, UNKNOWN_HOUSE } from './house.ts';

export function useHouse(planner: Planner, isWanted: boolean): House {
  const [house, setHouse] = useState<House>(UNKNOWN_HOUSE);
  useEffect(() => {
    if (!isWanted) return;
    let isThere = true;
    let end = () => {};
    import('./watch-house.ts').then(
      ({ watchHouse }) => {
        if (isThere) end = watchHouse(planner, setHouse);
      },
      // Offline after an update, say: then it is as if nothing had been counted.
      () => setHouse({ isKnown: true }),
    );
    return () => {
      isThere = false;
      end();
    };
  }, [planner, isWanted]);
  return house;
}
