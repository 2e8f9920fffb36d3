// The page for the present recipe: the last one that could be made stays while another is refused or on its way.
import { useEffect, useMemo, useRef, useState } from 'react';
import type { Language } from '../../languages/index.ts';
import type { Entries } from '../recipe/entries.ts';
import type { Maker } from './maker.ts';
import type { Catalogue, MakerTalk, Objection, Reply, Shown, View } from './protocol.ts';
import type { WantedPage } from './wanted-page.ts';

export interface ShownState {
  readonly shown?: Shown;
  readonly objections: readonly Objection[];
  /** Whether the page for the present recipe is still on its way. */
  readonly isMaking: boolean;
}

type Asked = MakerTalk['show']['ask'];

interface Told {
  /** What the last reply answered. */
  readonly asked?: Asked;
  readonly shown?: Shown;
  readonly objections: readonly Objection[];
}

/** Nothing is asked for as long as the entries are not known. */
export function useShown(
  maker: Maker,
  entries: Entries | undefined,
  view: View,
  { wanted, leaf }: WantedPage,
): ShownState {
  const [told, setTold] = useState<Told>({ objections: [] });
  const asked = useMemo(
    () => (entries === undefined ? undefined : { entries, view, wanted, leaf }),
    [entries, view, wanted, leaf],
  );
  const before = useRef<Promise<void>>(Promise.resolve());
  useEffect(() => {
    if (asked === undefined) return;
    let isWanted = true;
    // One at a time: what was asked for and changed again meanwhile is never made.
    before.current = before.current.then(async () => {
      if (!isWanted) return;
      const reply = await maker.ask('show', asked);
      if (isWanted) setTold((last) => afterReply(last, asked, reply));
    });
    return () => {
      isWanted = false;
    };
  }, [maker, asked]);
  const { shown, objections } = told;
  return {
    ...(shown === undefined ? {} : { shown }),
    objections,
    isMaking: asked === undefined || told.asked !== asked,
  };
}

function afterReply(last: Told, asked: Asked, reply: Reply<Shown>): Told {
  return reply.ok
    ? { asked, shown: reply.value, objections: [] }
    : { ...last, asked, objections: reply.objections };
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
