// Which forms a task can ask for, and which can stand beside them: none that another becomes when it is turned.
import {
  areLookAlikes,
  type FormId,
  formOf,
  formsOf,
  isShape,
  mirrorTurnDeg,
  plainest,
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
 * those that are alike at quarter turns; and the square, which children call a diamond when it stands on a corner.
 */
const ALIKE_TURNED: readonly (readonly FormId[])[] = [
  ['oval', 'leaf'],
  ['diamond', 'leaf'],
  ['drop', 'leaf'],
  ['diamond', 'drop'],
  ['square', 'diamond'],
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

/** Pictures as round or as even in outline, upright and turned, that in one colour a turn is hardly seen. */
const EVEN_PICTURES = ['frog', 'ball', 'clover', 'bus', 'pencil', 'snail', 'cake'];

/** Signs that a turn makes another sign, or a shape with a name of its own. */
const NAMED_TURNED = [
  'sign-upright-line',
  'sign-level-line',
  'sign-plus',
  'sign-oblique-cross',
].concat(['sign-square', 'square', 'cross']);

type Wanted = Pick<TurnedValues, 'content' | 'turn' | 'mirrors'>;

const models = new Map<string, readonly FormId[]>();

/** The forms that a task can ask for: turned, they are seen to be, and are no other form. */
export function modelForms(wanted: Wanted): readonly FormId[] {
  const key = `${wanted.content} ${wanted.turn} ${wanted.mirrors}`;
  const known = models.get(key);
  if (known) return known;
  const forms = formsOf(wanted.content).filter((form) => canBeModel(form, wanted));
  models.set(key, forms);
  return forms;
}

function canBeModel(form: FormId, { content, turn, mirrors }: Wanted): boolean {
  if (mirrors && mirrorTurnDeg(form) !== undefined) return false;
  if (turn === 'none') return true;
  const characters = TURNED_CHARACTERS[content];
  if (characters && ![...characters].some((one) => form.endsWith(`-${one}`))) return false;
  if (EVEN_PICTURES.some((name) => form === `picture-${name}`)) return false;
  const isNamed = NAMED_TURNED.includes(form) && turn !== 'half';
  return !isNamed && TURNS[turn].every((degrees) => isSeen(form, degrees));
}

/** Whether the turn, less what the form's symmetry takes out of it, is as much as children tell apart. */
function isSeen(form: FormId, degrees: number): boolean {
  const period = symmetryTurnDeg(form);
  const rest = degrees % period;
  return Math.min(rest, period - rest) >= TURN_FLOOR_DEG;
}

const others = new Map<FormId, readonly FormId[]>();

/** The forms of a content that can stand beside a model, the likest first. */
export function otherForms(content: TurnedContent, model: FormId): readonly FormId[] {
  const known = others.get(model);
  if (known) return known;
  const shares = new Map(
    formsOf(content)
      .filter((form) => isOther(form, model))
      .map((form) => [form, turnedOutlineShare({ form }, { form: model })]),
  );
  const sorted = [...shares.keys()].sort((a, b) => (shares.get(a) ?? 0) - (shares.get(b) ?? 0));
  others.set(model, sorted);
  return sorted;
}

function isOther(form: FormId, model: FormId): boolean {
  const plain = (one: FormId) => formOf(plainest({ form: one }));
  if (form === model || plain(form) === plain(model) || areLookAlikes(form, model)) return false;
  const isListed = ALIKE_TURNED.some((pair) => pair.includes(form) && pair.includes(model));
  return !(isShape(form) && isListed);
}
