// The picture of a sheet, made by the planner once all that was asked before is answered.
import { useEffect, useState } from 'react';
import type { Shown } from '../making/protocol.ts';
import type { Planner } from '../planning/planner.ts';

export interface Picture {
  /** The last one that was there, until the next is. */
  readonly shown: Shown | undefined;
  readonly isMaking: boolean;
}

export function usePicture(planner: Planner, code: string): Picture {
  const [told, setTold] = useState<{ readonly of?: string; readonly shown?: Shown }>({});
  useEffect(() => {
    let isWanted = true;
    planner.ask('sheet', { code }).then((reply) => {
      if (isWanted)
        setTold((last) => ({ ...last, of: code, ...(reply.ok && { shown: reply.value }) }));
    });
    return () => {
      isWanted = false;
    };
  }, [planner, code]);
  return { shown: told.shown, isMaking: told.of !== code };
}
