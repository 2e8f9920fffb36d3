// Whether two figures have one form up to turn and size, may be taken to have, or are named otherwise when turned.
import {
  areLookAlikes,
  CAPITALS,
  characterOf,
  type Figure,
  type FormId,
  floorOf,
  formOf,
  isLetter,
  isNumeral,
  isShape,
  LINE_FLOOR,
  measureOutlineShare,
  mirrorTurnDeg,
  NUMERALS,
  plainest,
  SCRIPT_LETTERS,
  SMALL_LETTERS,
  stanceOf,
} from '../../figures/index.ts';

/** At these turns in degrees an outline is laid on another; finer ones change little. */
const TURNS = [0, 45, 90, 135, 180, 225, 270, 315];

/** Pairs of which each becomes the other when turned a quarter or half round. */
const TURN_INTO = 'MW NZ mw nu nz bq dp 69 CU'.split(' ');

/** Signs and shapes that have another name when they are turned, however little: a square is a diamond, a plus a cross. */
const NAMED_TURNED: readonly FormId[] = [
  'square',
  'sign-square',
  'cross',
  'sign-plus',
  'sign-upright-line',
];

/** The form and whether it is mirrored; of signs that are another one turned, of that one. */
function handedForm(figure: Figure): { readonly form: FormId; readonly isMirrored: boolean } {
  const plain = plainest(figure);
  const form = formOf(plain);
  const isMirrored = mirrorTurnDeg(form) === undefined && (plain.mirrored ?? false);
  return { form, isMirrored };
}

export function isSameForm(one: Figure, other: Figure): boolean {
  const [first, second] = [handedForm(one), handedForm(other)];
  return first.form === second.form && first.isMirrored === second.isMirrored;
}

/** Whether a child may take one for the other, turned: a mirror image it is not told of, or forms too alike. */
export function mayBeTaken(one: Figure, other: Figure, isTold: boolean): boolean {
  const [first, second] = [handedForm(one), handedForm(other)];
  if (first.form === second.form) {
    return first.isMirrored !== second.isMirrored && (!isTold || fitsMirrored(first.form));
  }
  return areAlike(first.form, second.form);
}

const verdicts = new Map<string, boolean>();

function areAlike(one: FormId, other: FormId): boolean {
  const key = [one, other].sort().join(' ');
  const known = verdicts.get(key);
  if (known !== undefined) return known;
  const verdict = areNamedAlike(one, other) || areLookAlikes(one, other) || fitsTurned(one, other);
  verdicts.set(key, verdict);
  return verdict;
}

/** A square on its corner is a diamond to children, whatever their outlines. */
function areNamedAlike(one: FormId, other: FormId): boolean {
  return [one, other].includes('square') && [one, other].includes('diamond');
}

/** At some turn the outlines share all but what is fair; slants count for shapes, which alone are slanted. */
function fitsTurned(one: FormId, other: FormId): boolean {
  if (!isShape(one) || !isShape(other)) return false;
  const shares = TURNS.map((turn) => measureOutlineShare({ form: one }, { form: other, turn }));
  return Math.min(...shares) < floorOf(one, other);
}

const mirrored = new Map<FormId, boolean>();

/** At some quarter turn the form shares all but what is fair with its mirror image, as a rabbit's head does. */
function fitsMirrored(form: FormId): boolean {
  const known = mirrored.get(form);
  if (known !== undefined) return known;
  const shares = TURNS.filter((turn) => turn % 90 === 0).map((turn) =>
    measureOutlineShare({ form }, { form, mirrored: true, turn }),
  );
  const verdict = Math.min(...shares) < floorOf(form, form);
  mirrored.set(form, verdict);
  return verdict;
}

const becoming = new Map<string, boolean>();

/** Whether the model, turned as the choice is, is written like another letter or numeral, or has another name. */
export function becomesOther(model: Figure, choice: Figure): boolean {
  const [stance, turned] = [stanceOf(plainest(model)), stanceOf(plainest(choice))];
  const form = formOf(model);
  const turn = (turned.turn - stance.turn + 360) % 360;
  if (turn === 0) return false;
  if (NAMED_TURNED.includes(formOf(plainest(model)))) return true;
  if (!isLetter(form) && !isNumeral(form)) return false;
  const key = `${form} ${turn}`;
  const known = becoming.get(key);
  if (known !== undefined) return known;
  const verdict = scriptOf(form).some((other) => isWrittenLike(form, turn, other));
  becoming.set(key, verdict);
  return verdict;
}

function isWrittenLike(form: FormId, turn: number, other: FormId): boolean {
  const [character, otherCharacter] = [characterIn(form), characterIn(other)];
  if (character.toLowerCase() === otherCharacter.toLowerCase()) return false;
  const isListed = TURN_INTO.some(
    (pair) => pair.includes(character) && pair.includes(otherCharacter),
  );
  return isListed || measureOutlineShare({ form, turn }, { form: other }) < LINE_FLOOR;
}

function characterIn(form: FormId): string {
  return isLetter(form) || isNumeral(form) ? characterOf(form) : '';
}

/** All letters of the script of a letter, and for Latin ones the numerals. */
function scriptOf(form: FormId): readonly FormId[] {
  if (!form.startsWith('letter-')) return [...CAPITALS, ...SMALL_LETTERS, ...NUMERALS];
  const scripts = [
    [...SCRIPT_LETTERS['cyrillic-capitals'], ...SCRIPT_LETTERS['cyrillic-small']],
    [...SCRIPT_LETTERS['greek-capitals'], ...SCRIPT_LETTERS['greek-small']],
    SCRIPT_LETTERS['devanagari-letters'],
    SCRIPT_LETTERS['arabic-letters'],
  ];
  return scripts.find((letters) => letters.some((letter) => letter === form)) ?? [];
}
