// What is in the house now, as the planner reckons it from the records.
import { useEffect, useState } from 'react';
import type { Entry, Shelf } from '../../records/index.ts';
import type { StockReply } from '../planning/cards.ts';
import type { Planner } from '../planning/planner.ts';

/** Absent until it is known, and as long as the records are not read; the last answer stays while the next is on its way. */
export function useStock(
  planner: Planner,
  entries: readonly Entry[] | undefined,
  shelf: Shelf,
): StockReply | undefined {
  const [told, setTold] = useState<{ readonly shelf: Shelf; readonly stock: StockReply }>();
  useEffect(() => {
    if (entries === undefined) return undefined;
    let isWanted = true;
    void planner.ask('stock', { entries, shelf }).then((reply) => {
      if (isWanted && reply.ok) setTold({ shelf, stock: reply.value });
    });
    return () => {
      isWanted = false;
    };
  }, [planner, entries, shelf]);
  return told?.shelf === shelf ? told.stock : undefined;
}
