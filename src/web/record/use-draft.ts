// The draft of a record, begun anew for each child and sheet.
import { useState } from 'react';
import { today } from '../children/today.ts';
import { carriedOver, useKeep } from '../offline/kept.ts';
import type { ResultDraft } from './result-draft.ts';
import { readResultDraft } from './result-draft-left.ts';

/** What is written about `what`, and how it is changed. */
export function useDraft(what: string): [ResultDraft, (part: Partial<ResultDraft>) => void] {
  const [kept, setKept] = useState(() => begun(what));
  if (kept.what !== what) setKept(begun(what));
  useKeep(nameOf(kept.what), kept.draft);
  const change = (part: Partial<ResultDraft>) =>
    setKept((now) => ({ ...now, draft: { ...now.draft, ...part } }));
  return [kept.draft, change];
}

function begun(what: string): { readonly what: string; readonly draft: ResultDraft } {
  return { what, draft: readResultDraft(carriedOver(nameOf(what)), today()) };
}

function nameOf(what: string): string {
  return `record of ${what}`;
}
