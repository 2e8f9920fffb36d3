// The sheet that a written code stands for, made again by the planner a moment after the last key.
import { useEffect, useState } from 'react';
import type { Reply, Shown } from '../making/protocol.ts';
import { sentencesOf } from '../making/reply-form.ts';
import type { Planner } from '../planning/planner.ts';
import { capital } from '../words.ts';

/** A pause in typing long enough to be one (common practice, no source). */
const PAUSE_MS = 200;

export interface SheetOfCode {
  readonly sheet?: Shown;
  /** Why there is no sheet, in words; empty where there is one, or none was asked for. */
  readonly objection: string;
  readonly isLooking: boolean;
}

const NOTHING: SheetOfCode = { objection: '', isLooking: false };

export function useSheetOfCode(planner: Planner, code: string): SheetOfCode {
  const [found, setFound] = useState(NOTHING);
  const wanted = code.trim();
  useEffect(() => {
    if (wanted === '') {
      setFound(NOTHING);
      return undefined;
    }
    let isWanted = true;
    setFound({ objection: '', isLooking: true });
    const pause = setTimeout(async () => {
      const reply = await planner.ask('sheet', { code: wanted });
      if (isWanted) setFound(foundOf(reply));
    }, PAUSE_MS);
    return () => {
      isWanted = false;
      clearTimeout(pause);
    };
  }, [planner, wanted]);
  return found;
}

function foundOf(reply: Reply<Shown>): SheetOfCode {
  return reply.ok
    ? { sheet: reply.value, objection: '', isLooking: false }
    : {
        objection: capital(sentencesOf(reply.objections)),
        isLooking: false,
      };
}
