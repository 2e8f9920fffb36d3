// Which forms are too alike to stand in one task, and how many that are not a pool holds.
import type { Random } from '../base/index.ts';
import { formOf } from './figure.ts';
import {
  type FormId,
  isLetter,
  isNumeral,
  isPicture,
  isShape,
  type Letter,
  type Numeral,
} from './form-names.ts';
import { haveInsides, INSIDE_FLOOR, insideShare } from './insides.ts';
import { characterOf } from './letter-outlines.ts';
import { areMixedUp } from './mixed-up.ts';
import { outlineShare, turnedOutlineShare } from './outline-distance.ts';
import { isOwnPicture } from './own-forms.ts';
import { plainest } from './symmetry.ts';
import { wantedFirst } from './wanted-forms.ts';

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

/** The least share of outline in which the two forms must differ to be told apart fairly. */
export function floorOf(one: FormId, other: FormId): number {
  return isArea(one) && isArea(other) ? SHAPE_FLOOR : LINE_FLOOR;
}

function isArea(form: FormId): boolean {
  return isShape(form) || isPicture(form);
}

const verdicts = new Map<FormId, Map<FormId, boolean>>();

/**
 * Whether the outlines of two forms are alike, or would be once mirrored or turned by quarters, or the forms are easily
 * mixed up. An upright and a level line are not: no pair of turns is told apart earlier (Rudel & Teuber 1963).
 */
export function haveLikeOutlines(one: FormId, other: FormId): boolean {
  if (one === other) return true;
  const ofOne = verdicts.get(one) ?? new Map<FormId, boolean>();
  verdicts.set(one, ofOne);
  const verdict = ofOne.get(other) ?? measureLikeOutlines(one, other);
  ofOne.set(other, verdict);
  return verdict;
}

/**
 * Whether two forms are alike to the eye: outlines of like form, and pictures of a family's own, which are in their own
 * colours, alike inside as well. Where the outline alone is printed, `haveLikeOutlines` tells.
 */
export function areLookAlikes(one: FormId, other: FormId): boolean {
  return haveLikeOutlines(one, other) && !areToldByInsides(one, other);
}

/** Whether two forms of like outlines, one of them a picture of a family's own, are told apart by their insides alone. */
export function areToldByInsides(one: FormId, other: FormId): boolean {
  if (!haveInsides(one, other) || !haveLikeOutlines(one, other)) return false;
  return insideShare(one, other) >= INSIDE_FLOOR;
}

/** The share of outline in which two upright forms differ; where their insides alone tell them apart, of insides. */
export function shareApart(one: FormId, other: FormId): number {
  return areToldByInsides(one, other)
    ? insideShare(one, other)
    : outlineShare({ form: one }, { form: other });
}

function measureLikeOutlines(one: FormId, other: FormId): boolean {
  if (formOf(plainest({ form: one })) === formOf(plainest({ form: other }))) return false;
  const isListed =
    isCharacter(one) && isCharacter(other) && areMixedUp(characterOf(one), characterOf(other));
  return isListed || turnedOutlineShare({ form: one }, { form: other }) < floorOf(one, other);
}

function isCharacter(form: FormId): form is Letter | Numeral {
  return isLetter(form) || isNumeral(form);
}

/**
 * `count` forms of `forms` in random order, no two of them look-alikes; those of the letters that are wanted come before
 * all others. A defect if `forms` holds fewer such than `count` (`mostForms` tells).
 */
export function drawForms<F extends FormId>(
  random: Random,
  forms: readonly F[],
  count: number,
  letters?: string,
): readonly F[] {
  let left = forms;
  const drawn: F[] = [];
  while (drawn.length < count) {
    const needed = count - drawn.length - 1;
    const order = wantedFirst(ownSooner(random, random.shuffle(left)), letters, (form) => form);
    const next = order.find((form) => canHold(unlike(form, left), needed));
    if (next === undefined) {
      throw new Error(`figures › forms: expected 0 to ${mostForms(forms)}, got ${count}`);
    }
    drawn.push(next);
    left = unlike(next, left);
  }
  return drawn;
}

/** Half the time the pictures of a family's own first: among many others they would hardly ever be seen. */
function ownSooner<F extends FormId>(random: Random, forms: readonly F[]): readonly F[] {
  const own = forms.filter((form) => isOwnPicture(form));
  if (own.length === 0 || own.length === forms.length || random.int(0, 1) === 1) return forms;
  return [...own, ...forms.filter((form) => !isOwnPicture(form))];
}

/** Whether `count` of the forms can stand in one task, no two of them look-alikes. */
function canHold(forms: readonly FormId[], count: number): boolean {
  const taken: FormId[] = [];
  for (const form of forms) {
    if (taken.length >= count) break;
    if (taken.every((other) => !areLookAlikes(form, other))) taken.push(form);
  }
  if (taken.length >= count) return true;
  return forms.length >= count && holds(lookAlikesIn(forms), [...forms.keys()], count);
}

/** The most forms of a pool that can stand in one task, no two of them look-alikes. */
export function mostForms(forms: readonly FormId[]): number {
  const alike = lookAlikesIn(forms);
  const all = [...forms.keys()];
  let most = greedyCount(alike, all, all.length);
  while (holds(alike, all, most + 1)) most += 1;
  return most;
}

/** For each form of a pool, by its place, for each other one by its place whether it is a look-alike: 1 or 0. */
type LookAlikes = readonly Uint8Array[];

/** Asked once for each pair, since looking for the largest set asks of a pair over and over. */
function lookAlikesIn(forms: readonly FormId[]): LookAlikes {
  const alike = forms.map(() => new Uint8Array(forms.length));
  for (const [place, form] of forms.entries()) {
    for (const [other, another] of forms.slice(0, place + 1).entries()) {
      if (!areLookAlikes(form, another)) continue;
      for (const [row, column] of [
        [place, other],
        [other, place],
      ] as const) {
        const rowOf = alike[row];
        if (rowOf) rowOf[column] = 1;
      }
    }
  }
  return alike;
}

function areUnlike(alike: LookAlikes, one: number, other: number): boolean {
  return alike[one]?.[other] === 0;
}

/** How many come together, up to `enough`, by taking each form in turn that is unlike all taken. */
function greedyCount(alike: LookAlikes, places: readonly number[], enough: number): number {
  const taken: number[] = [];
  for (const place of places) {
    if (taken.length >= enough) break;
    if (taken.every((other) => areUnlike(alike, place, other))) taken.push(place);
  }
  return taken.length;
}

function unlike<F extends FormId>(form: FormId, forms: readonly F[]): readonly F[] {
  return forms.filter((other) => !areLookAlikes(form, other));
}

/**
 * Whether `count` of the forms at these places can stand together: where taking them in turn does not do, a form with at
 * most one look-alike is always in some largest set; otherwise the form with the most look-alikes is either in or out.
 */
function holds(alike: LookAlikes, places: readonly number[], count: number): boolean {
  if (count <= 0) return true;
  if (places.length < count) return false;
  if (greedyCount(alike, places, count) === count) return true;
  let [worst, fewest] = [-1, places.length];
  for (const place of places) {
    let unlikes = 0;
    for (const other of places) unlikes += areUnlike(alike, place, other) ? 1 : 0;
    if (unlikes >= places.length - 2)
      return holds(alike, unlikeAt(alike, place, places), count - 1);
    if (unlikes < fewest) [worst, fewest] = [place, unlikes];
  }
  const without = places.filter((place) => place !== worst);
  return holds(alike, unlikeAt(alike, worst, places), count - 1) || holds(alike, without, count);
}

function unlikeAt(alike: LookAlikes, place: number, places: readonly number[]): readonly number[] {
  return places.filter((other) => areUnlike(alike, place, other));
}
