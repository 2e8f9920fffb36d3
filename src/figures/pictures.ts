// The pictures: their parts in their own colours, the outline round all of them, and what kind of thing each is.
import type { Path } from '../base/index.ts';
import type { Hex } from '../palette/index.ts';
import { type FormId, isPicture, PICTURES, type Picture } from './form-names.ts';
import { isOwnPicture, type OwnForm } from './own-forms.ts';
import { ownDrawing } from './own-pictures.ts';
import { pathFromText } from './path-text.ts';
import table from './pictures.generated.json' with { type: 'json' };

export const PICTURE_CATEGORIES = ['animals', 'food', 'things', 'vehicles', 'plants'] as const;
export type PictureCategory = (typeof PICTURE_CATEGORIES)[number];

/** To be shown wherever pictures are shown or printed; the licence asks for it. */
export const PICTURE_CREDIT =
  'Pictures: Fluent Emoji, copyright (c) Microsoft Corporation, MIT License';

/** One flatly coloured area of a picture. */
export interface PicturePart {
  readonly fill: Hex;
  readonly path: Path;
  readonly rule: 'nonzero' | 'evenodd';
}

interface Entry {
  readonly category: PictureCategory;
  readonly mirrorTurn?: number;
  readonly outline: string;
  readonly parts: readonly (readonly [fill: Hex, path: string, isEvenOdd?: 1])[];
}

const ENTRIES = table.pictures as unknown as Readonly<Record<string, Entry>>;

/** The parts in a cell of side 1 about (0, 0), the hindmost first. */
export function pictureParts(picture: Picture): readonly PicturePart[] {
  if (isOwnPicture(picture)) return ownDrawing(picture).parts;
  return entryOf(picture).parts.map(([fill, path, isEvenOdd]) => ({
    fill,
    path: pathFromText(path, table.units, table.units),
    rule: isEvenOdd ? 'evenodd' : 'nonzero',
  }));
}

/** The outline round all parts, in the same cell; fill it with the rule `nonzero`. */
export function pictureOutline(picture: Picture): Path {
  if (isOwnPicture(picture)) return ownDrawing(picture).outline;
  return pathFromText(entryOf(picture).outline, table.units, table.units);
}

/** The quarter turn in degrees that makes the mirrored picture look as before; none where none does. */
export function pictureMirrorTurnDeg(picture: Exclude<Picture, OwnForm>): number | undefined {
  return entryOf(picture).mirrorTurn;
}

/** What kind of thing a picture shows; none for other forms and for pictures of a family's own. */
export function categoryOf(form: FormId): PictureCategory | undefined {
  return isPicture(form) && !isOwnPicture(form) ? entryOf(form).category : undefined;
}

/** The pictures of one category, in a fixed order. */
export function picturesOf(category: PictureCategory): readonly Picture[] {
  return PICTURES.filter((picture) => entryOf(picture).category === category);
}

function entryOf(picture: Picture): Entry {
  const entry = ENTRIES[picture.slice('picture-'.length)];
  if (!entry) throw new Error(`figures › picture: no ${picture}`);
  return entry;
}
