// Draws the values that the figures of a task take, far from each other or near; any of them may be the model's.
import type { Random } from '../../base/index.ts';
import {
  type Attribute,
  type Axis,
  DOT_CONTROLS,
  dotsOf,
  drawCounts,
  drawSizes,
  drawSpace,
  type Figure,
  formOf,
  type Space,
} from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { compareFigures } from '../figure-comparison.ts';
import { limitsOfAttributes } from './attribute-limits.ts';
import { drawTurnValues } from './generate-turns.ts';
import type { SameValues } from './task.ts';

type AxisValue = Partial<Figure>;

/** So many sets of values are drawn, and the one kept that is most alike, or least. */
const DRAWS = 16;
/** Colours, forms and fills are drawn from so many more than are needed. */
const SPARE = 5;

/** `counts` values on the axes, in random order; with mirrors the second turn is the first one's mirror image. */
export function drawValues(
  values: SameValues,
  counts: readonly number[],
  random: Random,
  style: PrintStyle,
): Space {
  const limits = limitsOfAttributes(values, style);
  const pools = limits.map(({ attribute, most }, axis) => {
    const count = counts[axis] ?? 1;
    return [attribute, isPooled(attribute) ? Math.min(most, count + spareFor(style)) : 1] as const;
  });
  const { base, axes } = drawSpace(values.content, random, Object.fromEntries(pools), style);
  const chosen = axes.map((axis, index): Axis => {
    const draw = drawOf(axis, counts[index] ?? 1, { base, values, random });
    const sets = Array.from({ length: DRAWS }, draw);
    const shared = Object.assign({}, base, ...axes.map((other) => other.values[0]));
    return { attribute: axis.attribute, values: likestOf(sets, shared, values.likeness) };
  });
  return { base, axes: chosen };
}

/** Letters of a name are not to be left out again. */
function spareFor({ letters }: PrintStyle): number {
  return letters === undefined ? SPARE : 0;
}

/** Whether some of many values may stand for all; others belong together as they are drawn. */
function isPooled(attribute: Attribute): boolean {
  return attribute === 'form' || attribute === 'colour' || attribute === 'fill';
}

interface Ways {
  readonly base: Figure;
  readonly values: SameValues;
  readonly random: Random;
}

/** How to draw one set of `count` values of an attribute. */
function drawOf(
  { attribute, values: pool }: Axis,
  count: number,
  { base, values, random }: Ways,
): () => readonly AxisValue[] {
  switch (attribute) {
    case 'size':
      return () => drawSizes(random, count).map((size) => ({ size }));
    case 'count': {
      const control = random.pick(DOT_CONTROLS);
      return () => drawCounts(random, count).map((dots) => dotsOf(dots, control));
    }
    case 'turn':
      return () => drawTurnValues(formOf(base), count, values.mirrors, random);
    default:
      return () => random.sample(pool, count);
  }
}

/**
 * Of several sets the one whose values are most, or least, easily taken for each other on the mean. All values
 * of a set count alike, so that the choice says nothing of which one is the model's.
 */
function likestOf(
  sets: readonly (readonly AxisValue[])[],
  shared: Figure,
  likeness: SameValues['likeness'],
): readonly AxisValue[] {
  const figures = new Map(sets.flat().map((value) => [value, { ...shared, ...value }]));
  const scores = sets.map((set) => likenessIn(set.map((value) => figures.get(value) ?? shared)));
  const wanted = likeness === 'near' ? Math.max(...scores) : Math.min(...scores);
  return sets[scores.indexOf(wanted)] ?? [];
}

/** In hundredths, as whole numbers, so that sums do not hang on their order. */
function likenessIn(figures: readonly Figure[]): number {
  const nearest = figures.map((one) => {
    const others = figures.filter((other) => other !== one);
    return Math.max(0, ...others.map((other) => compareFigures(one, other).likeness));
  });
  return nearest.reduce((sum, likeness) => sum + Math.round(100 * likeness), 0);
}
