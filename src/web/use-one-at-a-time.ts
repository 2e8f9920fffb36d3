// Work that a press begins, such as keeping what was written: a second press before it is done must not do it twice.
import { useRef } from 'react';

/** Does nothing while the last call is under way. */
export function useOneAtATime<A extends readonly unknown[]>(
  work: (...what: A) => Promise<void>,
): (...what: A) => Promise<void> {
  const isWorking = useRef(false);
  return async (...what) => {
    if (isWorking.current) return;
    isWorking.current = true;
    try {
      await work(...what);
    } finally {
      isWorking.current = false;
    }
  };
}
