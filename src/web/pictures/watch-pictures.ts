// Follows the family's own pictures through the records.
import type { OwnPicture } from '../../figures/index.ts';
import { keptPictures } from '../../records/index.ts';
import { remember } from '../children/remembered.ts';
import { store } from '../children/use-records.ts';
import { setPictures } from './pictures-now.ts';

let watching: Promise<void> | undefined;

/** Resolves once they are known; later changes are followed as they come. */
export function watchPictures(): Promise<void> {
  watching ??= begin();
  return watching;
}

function begin(): Promise<void> {
  store.onChange(() => void look());
  return look();
}

async function look(): Promise<void> {
  const read = await store.read();
  if (!read.ok) return;
  const pictures: readonly OwnPicture[] = keptPictures(read.value).map(({ picture }) => picture);
  remember('pictures', pictures.length > 0 ? 'kept' : undefined);
  setPictures(pictures);
}
