// Changes of a day by hand: each is kept as an entry of its own, told where it was made, and can be taken back.
import { useEffect, useState } from 'react';
import type { Draft } from '../../records/index.ts';
import { useGround } from '../children/use-ground.ts';
import { objectionOf } from '../children/use-records.ts';
import { type SaidState, useSaid } from '../children/use-said.ts';
import { holdWhile } from '../offline/holds.ts';
import type { DayCards, SheetCard, TodayAsked } from '../planning/cards.ts';
import { doneOf, planOf } from '../planning/planned.ts';
import type { Planner } from '../planning/planner.ts';
import { anotherSheet, isPlanOf, moved, type Plans, replaced, takenOut } from './day-changes.ts';
import { type SheetChange, words } from './words.ts';

/** The place of the day as a whole, where no sheet has it. */
const WHOLE_DAY = '';

export interface DayChanges extends Pick<SaidState, 'said' | 'undo'> {
  /** What is being changed, by its place; absent: nothing. */
  readonly busy: string | undefined;
  /** Where the last thing was said. */
  readonly saidAt: string;
  /** What stays the same of a place when another sheet comes into it. */
  readonly placeOf: (code: string) => string;
  readonly change: (card: SheetCard, how: SheetChange) => Promise<void>;
  readonly anew: () => Promise<void>;
  /** Keeps the plan as it stands, unless it is kept so already. */
  readonly keep: () => Promise<void>;
}

export function useDayChanges(
  planner: Planner,
  asked: TodayAsked,
  cards: DayCards | undefined,
  plans: Plans | undefined,
): DayChanges {
  const { append } = useGround();
  const { said, say, undo } = useSaid();
  const [saidAt, setSaidAt] = useState(WHOLE_DAY);
  const [busy, setBusy] = useState<string>();
  const [places] = useState(() => new Map<string, string>());
  const [declined] = useState(() => new Set<string>());
  const sheets = cards?.sheets ?? [];
  const placeOf = (code: string) => places.get(code) ?? code;

  // A change is done once the plan has come back with it.
  // biome-ignore lint/correctness/useExhaustiveDependencies: whatever the plan is
  useEffect(() => setBusy(undefined), [cards]);

  const tell = (at: string, text: string) => {
    setBusy(undefined);
    setSaidAt(at);
    say({ text });
  };
  const add = async (drafts: readonly Draft[], at: string, text: string) => {
    const added = await append(drafts);
    if (!added.ok) return tell(at, await objectionOf(added));
    setSaidAt(at);
    say({ text, undo: added.value.map(({ id }) => id) });
  };
  const put = (next: readonly SheetCard[], at: string, text: string) =>
    add([planOf(asked.child, asked.day, next)], at, text);
  const replace = async (card: SheetCard, how: 'something-else' | 'easier' | 'harder') => {
    const place = placeOf(card.code);
    const ofTheDay = sheets.map(({ activity }) => activity);
    const what = { ...asked, code: card.code, how };
    const reply = await anotherSheet(planner, what, ofTheDay, declined);
    if (!reply.ok) return tell(place, words.noOther[how]);
    if (how === 'something-else') declined.add(card.activity);
    places.set(reply.value.code, place);
    await put(replaced(sheets, card, reply.value), place, words.changed[how](reply.value, card));
  };
  const takeOut = (card: SheetCard) => {
    const before = sheets[sheets.indexOf(card) - 1];
    const at = before === undefined ? WHOLE_DAY : placeOf(before.code);
    return add(takenOut(asked, sheets, card, plans), at, words.takenOut(card));
  };
  const change = (card: SheetCard, how: SheetChange): Promise<void> => {
    setBusy(placeOf(card.code));
    say(undefined);
    if (how === 'not-today') return takeOut(card);
    if (how !== 'earlier' && how !== 'later') return replace(card, how);
    const next = moved(sheets, card, how === 'earlier' ? -1 : 1);
    return put(next, placeOf(card.code), words.moved[how](card));
  };
  const anew = async () => {
    setBusy(WHOLE_DAY);
    say(undefined);
    const codes = sheets.map(({ code }) => code);
    const ofTheDay = sheets.map(({ activity }) => activity);
    const reply = await planner.ask('anew', { ...asked, codes, without: ofTheDay });
    if (!reply.ok) return tell(WHOLE_DAY, words.noOtherPlan);
    await put([...doneOf({ sheets }), ...reply.value], WHOLE_DAY, words.anotherMade);
  };
  const keep = async () => {
    if (isPlanOf(plans?.get(asked.day), sheets)) return;
    const added = await append([planOf(asked.child, asked.day, sheets)]);
    if (!added.ok) tell(WHOLE_DAY, words.notKept(await objectionOf(added)));
  };
  return {
    ...{ said, undo, busy, saidAt, placeOf, keep },
    change: (card, how) => holdWhile(change(card, how)),
    anew: () => holdWhile(anew()),
  };
}
