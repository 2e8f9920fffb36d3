// What is in the house now, as the planner reckons it from the records.
import { useEffect, useState } from 'react';
import type { Entry, Shelf } from '../../records/index.ts';
import type { StockReply } from '../planning/cards.ts';
import type { Planner } from '../planning/planner.ts';

/** Absent until it is known. */
export function useStock(
  planner: Planner,
  entries: readonly Entry[],
  shelf: Shelf,
): StockReply | undefined {
  const [stock, setStock] = useState<StockReply>();
  useEffect(() => {
    let isWanted = true;
    void planner.ask('stock', { entries, shelf }).then((reply) => {
      if (isWanted && reply.ok) setStock(reply.value);
    });
    return () => {
      isWanted = false;
    };
  }, [planner, entries, shelf]);
  return stock;
}
