// Pictures of a family's own in files: their form, and making them known before anything that names them is read.
import { z } from 'zod';
import { type Refusal, saying, told } from '../base/index.ts';
import {
  knowOwnPicture,
  LONGEST_PICTURE_NAME,
  MOST_PICTURE_CHARACTERS,
  MOST_PICTURE_PARTS,
  OWN_FILL,
  type OwnPicture,
} from '../figures/index.ts';
import { pathText } from './path-text.ts';
import { closedObject } from './schema-parts.ts';

/** In one file; each sheet names few of them. */
export const MOST_PICTURES_IN_FILE = 100;

const path = z.string().max(MOST_PICTURE_CHARACTERS);
const name = saying(told('reasons', 'expected.picture.name', { most: LONGEST_PICTURE_NAME }));
const fill = z.string().regex(OWN_FILL, saying(told('reasons', 'expected.picture.colour')));

/** The fields of an own picture, in thousandths of its cell. */
export const OWN_PICTURE_FIELDS = {
  name: z.exactOptional(z.string().min(1).max(LONGEST_PICTURE_NAME).regex(/\S/u, name)),
  outline: path,
  parts: z
    .array(z.union([z.tuple([fill, path]), z.tuple([fill, path, z.literal(1)])]))
    .min(1)
    .max(MOST_PICTURE_PARTS),
};

export const ownPicturesSchema = z
  .array(closedObject(OWN_PICTURE_FIELDS))
  .max(MOST_PICTURES_IN_FILE);

/** Makes the pictures of a file known; answers why not for each that is none. `what` names the file. */
export function knowPictures(
  pictures: readonly OwnPicture[] | undefined,
  what: string,
): readonly Refusal[] {
  return (pictures ?? []).flatMap((picture, index) => {
    const known = knowOwnPicture(picture, pathText(what, ['pictures', index]));
    return known.ok ? [] : known.refusals;
  });
}
