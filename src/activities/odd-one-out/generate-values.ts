// Draws what figures look like in one attribute: a pair that tells the odd one, or values that say nothing.
import type { Random } from '../../base/index.ts';
import {
  type Attribute,
  type ContentId,
  DOT_CONTROLS,
  dotsOf,
  drawCounts,
  drawForms,
  type Figure,
  type FormId,
  formsOf,
  mostValues,
  NEAR_TEXTURES,
  pairLikeness,
  SHAPES,
  SPREAD_LAYOUTS,
  type Texture,
  uprightTurnDeg,
} from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import {
  type ColourName,
  coloursOf,
  drawColours,
  FAIR_DE00,
  worstDifferenceDe00,
} from '../../palette/index.ts';
import type { Parameters } from './task.ts';
import type { IdleAttribute } from './varying.ts';

export type Look = Partial<Figure>;
/** Two looks, the one of most figures and the one of the odd figure, in either order. */
type Pair = readonly [Look, Look];

/** What a draw hangs on. */
export interface Ways {
  readonly content: ContentId;
  /** The form that all figures share, where the content looks at another attribute. */
  readonly form: FormId | undefined;
  readonly likeness: Parameters['likeness'];
  readonly mirrors: boolean;
  readonly vary: boolean;
  readonly style: PrintStyle;
}

/** The look of most figures in an attribute, then that of the odd one. */
export function drawPair(attribute: Attribute, ways: Ways, random: Random): Pair {
  const pair = pairOf(attribute, ways, random);
  return random.pick([pair, [pair[1], pair[0]]]);
}

function pairOf(attribute: Attribute, ways: Ways, random: Random): Pair {
  switch (attribute) {
    case 'colour':
      return colourPair(ways, random);
    case 'form':
      return formPair(ways, random);
    case 'size':
      return [{ size: 1 }, { size: sizeBelow(random.pick(SIZE_RATIOS[ways.likeness])) }];
    case 'turn':
      return asPair(random.pick(turnPairs(ways)), (turn) => ({ turn }));
    case 'count':
      return countPair(ways, random);
    case 'fill':
      return asPair(
        random.pick(ways.likeness === 'near' ? NEAR_TEXTURES : FAR_TEXTURES),
        (fill) => ({ fill }),
      );
  }
}

type ColourPair = readonly [ColourName, ColourName];

/** Near: the third of all fair pairs that differs least. Far: as colours of a task are drawn. */
function colourPair({ likeness, style }: Ways, random: Random): Pair {
  const from = coloursOf(style);
  const names =
    likeness === 'near'
      ? random.pick(nearColours(from))
      : drawColours(random, 2, style.print, from);
  return [{ colour: names[0] }, { colour: names[1] }];
}

function nearColours(from: readonly ColourName[]): readonly ColourPair[] {
  const pairs = from.flatMap((one, index) =>
    from.slice(index + 1).map((other): ColourPair => [one, other]),
  );
  // To a tenth, so that the order does not hang on a last digit.
  const apart = (pair: ColourPair) => Math.round(10 * worstDifferenceDe00(...pair)) / 10;
  const fair = pairs.filter((pair) => worstDifferenceDe00(...pair) >= FAIR_DE00);
  const sorted = [...fair].sort((one, other) => apart(one) - apart(other));
  return sorted.slice(0, Math.ceil(sorted.length / 3));
}

/** So many forms are drawn, of which the least or the most alike are taken. */
const FORM_DRAWS = 5;

function formPair({ content, likeness, style }: Ways, random: Random): Pair {
  const draws = style.letters === undefined ? FORM_DRAWS : 2;
  const count = Math.min(draws, mostValues(content, 'form', style));
  const forms = drawForms(random, formsOf(content), count, style.letters).map((form) => ({ form }));
  const pairs = forms.flatMap((one, index) =>
    forms.slice(index + 1).map((other): Pair => [one, other]),
  );
  const isBetter = (pair: Pair, than: Pair) =>
    likeness === 'near'
      ? pairLikeness(...pair) > pairLikeness(...than)
      : pairLikeness(...pair) < pairLikeness(...than);
  return pairs.reduce((best, pair) => (isBetter(pair, best) ? pair : best));
}

/** Ratios of lengths, all above what four-year-olds tell apart in area (`SIZE_RATIO_FLOOR`). */
const SIZE_RATIOS = { far: [1.6, 1.7, 1.8], near: [1.35, 1.4, 1.45] } as const;
/** The ratio of two sizes that say nothing. */
const IDLE_SIZE_RATIO = 1.6;

/** The least size that is drawn, which the others must leave room for. */
export const LEAST_SIZE_DRAWN = { far: sizeBelow(1.8), near: sizeBelow(IDLE_SIZE_RATIO) } as const;

function sizeBelow(ratio: number): number {
  return Math.round(1000 / ratio) / 1000;
}

type TurnPair = readonly [number, number];

/**
 * Turns from pointing up, in degrees clockwise. Upright against level is told apart first, then up and down
 * (Rudel & Teuber 1963, J. Comp. Physiol. Psychol. 56, 892–898); left and right, and slants like in a mirror,
 * only where they are asked for.
 */
const TURN_PAIRS: Readonly<Record<'far' | 'near' | 'mirrors', readonly TurnPair[]>> = {
  far: [
    [0, 90],
    [0, 270],
    [180, 90],
    [180, 270],
  ],
  near: [[0, 180]],
  mirrors: [
    [90, 270],
    [45, 315],
    [135, 225],
  ],
};

function turnPairs({ form = 'arrow', likeness, mirrors }: Ways): readonly TurnPair[] {
  const stands = (turn: number) => (turn + uprightTurnDeg(form)) % 360;
  const pairs = TURN_PAIRS[mirrors ? 'mirrors' : likeness];
  return pairs.map(([one, other]): TurnPair => [stands(one), stands(other)]);
}

/** Numbers of dots: far ones two to one or more; near ones at least four to three. */
const NEAR_COUNTS = [
  [2, 3],
  [3, 4],
  [3, 5],
  [4, 6],
] as const;
/** Without one dot, which lies in the middle however the others lie. */
const FAR_COUNTS = [
  [2, 4],
  [2, 5],
  [2, 6],
  [3, 6],
] as const;

function countPair({ likeness, vary }: Ways, random: Random): Pair {
  const far = vary ? random.pick(FAR_COUNTS) : drawCounts(random, 2);
  const [one = 2, other = 4] = likeness === 'near' ? random.pick(NEAR_COUNTS) : far;
  const control = random.pick(DOT_CONTROLS);
  return [dotsOf(one, control), dotsOf(other, control)];
}

/** Textures that have little in common; by eye. Near ones are of one family. */
const FAR_TEXTURES: readonly (readonly [Texture, Texture])[] = [
  ['upright-stripes', 'spots'],
  ['level-stripes', 'spots'],
  ['slanted-stripes', 'checks'],
  ['level-stripes', 'checks'],
  ['spots', 'zigzag'],
  ['spots', 'bricks'],
  ['spots', 'checks'],
  ['waves', 'checks'],
];

function asPair<T>([one, other]: readonly [T, T], lookOf: (value: T) => Look): Pair {
  return [lookOf(one), lookOf(other)];
}

/** A look for each of `count` groups of figures; where there are fewer looks than groups, they take turns. */
export function drawIdle(
  attribute: IdleAttribute,
  count: number,
  ways: Ways,
  random: Random,
): readonly Look[] {
  switch (attribute) {
    case 'colour':
      return drawColours(random, count, ways.style.print, coloursOf(ways.style)).map((colour) => ({
        colour,
      }));
    case 'form':
      return drawForms(random, idleForms(ways.content), count, ways.style.letters).map((form) => ({
        form,
      }));
    case 'size':
      return alternating(
        random.shuffle([{ size: 1 }, { size: sizeBelow(IDLE_SIZE_RATIO) }]),
        count,
      );
    case 'turn':
      return alternating(
        asPair(random.pick(turnPairs(ways)), (turn) => ({ turn })),
        count,
      );
    case 'layout':
      return random.sample(SPREAD_LAYOUTS, count).map((layout) => ({ layout }));
    default:
      throw new Error(`odd-one-out › vary: ${attribute} says something wherever it changes`);
  }
}

/** Where forms are not what is looked at, dots of colour take other shapes too. */
function idleForms(content: ContentId): readonly FormId[] {
  const forms = formsOf(content);
  return forms.length > 1 ? forms : SHAPES;
}

function alternating<T>(values: readonly T[], count: number): readonly T[] {
  return Array.from({ length: count }, (_, index) => values[index % values.length] as T);
}
