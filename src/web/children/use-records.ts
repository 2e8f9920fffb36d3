// The record store of this browser as the screens see it: what it holds, or why nothing can be read.

import { useCallback, useEffect, useState } from 'react';
import type { Refusal, Result } from '../../base/index.ts';
import type { Entry } from '../../records/index.ts';
import { sentenceIn } from '../../words/index.ts';
import { languageNow } from '../speaking/language-now.ts';
import { type Keeping, keepingNow } from '../store/keeping.ts';
import { openRecordStore } from '../store/record-store.ts';
import { capital } from '../words.ts';

/** One for the whole visit; nothing is opened before it is first read. */
export const store = openRecordStore();

export interface Records {
  /** All of both shelves; absent until they are read. */
  readonly entries?: readonly Entry[];
  readonly keeping?: Keeping;
  /** Why nothing can be read, in words; empty where all is well. */
  readonly objection: string;
  readonly read: () => Promise<void>;
  readonly setKeeping: (keeping: Keeping) => void;
}

export function useRecords(): Records {
  const [entries, setEntries] = useState<readonly Entry[]>();
  const [objection, setObjection] = useState('');
  const [keeping, setKeeping] = useState<Keeping>();
  const read = useCallback(async () => {
    const result = await store.read();
    if (result.ok) setEntries(result.value);
    setObjection(objectionOf(result));
  }, []);
  useEffect(() => {
    void read();
    void keepingNow().then(setKeeping);
    return store.onChange(() => void read());
  }, [read]);
  return {
    ...(entries === undefined ? {} : { entries }),
    ...(keeping === undefined ? {} : { keeping }),
    objection,
    read,
    setKeeping,
  };
}

/** Most faults of a file that are told at once; the rest follows when these are mended. */
const MOST_TOLD = 3;

/** Why something could not be done, in words; empty where it was done. */
export function objectionOf<T>(result: Result<T>): string {
  return result.ok ? '' : result.refusals.slice(0, MOST_TOLD).map(toldOf).join(' ');
}

/** That it is about the records is plain on these screens. */
function toldOf(refusal: Refusal): string {
  return capital(sentenceIn(languageNow(), refusal).replace(/^records: /, ''));
}
