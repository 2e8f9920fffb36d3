// Follows what is in the house through the records; fetched once a screen that needs no records of its own wants it.
import { viewOf } from '../../records/index.ts';
import { shelfIn } from '../children/remembered.ts';
import { store } from '../children/use-records.ts';
import type { Planner } from '../planning/planner.ts';
import type { House } from './house.ts';

/** Tells at once and after each change of the records; the answer ends that. Where they cannot be read nothing is counted. */
export function watchHouse(planner: Planner, tell: (house: House) => void): () => void {
  let isWatched = true;
  const look = async () => {
    const house = await houseNow(planner);
    if (isWatched) tell(house);
  };
  void look();
  const end = store.onChange(() => void look());
  return () => {
    isWatched = false;
    end();
  };
}

async function houseNow(planner: Planner): Promise<House> {
  const read = await store.read();
  if (!read.ok) return { isKnown: true };
  const entries = read.value;
  const shelf = shelfIn(entries);
  // The worker is started only where there is something to reckon.
  if (viewOf(entries, shelf).stock === undefined) return { isKnown: true };
  const reply = await planner.ask('stock', { entries, shelf });
  const left = reply.ok ? reply.value.stock?.left : undefined;
  return { isKnown: true, ...(left === undefined ? {} : { stock: left }) };
}
