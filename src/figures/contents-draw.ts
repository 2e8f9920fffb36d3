// Draws the figures of a content anew for each task: what they share, and the values they differ in.
import type { Random } from '../base/index.ts';
import { coloursOf, drawColours } from '../palette/index.ts';
import {
  type Attribute,
  type Axis,
  attributesOf,
  type ContentId,
  type FigureStock,
  formsOf,
  mostValues,
  type Space,
  TEXTURES_MIXED_UP,
} from './contents.ts';
import { DOT_CONTROLS, dotsOf, SPREAD_LAYOUTS } from './dot-figures.ts';
import { MOST_DOTS } from './dots.ts';
import { type Figure, formOf, TEXTURES } from './figure.ts';
import type { FormId } from './form-names.ts';
import { drawForms } from './likeness.ts';
import { uprightTurnDeg } from './symmetry.ts';

/**
 * A space of `count` values on each axis, or as many as told of each attribute; an attribute that is not
 * told has one. A defect if more are asked for than `mostValues` or fewer than one. `forms`, some of the
 * content's own, are drawn from where a task has no use for all.
 */
export function drawSpace(
  content: ContentId,
  random: Random,
  count: number | Readonly<Partial<Record<Attribute, number>>>,
  stock: FigureStock,
  forms: readonly FormId[] = formsOf(content),
): Space {
  const base = drawBase(content, random, forms);
  const axes = attributesOf(content).map((attribute): Axis => {
    const wanted = typeof count === 'number' ? count : (count[attribute] ?? 1);
    const most = mostValues(content, attribute, stock);
    if (!Number.isInteger(wanted) || wanted < 1 || wanted > most) {
      throw new Error(`contents › ${content} › ${attribute}: expected 1 to ${most}, got ${wanted}`);
    }
    return { attribute, values: drawValues(attribute, random, wanted, { base, forms, stock }) };
  });
  return { base, axes };
}

/** What all figures share: one form where the form does not differ, and one way for dots to lie. */
function drawBase(content: ContentId, random: Random, forms: readonly FormId[]): Figure {
  const attributes = attributesOf(content);
  if (attributes.includes('count')) return { form: 'dots', layout: random.pick(SPREAD_LAYOUTS) };
  return attributes.includes('form') ? {} : { form: random.pick(forms) };
}

interface Ways {
  readonly base: Figure;
  readonly forms: readonly FormId[];
  readonly stock: FigureStock;
}

function drawValues(
  attribute: Attribute,
  random: Random,
  count: number,
  { base, forms, stock }: Ways,
): readonly Partial<Figure>[] {
  switch (attribute) {
    case 'colour':
      return drawColours(random, count, stock.print, coloursOf(stock)).map((colour) => ({
        colour,
      }));
    case 'form':
      return drawForms(random, forms, count, stock.letters).map((form) => ({ form }));
    case 'size':
      return drawSizes(random, count).map((size) => ({ size }));
    case 'turn':
      return drawTurns(random, count, formOf(base)).map((turn) => ({ turn }));
    case 'count':
      return drawDots(random, count);
    case 'fill':
      return drawTextures(random, count).map((fill) => ({ fill }));
  }
}

/**
 * Ratios of neighbouring sizes by how many sizes there are: the fewer, the wider apart, so that the
 * smallest stays above a quarter. All at least what four-year-olds tell apart in area
 * (`SIZE_RATIO_FLOOR`); the steps above it are common practice, no source.
 */
const SIZE_RATIOS: readonly (readonly number[])[] = [
  [1],
  [1.6, 1.8, 2],
  [1.4, 1.5, 1.6],
  [1.35, 1.4, 1.45],
  [1.32, 1.35],
];

/** `count` sizes, the biggest 1, neighbours in one ratio, in random order. */
export function drawSizes(random: Random, count: number): readonly number[] {
  return sizesApart(random, count, random.pick(SIZE_RATIOS[count - 1] ?? []));
}

/** The same with the smallest as large as it can be, for pages on which room is short. */
export function drawNearSizes(random: Random, count: number): readonly number[] {
  return sizesApart(random, count, Math.min(...(SIZE_RATIOS[count - 1] ?? [])));
}

function sizesApart(random: Random, count: number, ratio: number): readonly number[] {
  const sizes = Array.from({ length: count }, (_, step) => Math.round(1000 / ratio ** step) / 1000);
  return random.shuffle(sizes);
}

/**
 * Sets of upright directions by how many, in degrees clockwise from pointing up. Left and right, which are
 * taken for each other longest, stand together only where all four do; up and down, or one upright and one
 * level, are told apart sooner (Rudel & Teuber 1963, J. Comp. Physiol. Psychol. 56, 892–898).
 */
const DIRECTIONS: readonly (readonly (readonly number[])[])[] = [
  [[0], [90], [180], [270]],
  [
    [0, 180],
    [0, 180],
    [0, 90],
    [0, 270],
    [180, 90],
    [180, 270],
  ],
  [
    [0, 180, 90],
    [0, 180, 270],
  ],
  [[0, 90, 180, 270]],
];

/** `count` turns of a pointing shape, in random order; no oblique ones. */
export function drawTurns(
  random: Random,
  count: number,
  form: FormId = 'arrow',
): readonly number[] {
  const upright = uprightTurnDeg(form);
  const turns = random.pick(DIRECTIONS[count - 1] ?? []).map((turn) => (turn + upright) % 360);
  return random.shuffle(turns);
}

/**
 * The least ratio of two quantities by how many stand in a task: what about 80 % of children tell apart at
 * three (two quantities), four (three) and five (Halberda & Feigenson 2008, by the usual model); more
 * quantities than four leave finer ratios only.
 */
const COUNT_RATIOS = [1, 2, 1.5, 1.33] as const;
const FINEST_COUNT_RATIO = 1.2;

/**
 * Quantities in which ink does not tell the number: either all have the same ink, or all the same dots, by
 * chance, so that neither the ink nor the size of a dot tells it from task to task.
 */
function drawDots(random: Random, count: number): readonly Partial<Figure>[] {
  const control = random.pick(DOT_CONTROLS);
  return drawCounts(random, count).map((dots) => dotsOf(dots, control));
}

/**
 * `count` numbers of dots, `fewest` at least, in random order, all sets alike likely whose neighbours are at
 * least `leastRatio` apart. A defect if there are none (`mostCounts` tells).
 */
export function drawCounts(
  random: Random,
  count: number,
  leastRatio = COUNT_RATIOS[count - 1] ?? FINEST_COUNT_RATIO,
  fewest = 1,
): readonly number[] {
  return random.shuffle(random.pick(countSets(fewest, count, leastRatio)));
}

/** How many numbers of dots stand in a task at most, neighbours at least `leastRatio` (above 1) apart. */
export function mostCounts(leastRatio: number): number {
  let most = 1;
  while (countSets(1, most + 1, leastRatio).length > 0) most += 1;
  return most;
}

/** Every rising row of `count` numbers from `first` to `MOST_DOTS`, each `leastRatio` of the one before. */
function countSets(
  first: number,
  count: number,
  leastRatio: number,
): readonly (readonly number[])[] {
  if (count === 0) return [[]];
  const firsts = Array.from({ length: MOST_DOTS }, (_, index) => index + 1);
  return firsts
    .filter((dots) => dots >= first)
    .flatMap((dots) =>
      countSets(dots * leastRatio, count - 1, leastRatio).map((rest) => [dots, ...rest]),
    );
}

function drawTextures(random: Random, count: number) {
  const kept = random.pick(TEXTURES_MIXED_UP);
  const textures = TEXTURES.filter(
    (texture) => texture === kept || !TEXTURES_MIXED_UP.includes(texture),
  );
  return random.sample(textures, count);
}
