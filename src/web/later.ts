// Parts that are fetched once the first page lies on the table, so that nobody waits for what is folded away.
import { useEffect, useSyncExternalStore } from 'react';

export interface Later<M> {
  /** What was fetched; fetches it where it is wanted and not there. It is drawn at once where it is there already. */
  readonly use: (isWanted: boolean) => M | undefined;
}

const all: (() => Promise<void>)[] = [];

/** In the order in which they are declared they are fetched by `fetchLater`. */
export function later<M>(load: () => Promise<M>): Later<M> {
  let there: M | undefined;
  let isFetching = false;
  const tellings = new Set<() => void>();
  const fetch = async () => {
    if (there !== undefined || isFetching) return;
    isFetching = true;
    try {
      there = await load();
    } catch {
      // Without a network it is tried again when it is wanted next.
    }
    isFetching = false;
    for (const tell of tellings) tell();
  };
  all.push(fetch);
  const follow = (tell: () => void) => {
    tellings.add(tell);
    return () => tellings.delete(tell);
  };
  return {
    use: (isWanted) => {
      const now = useSyncExternalStore(follow, () => there);
      useEffect(() => {
        if (isWanted) void fetch();
      }, [isWanted]);
      return now;
    },
  };
}

/** Fetches all that is still to come, one after the other, while nothing else is to do. */
export function fetchLater(): void {
  whenIdle(async () => {
    for (const fetch of all) await fetch();
  });
}

/** Some browsers do not tell when they are idle. */
function whenIdle(work: () => Promise<void>): void {
  if ('requestIdleCallback' in window) requestIdleCallback(() => void work());
  else setTimeout(() => void work());
}
