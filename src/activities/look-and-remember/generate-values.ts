// Draws the values that the figures of a task take, far from each other or near.
import type { Random } from '../../base/index.ts';
import {
  type Attribute,
  type Axis,
  DOT_CONTROLS,
  directionRelation,
  dotsOf,
  drawCounts,
  drawSizes,
  drawSpace,
  type Figure,
  type FormId,
  formOf,
  type Space,
} from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { compareFigures } from '../figure-comparison.ts';
import { mostOfEach } from './generate-looks.ts';
import type { RememberValues } from './task.ts';

type Value = Partial<Figure>;

/** So many sets of values are drawn, and the one kept that is most alike, or least. */
const DRAWS = 8;
/** Colours, forms and fills are drawn from so many more than are needed. */
const SPARE = 4;
const POOLED: readonly Attribute[] = ['form', 'colour', 'fill'];

/** `counts` values on the axes of the content, in random order. */
export function drawValues(
  { content, likeness }: Pick<RememberValues, 'content' | 'likeness'>,
  counts: readonly number[],
  random: Random,
  style: PrintStyle,
): Space {
  const most = mostOfEach(content, style);
  const pool = drawSpace(content, random, 1, style).axes.map(({ attribute }, axis) => {
    const wanted = (counts[axis] ?? 1) + spareFor(style);
    const isPooled = POOLED.includes(attribute);
    return [attribute, isPooled ? Math.min(most[axis] ?? 1, wanted) : 1] as const;
  });
  const { base, axes } = drawSpace(content, random, Object.fromEntries(pool), style);
  const chosen = axes.map((axis, index): Axis => {
    const shared = Object.assign({}, base, ...axes.map((other) => other.values[0])) as Figure;
    const draw = drawOf(axis, counts[index] ?? 1, formOf(base), random);
    const sets = Array.from({ length: DRAWS }, draw);
    return { attribute: axis.attribute, values: likestOf(sets, shared, likeness) };
  });
  return { base, axes: chosen };
}

/** Letters of a name are not to be left out again. */
function spareFor({ letters }: PrintStyle): number {
  return letters === undefined ? SPARE : 0;
}

/** How to draw one set of `count` values of an attribute. */
function drawOf(
  { attribute, values }: Axis,
  count: number,
  form: FormId,
  random: Random,
): () => readonly Value[] {
  switch (attribute) {
    case 'size':
      return () => drawSizes(random, count).map((size) => ({ size }));
    case 'turn':
      return () => random.shuffle(random.pick(turnSets(form, count))).map((turn) => ({ turn }));
    case 'count': {
      const control = random.pick(DOT_CONTROLS);
      return () => drawCounts(random, count).map((dots) => dotsOf(dots, control));
    }
    default:
      return () => random.sample(values, count);
  }
}

const setsKnown = new Map<string, readonly (readonly number[])[]>();

/** Sets of upright directions of a form in which none is the left-right mirror image of another. */
function turnSets(form: FormId, count: number): readonly (readonly number[])[] {
  const key = `${form} ${count}`;
  const before = setsKnown.get(key);
  if (before) return before;
  const areMirrored = (one: number, other: number) =>
    directionRelation({ form, turn: one }, { form, turn: other }) === 'left-right';
  const sets = subsets([0, 90, 180, 270], count).filter(
    (set) => !set.some((one) => set.some((other) => areMirrored(one, other))),
  );
  setsKnown.set(key, sets);
  return sets;
}

function subsets(turns: readonly number[], count: number): readonly (readonly number[])[] {
  if (count === 0) return [[]];
  return turns.flatMap((turn, index) =>
    subsets(turns.slice(index + 1), count - 1).map((rest) => [turn, ...rest]),
  );
}

/** Of several sets the one whose values are most, or least, easily taken for each other on the mean. */
function likestOf(
  sets: readonly (readonly Value[])[],
  shared: Figure,
  likeness: RememberValues['likeness'],
): readonly Value[] {
  const scores = sets.map((set) => likenessIn(set.map((value) => ({ ...shared, ...value }))));
  const wanted = likeness === 'near' ? Math.max(...scores) : Math.min(...scores);
  return sets[scores.indexOf(wanted)] ?? [];
}

/** In hundredths, as whole numbers, so that sums do not hang on their order. */
function likenessIn(figures: readonly Figure[]): number {
  const nearest = figures.map((one) =>
    Math.max(
      0,
      ...figures.map((other) => (other === one ? 0 : compareFigures(one, other).likeness)),
    ),
  );
  return nearest.reduce((sum, likeness) => sum + Math.round(100 * likeness), 0);
}
