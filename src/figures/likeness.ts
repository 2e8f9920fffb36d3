// Which forms are too alike to stand in one task, and how many that are not a pool holds.
import type { Random } from '../base/index.ts';
import { formOf } from './figure.ts';
import {
  type FormId,
  isLetter,
  isNumeral,
  isShape,
  type Letter,
  type Numeral,
} from './form-names.ts';
import { characterOf } from './letter-outlines.ts';
import { turnedOutlineShare } from './outline-distance.ts';
import { plainest } from './symmetry.ts';

/**
 * Least share of outline in which two shapes differ. Just below oval and oblong, or circle and square
 * (0.17), pairs that children match at four (Terman 1916, the ten forms of year IV, from memory); above
 * circle and hexagon (0.08) and pentagon and hexagon (0.11), which need counting of corners.
 */
export const SHAPE_FLOOR = 0.15;

/**
 * Least share where one or both are letters, numerals or signs: thin lines overlap less than areas do.
 * Above b and d turned or mirrored (0.21), n and u (0.11), 6 and 9 (0.07), C and c (0.27), E and F (0.24).
 */
export const LINE_FLOOR = 0.3;

/**
 * Pairs above the floor that children of five still take for each other: from the confusions of
 * beginning readers (Popp 1964, The Reading Teacher 17, 221–226, from memory) and common practice.
 */
const MIXED_UP = new Set(
  'a-o a-q c-e c-o f-t h-n h-u i-j m-n m-w n-r u-v u-y v-w v-y C-G C-O G-O I-l M-W N-Z U-V V-Y'
    .concat(' 0-O 0-o 1-I 1-l 1-7 2-Z 2-z 5-S 5-s 6-G 6-b 9-g 9-q')
    .split(' '),
);

/** The least share of outline in which the two forms must differ to be told apart fairly. */
export function floorOf(one: FormId, other: FormId): number {
  return isShape(one) && isShape(other) ? SHAPE_FLOOR : LINE_FLOOR;
}

const verdicts = new Map<FormId, Map<FormId, boolean>>();

/**
 * Whether two forms are alike, or would be once mirrored or turned by quarters, or are easily mixed up.
 * An upright and a level line are not: no pair of turns is told apart earlier (Rudel & Teuber 1963).
 */
export function areLookAlikes(one: FormId, other: FormId): boolean {
  if (one === other) return true;
  const ofOne = verdicts.get(one) ?? new Map<FormId, boolean>();
  verdicts.set(one, ofOne);
  const verdict = ofOne.get(other) ?? measureLikeness(one, other);
  ofOne.set(other, verdict);
  return verdict;
}

function measureLikeness(one: FormId, other: FormId): boolean {
  if (formOf(plainest({ form: one })) === formOf(plainest({ form: other }))) return false;
  const isListed = isCharacter(one) && isCharacter(other) && areMixedUp(one, other);
  return isListed || turnedOutlineShare({ form: one }, { form: other }) < floorOf(one, other);
}

/** A capital and its own small letter are one letter to a teacher, however unlike they look. */
function areMixedUp(one: Letter | Numeral, other: Letter | Numeral): boolean {
  const [first, second] = [characterOf(one), characterOf(other)];
  return (
    first.toLowerCase() === second.toLowerCase() ||
    MIXED_UP.has(`${first}-${second}`) ||
    MIXED_UP.has(`${second}-${first}`)
  );
}

function isCharacter(form: FormId): form is Letter | Numeral {
  return isLetter(form) || isNumeral(form);
}

/**
 * `count` forms of `forms` in random order, no two of them look-alikes.
 * A defect if `forms` holds fewer such than `count` (`mostForms` tells).
 */
export function drawForms<F extends FormId>(
  random: Random,
  forms: readonly F[],
  count: number,
): readonly F[] {
  let left = forms;
  const drawn: F[] = [];
  while (drawn.length < count) {
    const needed = count - drawn.length - 1;
    const next = random.shuffle(left).find((form) => holds(unlike(form, left), needed));
    if (next === undefined) {
      throw new Error(`figures › forms: expected 0 to ${mostForms(forms)}, got ${count}`);
    }
    drawn.push(next);
    left = unlike(next, left);
  }
  return drawn;
}

/** The most forms of a pool that can stand in one task, no two of them look-alikes. */
export function mostForms(forms: readonly FormId[]): number {
  let most = 0;
  while (holds(forms, most + 1)) most += 1;
  return most;
}

function unlike<F extends FormId>(form: FormId, forms: readonly F[]): readonly F[] {
  return forms.filter((other) => !areLookAlikes(form, other));
}

/**
 * Whether `count` of the forms can stand together: a form with at most one look-alike is always in some
 * largest set; otherwise the form with the most look-alikes is either in or out.
 */
function holds(forms: readonly FormId[], count: number): boolean {
  if (count <= 0) return true;
  if (forms.length < count) return false;
  const crowds = forms.map((form) => ({ form, unlike: unlike(form, forms) }));
  const free = crowds.find((crowd) => crowd.unlike.length >= forms.length - 2);
  if (free) return holds(free.unlike, count - 1);
  const worst = crowds.reduce((most, crowd) =>
    crowd.unlike.length < most.unlike.length ? crowd : most,
  );
  const without = forms.filter((form) => form !== worst.form);
  return holds(worst.unlike, count - 1) || holds(without, count);
}
