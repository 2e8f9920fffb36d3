// Which turns and mirrorings leave a form as it looks, so that no task rests on one that cannot be seen.
import type { Figure } from './figure.ts';
import { formOf } from './figure.ts';
import { type FormId, isPicture, type Picture } from './form-names.ts';
import { isSameMirrored } from './insides.ts';
import { isOfScript } from './letter-outlines.ts';
import { isOwnPicture, type OwnForm } from './own-forms.ts';
import { pictureMirrorTurnDeg } from './pictures.ts';
import { isUpsideDownLetter, letterMirrorTurnDeg } from './script-symmetry.ts';

/** Letters and numerals that look alike upside down; some differ by a hair in print, which no child sees. */
const UPSIDE_DOWN = 'capital-H capital-I capital-N capital-O capital-S capital-X capital-Z'
  .concat(' small-l small-o small-s small-x small-z numeral-0 numeral-8')
  .split(' ');

/** Shapes and signs that some turn short of a full one leaves as they look, by the least such turn. */
const TURNS: Readonly<Partial<Record<FormId, number>>> = {
  circle: 1,
  oval: 180,
  square: 90,
  oblong: 180,
  diamond: 180,
  star: 72,
  cross: 90,
  pentagon: 72,
  hexagon: 60,
  'sign-dot': 1,
  'sign-upright-line': 180,
  'sign-level-line': 180,
  'sign-ring': 1,
  'sign-plus': 90,
  'sign-oblique-cross': 90,
  'sign-wave': 180,
  'sign-square': 90,
};

/** Forms that their mirror image looks like once it is turned half round. */
const HALF_ROUND =
  'crescent capital-B capital-C capital-D capital-E capital-K small-c numeral-3'.split(' ');

/** Letters, numerals and signs without such a turn. The shapes all have one. */
const ONE_HANDED = 'sign-wave sign-tick'
  .concat(' capital-F capital-G capital-J capital-L capital-N capital-P capital-Q capital-R')
  .concat(
    ' capital-S capital-Z capital-Ñ small-ñ small-a small-b small-d small-e small-f small-g small-h small-j',
  )
  .concat(
    ' small-k small-m small-n small-p small-q small-r small-s small-t small-u small-y small-z',
  )
  .concat(' numeral-1 numeral-2 numeral-4 numeral-5 numeral-6 numeral-7 numeral-9 dots')
  .split(' ');

/**
 * The least turn in whole degrees that leaves the form as it looks; 1 where every turn does (a circle),
 * 360 where only a full one does. For `dots`, which look alike by count and layout, 360.
 */
export function symmetryTurnDeg(form: FormId): number {
  const isUpsideDown = UPSIDE_DOWN.includes(form) || isUpsideDownLetter(form);
  return isUpsideDown ? 180 : (TURNS[form] ?? 360);
}

/**
 * The turn in degrees that makes the form, mirrored left to right, look as it did unmirrored: 0 for a
 * heart, 180 for a crescent, 90 for the leaf, which leans; none for a form such as b, whose mirror image
 * no turn brings back.
 */
export function mirrorTurnDeg(form: FormId): number | undefined {
  if (isPicture(form)) return mirrorTurnOfPicture(form);
  if (isOfScript(form)) return letterMirrorTurnDeg(form);
  if (ONE_HANDED.includes(form)) return undefined;
  if (form === 'leaf') return 90;
  return HALF_ROUND.includes(form) ? 180 : 0;
}

const ownTurns = new Map<OwnForm, number | undefined>();

/** Of a picture of a family's own no turn is looked for: it is the same on both sides as it stands, or not at all. */
function mirrorTurnOfPicture(form: Picture): number | undefined {
  if (!isOwnPicture(form)) return pictureMirrorTurnDeg(form);
  if (!ownTurns.has(form)) ownTurns.set(form, isSameMirrored(form) ? 0 : undefined);
  return ownTurns.get(form);
}

/**
 * The turn in degrees at which a pointing shape stands on the line that its left and right mirror each other
 * about: 90 for a crescent, which opens to the side as it is drawn, 0 for an arrow, which points up.
 */
export function uprightTurnDeg(form: FormId): number {
  return mirrorTurnDeg(form) === 180 ? 90 : 0;
}

/** How a figure lies, in the least terms that look the same. */
export interface Stance {
  /** Degrees clockwise, 0 up to but not including `symmetryTurnDeg`. */
  readonly turn: number;
  /** Only where no turn makes up for the mirroring. */
  readonly mirrored: boolean;
}

/** Signs that are another sign turned, by that sign and its turn in degrees. */
const TURNED_SIGNS: Readonly<Partial<Record<FormId, readonly [form: FormId, turnDeg: number]>>> = {
  'sign-level-line': ['sign-upright-line', 90],
  'sign-oblique-cross': ['sign-plus', 45],
};

/** The same figure told by its plainest form: a level line is an upright one turned by 90 degrees. */
export function plainest(figure: Figure): Figure {
  const [form, turnDeg] = TURNED_SIGNS[formOf(figure)] ?? [];
  if (form === undefined || turnDeg === undefined) return figure;
  return { ...figure, form, turn: ((figure.turn ?? 0) + turnDeg) % 360 };
}

/** How the figure lies: turns and mirrorings that cannot be seen are taken out. */
export function stanceOf(figure: Figure): Stance {
  const form = formOf(figure);
  const { turn = 0, mirrored = false } = figure;
  const period = symmetryTurnDeg(form);
  const back = mirrored ? mirrorTurnDeg(form) : 0;
  return back === undefined
    ? { turn: turn % period, mirrored: true }
    : { turn: (turn - back + 360) % period, mirrored: false };
}
