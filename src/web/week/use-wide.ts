// Whether there is room for a table of days; below that the days stand under one another.
import { useSyncExternalStore } from 'react';

const ROOM = '(width >= 46rem)';

export function useWide(): boolean {
  return useSyncExternalStore(follow, () => matchMedia(ROOM).matches);
}

function follow(listener: () => void): () => void {
  const query = matchMedia(ROOM);
  query.addEventListener('change', listener);
  return () => query.removeEventListener('change', listener);
}
