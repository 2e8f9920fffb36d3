// Keeps the recipe in the address: edits replace it, turns to another sheet can be undone with Back.
import { useCallback, useEffect, useState } from 'react';
import { isNew, isRecipe, readAddress, writeAddress } from './address.ts';
import type { Entries } from './entries.ts';

export interface RecipeState {
  readonly entries: Entries;
  /** Changes what is asked for. */
  readonly edit: (entries: Entries) => void;
  /** Goes to other sheets, so that Back returns to these. */
  readonly turn: (entries: Entries) => void;
}

/** A seed that nobody chose: a whole number from 0 to 2^32 − 1. */
export function newSeed(): number {
  const [seed = 0] = crypto.getRandomValues(new Uint32Array(1));
  return seed;
}

export function useRecipe(): RecipeState {
  const [entries, setEntries] = useState(() => readAddress(location.hash, newSeed()));
  useEffect(() => {
    // A first visit has a seed that nobody chose; from here on a reload keeps it.
    if (isNew(location.hash)) history.replaceState(null, '', `#${writeAddress(entries)}`);
  }, [entries]);
  useEffect(() => {
    const follow = () => {
      // Going to another place is no change of the recipe.
      if (isRecipe(location.hash)) setEntries((now) => readAddress(location.hash, now.seed));
    };
    window.addEventListener('popstate', follow);
    return () => window.removeEventListener('popstate', follow);
  }, []);
  const edit = useCallback((next: Entries) => {
    history.replaceState(null, '', `#${writeAddress(next)}`);
    setEntries(next);
  }, []);
  const turn = useCallback((next: Entries) => {
    history.pushState(null, '', `#${writeAddress(next)}`);
    setEntries(next);
  }, []);
  return { entries, edit, turn };
}
