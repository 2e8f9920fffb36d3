// Which forms a task can ask for, and which can stand beside them: none that another becomes when it is turned.
import type { Random } from '../../base/index.ts';
import {
  areLookAlikes,
  drawForms,
  type FormId,
  floorOf,
  formsKey,
  formsOf,
  isOwnPicture,
  isWantedForm,
  measureOutlineShare,
  mirrorTurnDeg,
  mostForms,
  symmetryTurnDeg,
  TURN_FLOOR_DEG,
  turnedOutlineShare,
} from '../../figures/index.ts';
import type { TurnedContent, TurnedValues } from './task.ts';

/** By how many degrees clockwise a right choice may be turned. */
export const TURNS: Readonly<Record<TurnedValues['turn'], readonly number[]>> = {
  none: [0],
  quarter: [90, 270],
  half: [180],
  eighth: [45, 135, 225, 315],
};

/**
 * Pairs of shapes that share all but 0.15 of their outlines at some turn, measured in steps of 15 degrees, beyond
 * those that are alike at quarter turns; the square, which children call a diamond when it stands on a corner; and
 * signs of which each is the other one turned.
 */
const ALIKE_TURNED: readonly (readonly FormId[])[] = [
  ['oval', 'leaf'],
  ['diamond', 'leaf'],
  ['drop', 'leaf'],
  ['diamond', 'drop'],
  ['square', 'diamond'],
  ['sign-upright-line', 'sign-level-line'],
  ['sign-plus', 'sign-oblique-cross'],
];

/**
 * Letters and numerals that may be turned: at every quarter turn their outline is at least 0.33 away from every
 * other upright letter or numeral of the script, capitals and small ones, measured; left out by hand are those
 * that readers take for another all the same (M and W, N and Z, C and U, Σ and M), and those that hardly change.
 */
const TURNED_CHARACTERS: Readonly<Partial<Record<TurnedContent, string>>> = {
  capitals: 'KRY',
  'small-letters': 'krty',
  numerals: '47',
  'cyrillic-capitals': 'АГДЁЛМРТУЫЮ',
  'cyrillic-small': 'бдёлмтуы',
  'greek-capitals': 'ΚΡ',
  'greek-small': 'βδζκμξπτ',
  'devanagari-letters': 'आइईउऊएऐकखगङचछजझञटढणतदनफभरलशसह',
  'arabic-letters': 'درسصطعكلمهو',
};

const EVEN_SHARE = 0.15;
/** Pictures whose outline some turn changes by no more than `EVEN_SHARE`, and the ball: they hardly look turned. */
const EVEN_PICTURES = ['frog', 'ball', 'clover', 'pencil', 'bus', 'strawberry'];

/** Other forms are drawn from so many more than are needed, at the near or the far end. */
const SPARE = 2;

/** Least share of outline in which a picture differs from its mirror image where that is asked for; by eye. */
const MIRRORED_FLOOR = 0.25;

/** Signs that a turn makes another sign, or a shape with a name of its own. */
const NAMED_TURNED: readonly FormId[] = [
  'sign-upright-line',
  'sign-level-line',
  'sign-plus',
  'sign-oblique-cross',
  'sign-square',
  'square',
  'cross',
];

type Wanted = Pick<TurnedValues, 'content' | 'turn' | 'mirrors'>;

const models = new Map<string, readonly FormId[]>();

/** The forms that a task can ask for: turned, they are seen to be, and are no other form. */
export function modelForms(wanted: Wanted): readonly FormId[] {
  const key = `${formsKey(wanted.content)} ${wanted.turn} ${wanted.mirrors}`;
  const known = models.get(key);
  if (known) return known;
  const forms = formsOf(wanted.content).filter((form) => canBeModel(form, wanted));
  models.set(key, forms);
  return forms;
}

/** Those that are letters of a name, where some are. */
export function wantedForms(
  forms: readonly FormId[],
  letters: string | undefined,
): readonly FormId[] {
  const wanted = forms.filter((form) => isWantedForm(form, letters));
  return wanted.length > 0 ? wanted : forms;
}

function canBeModel(form: FormId, { content, turn, mirrors }: Wanted): boolean {
  if (mirrors && !isSeenMirrored(form)) return false;
  if (turn === 'none') return true;
  const characters = TURNED_CHARACTERS[content];
  if (characters && ![...characters].some((one) => form.endsWith(`-${one}`))) return false;
  if (EVEN_PICTURES.some((name) => form === `picture-${name}`)) return false;
  const isNamed = NAMED_TURNED.includes(form) && turn !== 'half';
  if (isOwnPicture(form) && TURNS[turn].some((degrees) => isEven(form, degrees))) return false;
  return !isNamed && TURNS[turn].every((degrees) => isSeen(form, degrees));
}

/** Whether a turn changes the outline of a picture so little that it hardly looks turned. */
function isEven(form: FormId, turn: number): boolean {
  return measureOutlineShare({ form }, { form, turn }) <= EVEN_SHARE;
}

/** Whether the form and its mirror image, however they are turned by quarters, differ enough to be seen. */
function isSeenMirrored(form: FormId): boolean {
  if (mirrorTurnDeg(form) !== undefined) return false;
  const shares = [0, 90, 180, 270].map((turn) =>
    measureOutlineShare({ form }, { form, turn, mirrored: true }),
  );
  return Math.min(...shares) >= Math.max(MIRRORED_FLOOR, floorOf(form, form));
}

/** Whether the turn, less what the form's symmetry takes out of it, is as much as children tell apart. */
function isSeen(form: FormId, degrees: number): boolean {
  const period = symmetryTurnDeg(form);
  const rest = degrees % period;
  return Math.min(rest, period - rest) >= TURN_FLOOR_DEG;
}

const others = new Map<string, readonly FormId[]>();

/** The forms of a content that can stand beside a model, the likest first. */
function otherForms(content: TurnedContent, model: FormId): readonly FormId[] {
  const key = `${formsKey(content)} ${model}`;
  const known = others.get(key);
  if (known) return known;
  const shares = new Map(
    formsOf(content)
      .filter((form) => !areLookAlikes(form, model) && !isListedPair(form, model))
      .map((form) => [form, turnedOutlineShare({ form }, { form: model })]),
  );
  const sorted = [...shares.keys()].sort((a, b) => (shares.get(a) ?? 0) - (shares.get(b) ?? 0));
  others.set(key, sorted);
  return sorted;
}

function isListedPair(one: FormId, other: FormId): boolean {
  return ALIKE_TURNED.some((pair) => pair.includes(one) && pair.includes(other));
}

/** The forms without one of each listed pair that is whole; `isFirst` says which one goes. */
function parted(forms: readonly FormId[], isFirst: (pair: number) => boolean): readonly FormId[] {
  let left = forms;
  for (const [index, pair] of ALIKE_TURNED.entries()) {
    const gone = pair[isFirst(index) ? 0 : 1];
    if (pair.every((form) => left.includes(form))) left = left.filter((form) => form !== gone);
  }
  return left;
}

const fewest = new Map<string, number>();

/** How many other forms can stand beside a model, whichever of each listed pair goes. */
export function mostOthers(content: TurnedContent, model: FormId): number {
  const key = `${formsKey(content)} ${model}`;
  const known = fewest.get(key);
  if (known !== undefined) return known;
  const pool = otherForms(content, model);
  const ways = Array.from({ length: 2 ** ALIKE_TURNED.length }, (_, bits) => bits);
  const pools = ways.map((bits) => parted(pool, (pair) => Math.floor(bits / 2 ** pair) % 2 === 0));
  const most = Math.min(...[...new Set(pools.map((forms) => forms.join()))].map(mostIn));
  fewest.set(key, most);
  return most;
}

function mostIn(forms: string): number {
  return mostForms(forms.split(',') as FormId[]);
}

/** `count` other forms, at most `mostOthers`, no two alike however they are turned, from the near or the far end. */
export function drawOthers(
  { content, likeness }: Pick<TurnedValues, 'content' | 'likeness'>,
  model: FormId,
  count: number,
  random: Random,
): readonly FormId[] {
  const pool = parted(otherForms(content, model), () => random.int(0, 1) === 0);
  let length = Math.min(pool.length, count + SPARE);
  const windowOf = () => (likeness === 'near' ? pool.slice(0, length) : pool.slice(-length));
  while (length < pool.length && mostForms(windowOf()) < count) length += 1;
  return drawForms(random, windowOf(), count);
}
