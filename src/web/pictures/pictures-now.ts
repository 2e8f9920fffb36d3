// The own pictures as the page knows them, for the workers, which know nothing but what they are told.
import type { OwnPicture } from '../../figures/index.ts';

/** The family's, as they are kept. */
let own: readonly OwnPicture[] = [];
/** Those that came with a file; they are kept nowhere and known until the page is left. */
let lent: readonly OwnPicture[] = [];
/** The family's come last, so that theirs is the name of a picture that came with a file as well. */
let now: readonly OwnPicture[] = [];
const listeners = new Set<(pictures: readonly OwnPicture[]) => void>();

export function picturesNow(): readonly OwnPicture[] {
  return now;
}

export function keptPicturesNow(): readonly OwnPicture[] {
  return own;
}

/** Tells all workers, before whatever is asked of them next. */
export function setPictures(pictures: readonly OwnPicture[]): void {
  own = pictures;
  tell();
}

/** The same of pictures that came with a file. */
export function lendPictures(pictures: readonly OwnPicture[]): void {
  const isLent = (picture: OwnPicture) =>
    lent.some((each) => JSON.stringify(each) === JSON.stringify(picture));
  const more = pictures.filter((picture) => !isLent(picture));
  if (more.length === 0) return;
  lent = [...lent, ...more];
  tell();
}

function tell(): void {
  now = [...lent, ...own];
  for (const listener of listeners) listener(now);
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
