// The record store of this browser as the screens see it: what it holds, or why nothing can be read.

import { useCallback, useEffect, useRef, useState } from 'react';
import type { Result } from '../../base/index.ts';
import type { Entry } from '../../records/index.ts';
import { languageNow } from '../speaking/language-now.ts';
import { type Keeping, keepingNow } from '../store/keeping.ts';
import { openRecordStore } from '../store/record-store.ts';
import { capital, words } from '../words.ts';

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
  const reads = useRef(0);
  const read = useCallback(async () => {
    const turn = ++reads.current;
    const result = await store.read();
    if (result.ok) setEntries(result.value);
    const said = await objectionOf(result);
    // What is to be said may still be on its way when a later read has already done better.
    if (turn === reads.current) setObjection(said);
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

/**
 * Why something could not be done, in words; empty where it was done. The sentences know all activities: they are
 * fetched when the first has to be said, so that no screen carries them.
 */
export async function objectionOf<T>(result: Result<T>): Promise<string> {
  if (result.ok) return '';
  const refusals = result.refusals.slice(0, MOST_TOLD);
  try {
    const { sentenceIn } = await import('../../words/index.ts');
    return refusals.map((refusal) => toldOf(sentenceIn(languageNow(), refusal))).join(' ');
  } catch {
    // Without a network and without the store of files it is said in short.
    return words.defect(refusals.map(({ at, code }) => `${at} ${code}`).join(', '));
  }
}

/** That it is about the records is plain on these screens. */
function toldOf(sentence: string): string {
  return capital(sentence.replace(/^records: /, ''));
}
