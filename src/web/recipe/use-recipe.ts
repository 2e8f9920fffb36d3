// Keeps the recipe in the address: edits replace it, turns to another sheet can be undone with Back.
import { useCallback, useEffect, useRef, useState } from 'react';
import { isNew, isRecipe, readAddress, writeAddress } from './address.ts';
import type { Entries } from './entries.ts';

/** What is asked for next, or how it comes of what is asked for now: so a control need not know all the rest. */
export type Edit = (next: Entries | ((now: Entries) => Entries)) => void;

export interface RecipeState {
  readonly entries: Entries;
  /** Changes what is asked for. */
  readonly edit: Edit;
  /** Goes to other sheets, so that Back returns to these. */
  readonly turn: (entries: Entries) => void;
}

/** A seed that nobody chose: a whole number from 0 to 2^32 − 1. */
export function newSeed(): number {
  const [seed = 0] = crypto.getRandomValues(new Uint32Array(1));
  return seed;
}

/** `foretell` gets what is asked for next before anything of it is drawn. */
export function useRecipe(foretell: (next: Entries) => void): RecipeState {
  const [entries, setEntries] = useState(() => readAddress(location.hash, newSeed()));
  const latest = useRef(entries);
  const put = useCallback((next: Entries) => {
    latest.current = next;
    setEntries(next);
  }, []);
  useEffect(() => {
    // A first visit has a seed that nobody chose; from here on a reload keeps it.
    if (isNew(location.hash)) history.replaceState(null, '', `#${writeAddress(entries)}`);
  }, [entries]);
  useEffect(() => {
    const follow = () => {
      // Going to another place is no change of the recipe.
      if (isRecipe(location.hash)) put(readAddress(location.hash, latest.current.seed));
    };
    window.addEventListener('popstate', follow);
    return () => window.removeEventListener('popstate', follow);
  }, [put]);
  const edit: Edit = useCallback(
    (change) => {
      const next = typeof change === 'function' ? change(latest.current) : change;
      foretell(next);
      history.replaceState(null, '', `#${writeAddress(next)}`);
      put(next);
    },
    [put, foretell],
  );
  const turn = useCallback(
    (next: Entries) => {
      history.pushState(null, '', `#${writeAddress(next)}`);
      put(next);
    },
    [put],
  );
  return { entries, edit, turn };
}
