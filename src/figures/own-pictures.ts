// Pictures of a family's own: path data that comes with a sheet, known by a number that follows from it.
import {
  accept,
  type Path,
  pathBounds,
  type Result,
  refuse,
  type Told,
  told,
} from '../base/index.ts';
import type { Hex } from '../palette/index.ts';
import { type OwnForm, ownFormOf } from './own-forms.ts';
import { pathFromText } from './path-text.ts';
import { overlapShare, type Raster, rasterOf, WHOLE_CELL } from './raster.ts';

/** A picture as it is kept and as a file holds it; coordinates are whole thousandths of the cell's side. */
export interface OwnPicture {
  /** What it is called in the words of a task; absent: it has no name. It is no part of the number. */
  readonly name?: string | undefined;
  /** The outline round all parts, to be filled with the rule `nonzero`. */
  readonly outline: string;
  /** The hindmost first; with 1, to be filled by even and odd. */
  readonly parts: readonly OwnPart[];
}

export type OwnPart = readonly [fill: string, path: string, isEvenOdd?: 1 | undefined];

/** Seven characters of the alphabet of sheet codes, which follow from the path data. */
export type OwnPictureId = string;

/** More path data than this, in characters of outline and parts together, no picture has. */
export const MOST_PICTURE_CHARACTERS = 8000;
export const MOST_PICTURE_PARTS = 8;
export const LONGEST_PICTURE_NAME = 30;

export const OWN_UNITS = 1000;
const ALPHABET = '234679ACDEFHJKMNPRTUWXY';
const ID_LENGTH = 7;
export const OWN_ID = new RegExp(`^[${ALPHABET}]{${ID_LENGTH}}$`);
/** Different numbers that there are: one more than the greatest. */
export const OWN_IDS = ALPHABET.length ** ID_LENGTH;

const POINT = String.raw`-?\d{1,3} -?\d{1,3}`;
const PATH = new RegExp(
  `^(M${POINT}((L${POINT})|(Q${POINT} ${POINT})|(C${POINT} ${POINT} ${POINT}))+Z)+$`,
);
export const OWN_FILL = /^#[0-9a-f]{6}$/;
/** An outline covers this much of its cell at the least: less is a speck. */
const LEAST_AREA = 0.05;
/** Outline and parts cover the same, but for so much. */
const LEAST_COVER = 0.9;
const HALF = OWN_UNITS / 2;

/** What is drawn of a picture. */
export interface OwnDrawing {
  readonly name?: string | undefined;
  readonly outline: Path;
  readonly parts: readonly {
    readonly fill: Hex;
    readonly path: Path;
    readonly rule: 'nonzero' | 'evenodd';
  }[];
}

/** A picture that is known: as it came, and as it is drawn. */
interface Known {
  readonly text: string;
  readonly picture: OwnPicture;
  readonly drawing: OwnDrawing;
}

const drawings = new Map<OwnForm, Known>();

/** The number of a picture: the same wherever it is reckoned. */
export function ownPictureId(picture: OwnPicture): OwnPictureId {
  return idText(hashOf(textOf(picture)) % OWN_IDS);
}

/** The number as one from 0 to `OWN_IDS` − 1, as sheet codes hold it. */
export function ownIdNumber(id: OwnPictureId): number {
  return [...id].reduce((sum, letter) => sum * ALPHABET.length + ALPHABET.indexOf(letter), 0);
}

export function idText(number: number): OwnPictureId {
  let [rest, text] = [number, ''];
  for (let place = 0; place < ID_LENGTH; place++) {
    text = ALPHABET.charAt(rest % ALPHABET.length) + text;
    rest = Math.floor(rest / ALPHABET.length);
  }
  return text;
}

/**
 * Makes a picture known, so that figures can have its form. Refuses, `at` being the place: path data that cannot
 * be read or is too much, a speck, an outline that is not that of the parts, and another picture of the same number.
 */
export function knowOwnPicture(picture: OwnPicture, at: string): Result<OwnPictureId> {
  const id = ownPictureId(picture);
  const checked = knowable(picture, id, at);
  if (!checked.ok) return checked;
  drawings.set(ownFormOf(id), checked.value);
  return accept(id);
}

/** Refuses what `knowOwnPicture` would, and keeps nothing. */
export function checkOwnPicture(picture: OwnPicture, at: string): Result<OwnPictureId> {
  const id = ownPictureId(picture);
  const checked = knowable(picture, id, at);
  return checked.ok ? accept(id) : checked;
}

function knowable(picture: OwnPicture, id: OwnPictureId, at: string): Result<Known> {
  const no = (expected: Told) => refuse({ code: 'unreadable', at, got: id, expected });
  const text = textOf(picture);
  const known = drawings.get(ownFormOf(id));
  if (known && known.text !== text) return no(told('reasons', 'expected.picture.number'));
  // Its name is no part of the number.
  if (known) {
    return accept({ text, picture, drawing: { ...known.drawing, name: picture.name } });
  }
  const fault = faultOf(picture, text);
  if (fault !== undefined) return no(fault);
  const drawing = drawingOf(picture);
  if (!coversItself(drawing)) return no(told('reasons', 'expected.picture.outline'));
  return accept({ text, picture, drawing });
}

/** What `use` tells of a picture that is only tried: known for as long as that takes. A defect if it cannot be known. */
export function tryOwnPicture<T>(picture: OwnPicture, use: (form: OwnForm) => T): T {
  const form = ownFormOf(ownPictureId(picture));
  const before = drawings.get(form);
  const known = knowOwnPicture(picture, 'picture');
  if (!known.ok) throw new Error(`figures › own picture: ${form} cannot be known`);
  try {
    return use(form);
  } finally {
    if (before) drawings.set(form, before);
    else drawings.delete(form);
  }
}

/** Whether the picture of that number is known here. */
export function isOwnKnown(id: OwnPictureId): boolean {
  return drawings.has(ownFormOf(id));
}

/** A defect for one that is not known: nothing is made or read before it is. */
export function ownDrawing(form: OwnForm): OwnDrawing {
  return knownOf(form).drawing;
}

function knownOf(form: OwnForm): Known {
  const known = drawings.get(form);
  if (!known) throw new Error(`figures › own picture: no ${form} is known here`);
  return known;
}

/** The picture of a number as a file holds it; a defect for one that is not known. */
export function ownPictureOf(id: OwnPictureId): OwnPicture {
  const { name, outline, parts } = knownOf(ownFormOf(id)).picture;
  return { ...(name === undefined ? {} : { name }), outline, parts };
}

/** What a person called it, if anything. */
export function ownName(form: OwnForm): string | undefined {
  return drawings.get(form)?.drawing.name;
}

function faultOf({ name, outline, parts }: OwnPicture, text: string): Told | undefined {
  if (text.length > MOST_PICTURE_CHARACTERS) {
    return told('reasons', 'expected.picture.length', { most: MOST_PICTURE_CHARACTERS });
  }
  if (name !== undefined && (name.trim() === '' || name.length > LONGEST_PICTURE_NAME)) {
    return told('reasons', 'expected.picture.name', { most: LONGEST_PICTURE_NAME });
  }
  if (parts.length < 1 || parts.length > MOST_PICTURE_PARTS) {
    return told('reasons', 'expected.picture.parts', { most: MOST_PICTURE_PARTS });
  }
  if (!parts.every(([fill]) => OWN_FILL.test(fill))) {
    return told('reasons', 'expected.picture.colour');
  }
  const paths = [outline, ...parts.map(([, path]) => path)];
  if (!paths.every((path) => PATH.test(path))) return told('reasons', 'expected.picture.path');
  return paths.every(isInside)
    ? undefined
    : told('reasons', 'expected.picture.inside', { end: HALF });
}

function isInside(path: string): boolean {
  const { left, right, top, bottom } = pathBounds(pathFromText(path, OWN_UNITS, OWN_UNITS));
  return left >= -0.5 && right <= 0.5 && top >= -0.5 && bottom <= 0.5;
}

function drawingOf({ name, outline, parts }: OwnPicture): OwnDrawing {
  return {
    name,
    outline: pathFromText(outline, OWN_UNITS, OWN_UNITS),
    parts: parts.map(([fill, path, isEvenOdd]) => ({
      fill: fill as Hex,
      path: pathFromText(path, OWN_UNITS, OWN_UNITS),
      rule: isEvenOdd ? 'evenodd' : 'nonzero',
    })),
  };
}

/** What is compared is the outline, so it must be what is seen. */
function coversItself({ outline, parts }: OwnDrawing): boolean {
  const whole = rasterOf({ path: outline, rule: 'nonzero' }, WHOLE_CELL);
  const area = areaOf(whole);
  if (area < LEAST_AREA) return false;
  const seen = new Uint32Array(whole.length);
  for (const { path, rule } of parts) {
    rasterOf({ path, rule }, WHOLE_CELL).forEach((word, index) => {
      seen[index] = (seen[index] ?? 0) | word;
    });
  }
  return overlapShare(whole, seen, 0, 0) >= LEAST_COVER;
}

/** Share of the cell that is inked. */
function areaOf(raster: Raster): number {
  const bits = raster.reduce((sum, word) => sum + word.toString(2).replaceAll('0', '').length, 0);
  return bits / (32 * raster.length);
}

function textOf({ outline, parts }: OwnPicture): string {
  const written = parts.map(([fill, path, rule]) => `${fill}${rule ? '*' : ''}${path}`);
  return [outline, ...written].join('|');
}

/** FNV-1a of 32 bits, mixed at the end (Fowler, Noll and Vo; finalizer of MurmurHash3, from memory). */
function hashOf(text: string): number {
  let hash = 0x811c9dc5;
  for (let place = 0; place < text.length; place++) {
    hash = Math.imul(hash ^ text.charCodeAt(place), 0x01000193);
  }
  hash = Math.imul(hash ^ (hash >>> 16), 0x85ebca6b);
  hash = Math.imul(hash ^ (hash >>> 13), 0xc2b2ae35);
  return (hash ^ (hash >>> 16)) >>> 0;
}
