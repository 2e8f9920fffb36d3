// The pools that the figures of a key are drawn from, one attribute at a time.
import type { Random } from '../../base/index.ts';
import {
  CAPITALS,
  DOT_LAYOUTS,
  drawForms,
  type Figure,
  type FormId,
  MOST_DOTS,
  NUMERALS,
  roomIn,
  SHAPES,
  SIGNS,
  SMALL_LETTERS,
} from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { drawColours, FIGURE_COLOURS } from '../../palette/index.ts';
import { standOf, THREE_SIZES, TWO_SIZES } from './contents.ts';
import type { Parameters } from './parameters.ts';

/** An attribute that the figures of a key differ in, with the pool that it is drawn from. */
export type Part =
  | 'shape'
  | 'pointing-shape'
  | 'sign'
  | 'numeral'
  | 'capital'
  | 'small-letter'
  | 'turn'
  | 'size'
  | 'colour'
  | 'count'
  | 'layout';

/** All that the drawing of figures must know. */
export interface Brief {
  readonly values: Parameters;
  readonly style: PrintStyle;
  /** Forms that would look like a response. */
  readonly keptOut: readonly FormId[];
}

/** Shapes that most children of three know by sight; others come with longer keys. Common practice, no source. */
const FAMILIAR: readonly FormId[] = [
  'circle',
  'square',
  'triangle',
  'heart',
  'star',
  'crescent',
  'cross',
  'arrow',
  'drop',
  'half-circle',
];
const MOST_FAMILIAR_ENTRIES = 3;

/** Shapes that clearly point, and up when they are not turned. */
export const POINTING: readonly FormId[] = ['arrow', 'triangle', 'drop'];

/** A shape holds a sign if the widest circle in it has at least this radius, as a share of the figure. By eye. */
const SIGN_ROOM = 0.22;

const [UP, RIGHT, DOWN, LEFT] = [0, 90, 180, 270] as const;

/** Fewest dots whose layouts look different enough, and the most that are still seen as a whole. */
const [FEWEST_LAID_DOTS, MOST_LAID_DOTS] = [3, 5];

/**
 * Least ratio of two quantities, by how many the key holds. About 80 % are told apart at 1:2 at three, 1:1.6
 * at four, 1:1.3 at five (Halberda & Feigenson 2008, by the usual model); longer keys are for older children.
 */
const LEAST_RATIOS: Readonly<Record<number, number>> = { 1: 1, 2: 2, 3: 1.5, 4: 1.33 };
const FINEST_RATIO = 1.2;

/** `count` different looks of one attribute; all that the figures share is left out. */
export function drawPart(
  random: Random,
  part: Part,
  brief: Brief,
  count: number,
): readonly Figure[] {
  const { values, style, keptOut } = brief;
  const forms = (pool: readonly FormId[]) =>
    drawForms(
      random,
      pool.filter((form) => !keptOut.includes(form)),
      count,
    ).map((form) => ({ form }));
  switch (part) {
    case 'shape':
      return forms(shapesFor(brief));
    case 'pointing-shape':
      return forms(POINTING.filter((form) => hasRoom(form, values)));
    case 'sign':
      return forms(SIGNS);
    case 'numeral':
      return forms(NUMERALS);
    case 'capital':
      return forms(CAPITALS);
    case 'small-letter':
      return forms(SMALL_LETTERS);
    case 'turn':
      return directions(random, count, values.leftRight).map((turn) => ({ turn }));
    case 'size':
      return (count === THREE_SIZES.length ? THREE_SIZES : TWO_SIZES).map((size) => ({ size }));
    case 'colour':
      return drawColours(random, count, style.print, FIGURE_COLOURS).map((colour) => ({ colour }));
    case 'count':
      // One dot has no layouts: where the layout varies, quantities start with two.
      return quantities(random, count, values.vary === 'layout' ? 2 : 1);
    case 'layout':
      return random.sample(DOT_LAYOUTS, count).map((layout) => ({ layout }));
  }
}

/** What all figures of a key share besides the attributes that they differ in. */
export function drawShared(random: Random, brief: Brief): Figure {
  switch (brief.values.content) {
    case 'direction':
      return { form: random.pick(POINTING.filter((form) => hasRoom(form, brief.values))) };
    case 'size':
      return drawPart(random, 'shape', brief, 1)[0] ?? {};
    case 'colour':
    case 'colour-and-size':
      return { form: 'circle' };
    case 'dot-quantity':
      return { form: 'dots', layout: 'dice' };
    case 'dot-layout':
      return { form: 'dots', count: random.int(FEWEST_LAID_DOTS, MOST_LAID_DOTS) };
    default:
      return {};
  }
}

/** The shapes that fit the length of the key and leave room for the response. */
export function shapesFor({ values }: Brief): readonly FormId[] {
  const pool: readonly FormId[] = values.entries <= MOST_FAMILIAR_ENTRIES ? FAMILIAR : SHAPES;
  return pool.filter((form) => hasRoom(form, values));
}

/** Whether a form can take its response: what a sign is drawn into must not be narrow. */
function hasRoom(form: FormId, values: Parameters): boolean {
  const isDrawnInto = values.response === 'sign' && standOf(values) === 'inside';
  return !isDrawnInto || roomIn({ form }).radius >= SIGN_ROOM;
}

/** Up and down first, since they are told apart before left and right (Rudel & Teuber 1963). */
function directions(random: Random, count: number, leftRight: boolean): readonly number[] {
  const [pair, other] = leftRight
    ? [
        [LEFT, RIGHT],
        [UP, DOWN],
      ]
    : [
        [UP, DOWN],
        [LEFT, RIGHT],
      ];
  return [...pair, ...random.shuffle(other)].slice(0, count);
}

/** Quantities from `least` to the most dots, of which each two are in a fair ratio. */
function quantities(random: Random, count: number, least: number): readonly Figure[] {
  const all = Array.from({ length: MOST_DOTS - least + 1 }, (_, index) => index + least);
  const ratio = LEAST_RATIOS[count] ?? FINEST_RATIO;
  const fair = risingSets(all, count, ratio);
  return random.pick(fair).map((dots) => ({ count: dots }));
}

/** All rising sets of `count` numbers in which each is at least `ratio` times the one before. */
function risingSets(
  numbers: readonly number[],
  count: number,
  ratio: number,
): readonly (readonly number[])[] {
  if (count === 0) return [[]];
  return numbers.flatMap((number) =>
    risingSets(
      numbers.filter((other) => other > number && other >= number * ratio),
      count - 1,
      ratio,
    ).map((rest) => [number, ...rest]),
  );
}
