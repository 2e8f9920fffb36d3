// Asks for the page on the table, one at a time: what was asked for and changed again meanwhile is never made.
import type { Entries } from '../recipe/entries.ts';
import type { Maker } from './maker.ts';
import type { MakerTalk } from './protocol.ts';

export type PageAsked = MakerTalk['show']['ask'];

type Tell = (asked: PageAsked, reply: MakerTalk['show']['reply']) => void;

export interface Pages {
  /** Does nothing if that is what was asked for last. */
  readonly ask: (asked: PageAsked) => void;
  /** Asks for the same page of other entries at once, so that it is made while the screen still draws the change. */
  readonly askAhead: (entries: Entries) => void;
  /** Asks anew for what was asked for last, where it shows pictures of the family's own: others are known by now. */
  readonly askAgain: () => void;
  /** Tells each reply to what was asked for last; the answer ends that. */
  readonly onReply: (tell: Tell) => () => void;
}

export function pagesFrom(maker: Pick<Maker, 'ask'>): Pages {
  const tellings = new Set<Tell>();
  let last: PageAsked | undefined;
  let isAsking = false;
  const askInTurn = async () => {
    isAsking = true;
    let asked: PageAsked | undefined;
    while (last !== undefined && last !== asked) {
      asked = last;
      const reply = await maker.ask('show', asked);
      if (last === asked) for (const tell of tellings) tell(asked, reply);
    }
    isAsking = false;
  };
  const ask = (asked: PageAsked) => {
    if (isSamePage(last, asked)) return;
    last = asked;
    if (!isAsking) void askInTurn();
  };
  return {
    ask,
    askAgain: () => {
      if (last?.entries.pictures === undefined) return;
      last = { ...last };
      if (!isAsking) void askInTurn();
    },
    askAhead: (entries) => {
      // What the house has is put in first.
      if (last !== undefined && entries.atHand !== true) ask({ ...last, entries });
    },
    onReply: (tell) => {
      tellings.add(tell);
      return () => tellings.delete(tell);
    },
  };
}

/** Whether both are of the very same entries and the same place. */
export function isSamePage(one: PageAsked | undefined, other: PageAsked | undefined): boolean {
  return (
    one?.entries === other?.entries &&
    one?.view === other?.view &&
    one?.wanted === other?.wanted &&
    one?.leaf === other?.leaf &&
    one?.group === other?.group
  );
}
