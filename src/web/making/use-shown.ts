// The page for the present recipe: the last one that could be made stays while another is refused or on its way.
import { startTransition, useEffect, useState } from 'react';
import { flushSync } from 'react-dom';
import type { Language } from '../../languages/index.ts';
import type { Entries } from '../recipe/entries.ts';
import type { Maker } from './maker.ts';
import { isSamePage, type PageAsked, type Pages } from './pages.ts';
import type { Catalogue, Group, Objection, Reply, Shown, View } from './protocol.ts';
import type { WantedPage } from './wanted-page.ts';

export interface ShownState {
  readonly shown?: Shown;
  readonly objections: readonly Objection[];
  /** Whether the page for the present recipe is still on its way. */
  readonly isMaking: boolean;
}

interface Told {
  /** What the last reply answered. */
  readonly asked?: PageAsked;
  readonly shown?: Shown;
  readonly objections: readonly Objection[];
}

/** Nothing is asked for as long as the entries are not known. */
export function useShown(
  pages: Pages,
  entries: Entries | undefined,
  view: View,
  { wanted, leaf }: WantedPage,
  group: Group | undefined,
): ShownState {
  const [told, setTold] = useState<Told>({ objections: [] });
  useEffect(
    () =>
      pages.onReply((asked, reply) => {
        // The page itself is drawn first, by `useShownFirst`.
        afterFrame(() => startTransition(() => setTold((last) => afterReply(last, asked, reply))));
      }),
    [pages],
  );
  useEffect(() => {
    if (entries !== undefined) pages.ask({ entries, view, wanted, leaf, group });
  }, [pages, entries, view, wanted, leaf, group]);
  const { asked, shown, objections } = told;
  return {
    ...(shown === undefined ? {} : { shown }),
    objections,
    isMaking: entries === undefined || !isSamePage(asked, { entries, view, wanted, leaf, group }),
  };
}

/** The page of the last reply, drawn in the very task in which it comes; `shown` until there was one. */
export function useShownFirst(pages: Pages, shown: Shown | undefined): Shown | undefined {
  const [first, setFirst] = useState<Shown>();
  useEffect(
    () =>
      pages.onReply((_asked, reply) => {
        if (reply.ok) flushSync(() => setFirst(reply.value));
      }),
    [pages],
  );
  return first ?? shown;
}

/** Once the frame that comes next is drawn; at once where nobody sees any. */
function afterFrame(then: () => void): void {
  if (document.hidden) then();
  else requestAnimationFrame(() => setTimeout(then));
}

function afterReply(last: Told, asked: PageAsked, reply: Reply<Shown>): Told {
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
