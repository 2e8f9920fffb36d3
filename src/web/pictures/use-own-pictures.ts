// The pictures that are kept, and keeping, naming and removing them; each change is one transaction or nothing.
import { useEffect, useMemo, useState, useSyncExternalStore } from 'react';
import { type OwnPicture, ownPictureId } from '../../figures/index.ts';
import type { Entry, KeptPicture } from '../../records/index.ts';
import { objectionOf, store } from '../children/use-records.ts';
import { holdWhile } from '../offline/holds.ts';
import { askToKeep } from '../store/keeping.ts';
import { followPictures, keptPicturesNow } from './pictures-now.ts';
import { watchPictures } from './watch-pictures.ts';

export interface OwnPictures {
  readonly isKnown: boolean;
  readonly kept: readonly KeptPicture[];
  /** Keeps a picture, or its new name; answers why not, in words, or nothing. */
  readonly keep: (picture: OwnPicture) => Promise<string>;
  /** Deletes it for good; answers what brings it back, or why not. */
  readonly remove: (id: string) => Promise<readonly Entry[] | string>;
  readonly bringBack: (entries: readonly Entry[]) => Promise<string>;
}

export function useOwnPictures(): OwnPictures {
  const [isKnown, setKnown] = useState(false);
  useEffect(() => {
    void watchPictures().then(() => setKnown(true));
  }, []);
  const pictures = useSyncExternalStore(followPictures, keptPicturesNow);
  const kept = useMemo(
    () => pictures.map((picture) => ({ id: ownPictureId(picture), picture })),
    [pictures],
  );
  return { isKnown, kept, keep, remove, bringBack };
}

async function keep(picture: OwnPicture): Promise<string> {
  const added = await holdWhile(store.append([{ kind: 'picture', ...picture }]));
  if (added.ok) void askToKeep();
  return objectionOf(added);
}

async function remove(id: string): Promise<readonly Entry[] | string> {
  const removed = await holdWhile(store.deletePicture(id));
  return removed.ok ? removed.value : objectionOf(removed);
}

async function bringBack(entries: readonly Entry[]): Promise<string> {
  return objectionOf(await holdWhile(store.merge(entries)));
}
