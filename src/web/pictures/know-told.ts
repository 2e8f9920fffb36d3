// The worker's side of the family's own pictures: what it is told of, it can draw.
import { knowOwnPicture, type OwnPicture } from '../../figures/index.ts';
import type { PicturesTold } from './pictures-now.ts';

let told: readonly OwnPicture[] = [];

/** Those that are no pictures are left out: a sheet that names one is refused with a reason. */
export function knowTold({ ownPictures }: PicturesTold): void {
  told = ownPictures.filter((picture) => knowOwnPicture(picture, 'records').ok);
}

/** What was told last. */
export function toldPictures(): readonly OwnPicture[] {
  return told;
}
