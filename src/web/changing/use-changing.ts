// The state of changing a sheet by changing: its history, the sheet as it now lies, and the recipe kept in step with it.
import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import {
  changed,
  type Deed,
  type History,
  historyOf,
  redone,
  type SheetEdits,
  undone,
} from '../../editing/index.ts';
import type { Maker } from '../making/maker.ts';
import { sentencesOf } from '../making/reply-form.ts';
import type { Entries } from '../recipe/entries.ts';
import type { Held, SheetOfPack, UnderChange } from './change-talk.ts';
import { recallHistory, rememberHistory } from './kept-history.ts';

export interface Changing {
  readonly held: Held;
  readonly under: UnderChange;
  /** Why the last deed was not done, in words; empty where it was. */
  readonly objection: string;
  /** Whether undo and redo last beyond this page. */
  readonly isKept: boolean;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  readonly act: (deed: Deed) => void;
  readonly undo: () => void;
  readonly redo: () => void;
}

interface State {
  /** Which sheet of which recipe this is about. */
  readonly key: string;
  /** The code of the sheet as it was made; it tells no name. */
  readonly made: string;
  readonly history: History<SheetEdits>;
  readonly held: Held;
  readonly objection: string;
  readonly isKept: boolean;
}

/** `undefined` where it is off, or the sheet is still on its way. Another recipe begins anew. */
export function useChanging(
  maker: Maker,
  { entries, sheet, group }: SheetOfPack,
  isOn: boolean,
  edit: (entries: Entries) => void,
): Changing | undefined {
  const [state, setState] = useState<State>();
  const of = useMemo(() => ({ sheet, group }), [sheet, group]);
  const key = isOn ? keyOf(entries, of) : '';
  const latest = useRef<{ entries: Entries; state: State | undefined }>({ entries, state });
  latest.current.entries = entries;
  const put = useCallback((next: State | undefined) => {
    latest.current.state = next;
    setState(next);
  }, []);
  // One deed after the other, each upon what the one before it left.
  const last = useRef<Promise<void>>(Promise.resolve());
  const inTurn = useCallback((step: (before: State) => Promise<void>) => {
    last.current = last.current.then(async () => {
      const before = latest.current.state;
      if (before !== undefined) await step(before);
    });
  }, []);

  // biome-ignore lint/correctness/useExhaustiveDependencies: begun anew with each recipe and sheet, not with each change
  useEffect(() => {
    put(undefined);
    if (key === '') return undefined;
    let isWanted = true;
    const begin = async () => {
      const taken = await maker.ask('take', { entries, ...of });
      if (!taken.ok) return;
      const { made, work } = taken.value;
      const history = recallHistory(made, work) ?? historyOf(work);
      const held = await maker.ask('hold', { entries, ...of, work: history.now });
      if (!held.ok || !isWanted) return;
      put({ key, made, history, held: held.value, objection: '', isKept: true });
    };
    void begin();
    return () => {
      isWanted = false;
    };
  }, [maker, key, put]);

  const goTo = useCallback(
    async (before: State, history: History<SheetEdits>) => {
      const { entries: now } = latest.current;
      if (history === before.history) return;
      const held = await maker.ask('hold', { entries: now, ...of, work: history.now });
      if (!held.ok || latest.current.state?.key !== before.key) return;
      const { key: at, made } = before;
      const isKept = rememberHistory(made, history);
      put({ key: at, made, history, held: held.value, objection: '', isKept });
      const next = withChanges(now, held.value.changed);
      latest.current.entries = next;
      edit(next);
    },
    [maker, of, edit, put],
  );
  const act = useCallback(
    (deed: Deed) =>
      inTurn(async (before) => {
        const { entries: now } = latest.current;
        const done = await maker.ask('deed', {
          entries: now,
          ...of,
          work: before.history.now,
          deed,
        });
        if (done.ok) return goTo(before, changed(before.history, done.value));
        const objection = sentencesOf(done.objections);
        if (latest.current.state === before) put({ ...before, objection });
      }),
    [maker, of, goTo, inTurn, put],
  );
  const undo = useCallback(
    () => inTurn((before) => goTo(before, undone(before.history))),
    [goTo, inTurn],
  );
  const redo = useCallback(
    () => inTurn((before) => goTo(before, redone(before.history))),
    [goTo, inTurn],
  );
  useKeys(state !== undefined, undo, redo);

  if (state === undefined || state.key !== key) return undefined;
  const { history, held, objection, isKept } = state;
  return {
    held,
    under: { entries, ...of, work: history.now },
    objection,
    isKept,
    canUndo: history.past.length > 0,
    canRedo: history.future.length > 0,
    act,
    undo,
    redo,
  };
}

/** All of the recipe but for what is changed by changing. */
function keyOf(
  { changed: _changed, ...recipe }: Entries,
  of: Omit<SheetOfPack, 'entries'>,
): string {
  return JSON.stringify([recipe, of]);
}

function withChanges(entries: Entries, changed: readonly string[]): Entries {
  const { changed: _before, ...recipe } = entries;
  return changed.length === 0 ? recipe : { ...recipe, changed };
}

/** Ctrl or Cmd with Z takes back, with Shift as well it does again; not while words are written. */
function useKeys(isOn: boolean, undo: () => void, redo: () => void): void {
  useEffect(() => {
    if (!isOn) return undefined;
    const press = (event: KeyboardEvent) => {
      const isZ = event.key.toLowerCase() === 'z' && (event.ctrlKey || event.metaKey);
      const isWriting = event.target instanceof Element && event.target.matches('input, textarea');
      if (!isZ || isWriting) return;
      event.preventDefault();
      if (event.shiftKey) redo();
      else undo();
    };
    window.addEventListener('keydown', press);
    return () => window.removeEventListener('keydown', press);
  }, [isOn, undo, redo]);
}
