// How much ink a sheet takes: asked for once the dials have rested, since measuring it takes longer than making the page.
import { useEffect, useState } from 'react';
import type { Maker } from '../making/maker.ts';
import type { Group, Inked } from '../making/protocol.ts';
import type { Entries } from '../recipe/entries.ts';

/** In ms: longer than from one press of a dial to the next. */
const RESTED_MS = 300;

/** The sheet in view, as sheets are made. */
export interface InkAsked {
  readonly maker: Maker;
  readonly entries: Entries;
  readonly sheet: number;
  readonly group: Group | undefined;
}

/** Absent until the first answer; the last one stays while the next is on its way. */
export function useInked({ maker, entries, sheet, group }: InkAsked): Inked | undefined {
  const [inked, setInked] = useState<Inked>();
  useEffect(() => {
    let isWanted = true;
    const ask = async () => {
      const reply = await maker.ask('inked', { entries, sheet, group });
      if (isWanted) setInked(reply.ok ? reply.value : undefined);
    };
    const rested = setTimeout(() => void ask(), RESTED_MS);
    return () => {
      isWanted = false;
      clearTimeout(rested);
    };
  }, [maker, entries, sheet, group]);
  return inked;
}
