// Own pictures for tests, drawn from the pictures that are always there.
import type { Path } from '../src/base/index.ts';
import {
  knowOwnPicture,
  type OwnPicture,
  type OwnPictureId,
  outlineOf,
  type Picture,
  partsOf,
} from '../src/figures/index.ts';

/** The same picture as path data of a family's own; the first parts, so that it is not too much. */
export function ownCopyOf(form: Picture, name?: string): OwnPicture {
  const outline = textOf(outlineOf({ form }).path);
  const [first] = partsOf({ form });
  const fill = first?.fill ?? '#336699';
  return { ...(name === undefined ? {} : { name }), outline, parts: [[fill, outline]] };
}

/** Makes it known, and gives its number. */
export function knownCopyOf(form: Picture, name?: string): OwnPictureId {
  const known = knowOwnPicture(ownCopyOf(form, name), 'test');
  if (!known.ok) throw new Error(`${form}: ${JSON.stringify(known.refusals)}`);
  return known.value;
}

function textOf(path: Path): string {
  return path
    .map(
      ([letter, ...shares]) => letter + shares.map((share) => Math.round(share * 1000)).join(' '),
    )
    .join('');
}
