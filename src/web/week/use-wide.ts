// Whether there is room for a table of days; below that the days stand under one another.
import { useSyncExternalStore } from 'react';

const ROOM = '(width >= 46rem)';

/** On paper there always is, and it is known before the browser counts the pages: none is cut off or left blank. */
let isOnPaper = false;

export function useWide(): boolean {
  return useSyncExternalStore(follow, () => isOnPaper || matchMedia(ROOM).matches);
}

function follow(listener: () => void): () => void {
  const query = matchMedia(ROOM);
  const turn = ({ type }: Event) => {
    isOnPaper = type === 'beforeprint';
    listener();
  };
  query.addEventListener('change', listener);
  window.addEventListener('beforeprint', turn);
  window.addEventListener('afterprint', turn);
  return () => {
    query.removeEventListener('change', listener);
    window.removeEventListener('beforeprint', turn);
    window.removeEventListener('afterprint', turn);
  };
}
