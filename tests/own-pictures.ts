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
  return knownNumberOf(ownCopyOf(form, name));
}

const ROUND = 'M-470 0Q-470 -470 0 -470Q470 -470 470 0Q470 470 0 470Q-470 470 -470 0Z';
/** What is on a photo, of different places and sizes. */
export const THINGS = {
  house: 'M-250 250L-250 -50L0 -300L250 -50L250 250Z',
  ball: 'M-280 0Q-280 -280 0 -280Q280 -280 280 0Q280 280 0 280Q-280 280 -280 0Z',
  shore: 'M-400 50L400 50L300 320L0 440L-300 320Z',
  pole: 'M-90 -430L90 -430L90 430L-90 430Z',
} as const;

/** A photo whose ground stays, cropped to a circle: a thing of one colour on a ground of another. */
export function roundPhoto(thing: keyof typeof THINGS, fill: string, ground: string): OwnPicture {
  const parts = [
    [ground, ROUND],
    [fill, THINGS[thing]],
  ] as const;
  return { name: `${thing} ${fill} ${ground}`, outline: ROUND, parts };
}

/** Makes a picture known, and gives its number. */
export function knownNumberOf(picture: OwnPicture): OwnPictureId {
  const known = knowOwnPicture(picture, 'test');
  if (!known.ok) throw new Error(`${picture.name}: ${JSON.stringify(known.refusals)}`);
  return known.value;
}

function textOf(path: Path): string {
  return path
    .map(
      ([letter, ...shares]) => letter + shares.map((share) => Math.round(share * 1000)).join(' '),
    )
    .join('');
}
