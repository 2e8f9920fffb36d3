// The plans of several children as cards, asked for child by child and again whenever a child's own entries change.
import { useEffect, useMemo, useRef, useState } from 'react';
import type { Day, Id } from '../../records/index.ts';
import { useGround } from '../children/use-ground.ts';
import { sentencesOf } from '../making/reply-form.ts';
import type { CardsOfAsked, DayCards, RecordsAsked } from '../planning/cards.ts';
import type { Planner } from '../planning/planner.ts';
import { ownEntries } from './own-entries.ts';

export type CardsAsked = Omit<CardsOfAsked, keyof RecordsAsked>;

export type CardsByChild = ReadonlyMap<Id, readonly DayCards[]>;

export interface CardsState {
  /** Of the children whose days are all read; a child's days are the same object until they change. */
  readonly cards: CardsByChild;
  /** Why cards cannot be read, in words; empty where they can. */
  readonly objection: string;
  /** Shows days before they are kept. */
  readonly show: (child: Id, days: readonly DayCards[]) => void;
}

export function useCards(planner: Planner, asked: CardsAsked): CardsState {
  const { entries, shelf } = useGround();
  const [cards, setCards] = useState<CardsByChild>(new Map());
  const [objection, setObjection] = useState('');
  /** What the cards of each child were made from. */
  const madeFrom = useRef(new Map<Id, string>());
  const show = (child: Id, days: readonly DayCards[]) =>
    setCards((before) => new Map([...before, [child, days]]));
  const { days, today, wishes } = asked;
  const children = asked.children.join(' ');
  useEffect(() => {
    let isWanted = true;
    const readChild = async (child: Id) => {
      const own = ownEntries(entries ?? [], child);
      const from = JSON.stringify([own.map(({ id }) => id), days, today, wishes]);
      if (!isWanted || own.length === 0 || madeFrom.current.get(child) === from) return;
      const what = { entries: own, shelf, children: [child], days, today, wishes };
      const reply = await planner.ask('cards', what);
      if (!isWanted) return;
      setObjection(reply.ok ? '' : sentencesOf(reply.objections));
      const week = reply.ok ? reply.value[0] : undefined;
      if (week === undefined) return;
      madeFrom.current.set(child, from);
      setCards((before) => new Map([...before, [child, week.days]]));
    };
    const readAll = async () => {
      for (const child of children.split(' ')) await readChild(child);
    };
    void readAll();
    return () => {
      isWanted = false;
    };
  }, [planner, entries, shelf, children, days, today, wishes]);
  const read = useMemo(() => whole(cards, days), [cards, days]);
  return { cards: read, objection, show };
}

/** Without children of whom one of the days is not there yet, as when another week is turned to. */
function whole(cards: CardsByChild, days: readonly Day[]): CardsByChild {
  const isWhole = (there: readonly DayCards[]) =>
    days.every((name) => there.some(({ day }) => day === name));
  return new Map([...cards].filter(([, there]) => isWhole(there)));
}
