// A function that stays the same however often its part is drawn, so that buttons need not be drawn anew for it.
import { useCallback, useLayoutEffect, useRef } from 'react';

/** Calls what was given when last drawn; for presses, never while drawing. */
export function useLatestCall<A extends readonly unknown[], R>(
  call: (...what: A) => R,
): (...what: A) => R {
  const latest = useRef(call);
  useLayoutEffect(() => {
    latest.current = call;
  });
  return useCallback((...what: A) => latest.current(...what), []);
}
