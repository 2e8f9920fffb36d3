// Where the focus goes when what has it leaves the screen: without that the keys begin again at the top of the page.
import { type RefObject, useLayoutEffect } from 'react';
import { useLatestCall } from './use-latest-call.ts';

/** `next` is asked once `part` has gone with the focus in it, and nothing else took it. */
export function useFocusPassedOn(
  part: RefObject<HTMLElement | null>,
  next: () => HTMLElement | null | undefined,
): void {
  const heir = useLatestCall(next);
  useLayoutEffect(() => {
    const place = part.current;
    return () => {
      if (!place?.contains(document.activeElement)) return;
      queueMicrotask(() => {
        if (document.activeElement === document.body) heir()?.focus();
      });
    };
  }, [part, heir]);
}
