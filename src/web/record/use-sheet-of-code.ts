// The sheet that a written code stands for, made again by the maker a moment after the last key.

import { useEffect, useState } from 'react';
import type { Maker } from '../making/maker.ts';
import type { Reply, Shown } from '../making/protocol.ts';
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

export function useSheetOfCode(maker: Maker, code: string): SheetOfCode {
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
      const reply = await sheetOf(maker, wanted);
      if (isWanted) setFound(foundOf(reply));
    }, PAUSE_MS);
    return () => {
      isWanted = false;
      clearTimeout(pause);
    };
  }, [maker, wanted]);
  return found;
}

async function sheetOf(maker: Maker, code: string): Promise<Reply<Shown>> {
  const opened = await maker.ask('open', { code });
  return opened.ok ? maker.ask('show', { entries: opened.value, view: 'sheet', sheet: 1 }) : opened;
}

function foundOf(reply: Reply<Shown>): SheetOfCode {
  return reply.ok
    ? { sheet: reply.value, objection: '', isLooking: false }
    : {
        objection: capital(reply.objections.map(({ sentence }) => sentence).join(' ')),
        isLooking: false,
      };
}
