// What is in the house, for Make: looked for once the first page lies on the table, so that it waits for nothing.
import { useEffect, useState } from 'react';
import type { Planner } from '../planning/planner.ts';
import { RECORDS_DATABASE } from '../store/database-name.ts';
import { type House, UNCOUNTED_HOUSE, UNKNOWN_HOUSE } from './house.ts';

export function useHouse(planner: Planner, isWanted: boolean): House {
  const [house, setHouse] = useState<House>(UNKNOWN_HOUSE);
  useEffect(() => {
    if (!isWanted) return;
    let isThere = true;
    let end = () => {};
    const begin = async () => {
      if (!(await hasRecords())) return setHouse(UNCOUNTED_HOUSE);
      const { watchHouse } = await import('./watch-house.ts');
      if (isThere) end = watchHouse(planner, setHouse);
    };
    // Offline after an update, say: then it is as if nothing had been counted.
    begin().catch(() => setHouse(UNCOUNTED_HOUSE));
    return () => {
      isThere = false;
      end();
    };
  }, [planner, isWanted]);
  return house;
}

/** Whether anything was ever kept here: who only makes sheets gets no database. A browser that does not tell may have one. */
export async function hasRecords(): Promise<boolean> {
  if (typeof indexedDB.databases !== 'function') return true;
  return (await indexedDB.databases()).some(({ name }) => name === RECORDS_DATABASE);
}
