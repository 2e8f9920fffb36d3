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
  const [shown, setShown] = useState<Shown>();
  useEffect(() => {
    let isWanted = true;
    planner.ask('sheet', { code }).then((reply) => {
      if (isWanted && reply.ok) setShown(reply.value);
    });
    return () => {
      isWanted = false;
    };
  }, [planner, code]);
  return { shown, isMaking: shown?.code !== code };
}
