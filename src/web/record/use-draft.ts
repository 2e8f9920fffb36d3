// The draft of a record, begun anew for each child and sheet.
import { useState } from 'react';
import { today } from '../children/today.ts';
import { emptyDraft, type ResultDraft } from './result-draft.ts';

/** What is written about `what`, and how it is changed. */
export function useDraft(what: string): [ResultDraft, (part: Partial<ResultDraft>) => void] {
  const [kept, setKept] = useState(() => ({ what, draft: emptyDraft(today()) }));
  if (kept.what !== what) setKept({ what, draft: emptyDraft(today()) });
  const change = (part: Partial<ResultDraft>) =>
    setKept((now) => ({ ...now, draft: { ...now.draft, ...part } }));
  return [kept.draft, change];
}
