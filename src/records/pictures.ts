// The pictures of the family's own that are kept, each by its number with its latest name.
import { type OwnPicture, type OwnPictureId, ownPictureId } from '../figures/index.ts';
import type { Entry } from './entry.ts';
import { byId, type Id } from './ids.ts';

export interface KeptPicture {
  readonly id: OwnPictureId;
  readonly picture: OwnPicture;
}

/** In the order in which they were first kept; on both shelves alike, since they are of no child's records. */
export function keptPictures(entries: readonly Entry[]): readonly KeptPicture[] {
  const kept = new Map<OwnPictureId, KeptPicture>();
  for (const entry of [...entries].sort(byId)) {
    if (entry.kind !== 'picture') continue;
    const { name, outline, parts } = entry;
    const picture = { ...(name === undefined ? {} : { name }), outline, parts };
    const id = ownPictureId(picture);
    kept.set(id, { id, picture });
  }
  return [...kept.values()];
}

/** The ids of all entries that hold a picture, so that none of it is left once they are deleted. */
export function idsOfPicture(entries: readonly Entry[], picture: OwnPictureId): readonly Id[] {
  return entries
    .filter((entry) => entry.kind === 'picture' && ownPictureId(entry) === picture)
    .map(({ id }) => id);
}
