// The family's own pictures as the page knows them, for the workers, which know nothing but what they are told.
import type { OwnPicture } from '../../figures/index.ts';

let now: readonly OwnPicture[] = [];
const listeners = new Set<(pictures: readonly OwnPicture[]) => void>();

export function picturesNow(): readonly OwnPicture[] {
  return now;
}

/** Tells all workers, before whatever is asked of them next. */
export function setPictures(pictures: readonly OwnPicture[]): void {
  now = pictures;
  for (const listener of listeners) listener(pictures);
}

/** Calls `listener` whenever they change; the answer ends that. */
export function followPictures(listener: (pictures: readonly OwnPicture[]) => void): () => void {
  listeners.add(listener);
  return () => {
    listeners.delete(listener);
  };
}

/** What a worker is told of them; it is no question. */
export interface PicturesTold {
  readonly ownPictures: readonly OwnPicture[];
}
