// The page for the present recipe: the last one that could be made stays while another is refused or on its way.
import { useEffect, useRef, useState } from 'react';
import type { Language } from '../../languages/index.ts';
import type { Entries } from '../recipe/entries.ts';
import type { Maker } from './maker.ts';
import type { Catalogue, Objection, Reply, Shown, View } from './protocol.ts';
import type { WantedPage } from './wanted-page.ts';

export interface ShownState {
  readonly shown?: Shown;
  readonly objections: readonly Objection[];
  /** Whether the page for the present recipe is still on its way. */
  readonly isMaking: boolean;
}

/** Nothing is asked for as long as the entries are not known. */
export function useShown(
  maker: Maker,
  entries: Entries | undefined,
  view: View,
  { wanted, leaf }: WantedPage,
): ShownState {
  const [state, setState] = useState<ShownState>({ objections: [], isMaking: true });
  const before = useRef<Promise<void>>(Promise.resolve());
  useEffect(() => {
    if (entries === undefined) return;
    let isWanted = true;
    setState((last) => ({ ...last, isMaking: true }));
    // One at a time: what was asked for and changed again meanwhile is never made.
    before.current = before.current.then(async () => {
      if (!isWanted) return;
      const reply = await maker.ask('show', { entries, view, wanted, leaf });
      if (isWanted) setState((last) => afterReply(last, reply));
    });
    return () => {
      isWanted = false;
    };
  }, [maker, entries, view, wanted, leaf]);
  return state;
}

function afterReply(last: ShownState, reply: Reply<Shown>): ShownState {
  return reply.ok
    ? { shown: reply.value, objections: [], isMaking: false }
    : { ...last, objections: reply.objections, isMaking: false };
}

/** What the controls must know, in the language; absent until it is told. */
export function useCatalogue(maker: Maker, language: Language): Catalogue | undefined {
  const [told, setTold] = useState<{ readonly language: Language; readonly said: Catalogue }>();
  useEffect(() => {
    maker.ask('catalogue', {}).then((reply) => {
      if (reply.ok) setTold({ language, said: reply.value });
    });
  }, [maker, language]);
  return told?.language === language ? told.said : undefined;
}
