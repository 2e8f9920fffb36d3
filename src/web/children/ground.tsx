// The ground of all screens about children: one reading of the records, one shelf, one child, kept from place to place.
import { type ReactNode, useEffect, useMemo, useRef, useState } from 'react';
import type { Result } from '../../base/index.ts';
import {
  type Day,
  type Draft,
  type Entry,
  type Id,
  type Shelf,
  viewOf,
} from '../../records/index.ts';
import '../look/children.css';
import { holdWhile } from '../offline/holds.ts';
import { watchPictures } from '../pictures/watch-pictures.ts';
import { askToKeep } from '../store/keeping.ts';
import { childInView } from './child-in-view.ts';
import { DemoBanner } from './demo-banner.tsx';
import { recall, recallShelf, remember } from './remembered.ts';
import { today } from './today.ts';
import { type Ground, GroundContext } from './use-ground.ts';
import { objectionOf, type Records, store, useRecords } from './use-records.ts';

export interface GroundProps {
  /** Where one is: going elsewhere ends what was said of the demo group. */
  readonly place: string;
  /** Gives the entries of an invented group; absent where none can be made. */
  readonly onTryDemo?: (today: Day) => Promise<Result<readonly Entry[]>>;
  readonly children: ReactNode;
}

export default function GroundBelow({ place, onTryDemo, children }: GroundProps) {
  const records = useRecords();
  const { entries } = records;
  const [shelf, showShelf] = useShelf(entries);
  const view = useMemo(() => entries && viewOf(entries, shelf), [entries, shelf]);
  const [chosen, setChosen] = useState<Readonly<Record<Shelf, Id | undefined>>>(() => ({
    real: recall('child.real'),
    demo: recall('child.demo'),
  }));
  const child = view && childInView(view, chosen[shelf]);
  useEffect(() => {
    if (view !== undefined) remember(`child.${shelf}`, child?.id);
  }, [view, shelf, child?.id]);
  useEffect(() => void watchPictures(), []);
  const keepForGood = useAskingOnce(records);
  const ground: Ground = {
    ...records,
    shelf,
    ...(view === undefined ? {} : { view }),
    children: view?.children ?? [],
    ...(child === undefined ? {} : { child }),
    choose: (id) => setChosen((before) => ({ ...before, [shelf]: id })),
    append: async (drafts) => {
      const added = await holdWhile(store.append(drafts.map((draft) => onShelf(draft, shelf))));
      if (added.ok && shelf === 'real') keepForGood();
      return added;
    },
    keepForGood,
    showShelf,
    removeDemo: async () => {
      const removed = await store.deleteDemo();
      if (removed.ok) {
        showShelf('real');
        remember('child.demo', undefined);
      }
      return removed;
    },
    ...(onTryDemo === undefined
      ? {}
      : { tryDemo: async () => objectionOf(await broughtIn(onTryDemo, showShelf)) }),
  };
  return (
    <GroundContext value={ground}>
      <DemoBanner key={place} />
      {children}
    </GroundContext>
  );
}

/** Asks the browser to keep the records, once in a visit: it may ask the person in turn. */
function useAskingOnce({ keeping, setKeeping }: Records): () => void {
  const isAsked = useRef(false);
  return () => {
    if (isAsked.current || keeping === 'kept') return;
    isAsked.current = true;
    void askToKeep().then(setKeeping);
  };
}

/** The shelf in view and a way to the other; without an invented group there is only the real one. */
function useShelf(entries: readonly Entry[] | undefined): [Shelf, (shelf: Shelf) => void] {
  const [wanted, setWanted] = useState(recallShelf);
  const isThere = wanted === 'real' || entries?.some(({ demo }) => demo === true);
  const show = (shelf: Shelf) => {
    setWanted(shelf);
    remember('shelf', shelf === 'demo' ? shelf : undefined);
  };
  return [isThere ? wanted : 'real', show];
}

function onShelf(draft: Draft, shelf: Shelf): Draft {
  return shelf === 'demo' ? { ...draft, demo: true } : draft;
}

/** Adds an invented group, marked as such whatever it says of itself, and shows it. */
async function broughtIn(
  make: NonNullable<GroundProps['onTryDemo']>,
  showShelf: (shelf: Shelf) => void,
): Promise<Result<number>> {
  const group = await make(today());
  if (!group.ok) return group;
  const added = await store.merge(group.value.map((entry) => ({ ...entry, demo: true })));
  if (added.ok) showShelf('demo');
  return added;
}
