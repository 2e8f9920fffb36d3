// The looks that figures can take in a task, and how they are dealt to the places of the first picture.
import type { Random } from '../../base/index.ts';
import {
  type Attribute,
  type Axis,
  attributesOf,
  DOT_CONTROLS,
  directionRelation,
  dotsOf,
  drawSpace,
  type Figure,
  mostValues,
  type Space,
} from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import type { ChangeValues } from './task.ts';

/** For each attribute the number of a value. */
export type Look = readonly number[];

export interface Stock {
  readonly space: Space;
  /** Numbers of the attributes with two values: 0 is the usual one, 1 the rarer, which nothing that changes has. */
  readonly rare: readonly number[];
}

/** Values drawn of an attribute, at most: all different where it alone is looked at, else fewer, which is calmer. */
const MOST_ALONE = 10;
const MOST_JOINED = 6;
/** Colours: more would be nearer to each other. */
const MOST_COLOURS = 6;

/** Ratios of the two sizes, and the upright turns, by how like they are; all fair from four years on. */
const SIZE_RATIOS = { far: [1.6], near: [1.4] } as const;
/** A quarter turn is told apart sooner than up and down (Rudel & Teuber 1963); left and right stay out. */
const RELATIONS = { far: 'across', near: 'up-down' } as const;
const UPRIGHT_TURNS = [0, 90, 180, 270] as const;
/**
 * Pairs of quantities: from 1:2, about 80 % right at three, or from 1:1.5, right as often between four and five
 * (Halberda & Feigenson 2008, Dev. Psychol. 44(5) 1457–1465).
 */
const COUNTS = {
  far: [
    [1, 2],
    [1, 3],
    [1, 4],
    [2, 4],
    [2, 5],
    [2, 6],
    [3, 6],
  ],
  near: [
    [2, 3],
    [3, 5],
    [4, 6],
  ],
} as const;

/** Draws the values of each attribute anew. */
export function drawStock(values: ChangeValues, random: Random, style: PrintStyle): Stock {
  const { content } = values;
  const attributes = attributesOf(content);
  const pools = attributes.map((attribute) => {
    const most = mostValues(content, attribute, style);
    return [attribute, Math.min(most, pooled(attribute, attributes.length))] as const;
  });
  const drawn = drawSpace(content, random, Object.fromEntries(pools), style);
  const axes = drawn.axes.map(
    (axis): Axis => ({
      attribute: axis.attribute,
      values: pairOf(axis.attribute, drawn.base, values, random) ?? axis.values,
    }),
  );
  const rare = axes.flatMap(({ values }, axis) => (values.length === 2 ? [axis] : []));
  return { space: { base: drawn.base, axes }, rare };
}

function pooled(attribute: Attribute, attributes: number): number {
  if (attribute === 'size' || attribute === 'turn' || attribute === 'count') return 1;
  if (attribute === 'colour') return MOST_COLOURS;
  return attributes === 1 ? MOST_ALONE : MOST_JOINED;
}

/** The two values of attributes that have few. */
function pairOf(
  attribute: Attribute,
  base: Figure,
  { likeness }: ChangeValues,
  random: Random,
): Axis['values'] | undefined {
  switch (attribute) {
    case 'size': {
      const ratio = random.pick(SIZE_RATIOS[likeness]);
      return random.shuffle([1, Math.round(1000 / ratio) / 1000]).map((size) => ({ size }));
    }
    case 'turn':
      return random.shuffle(random.pick(turnPairs(base, likeness))).map((turn) => ({ turn }));
    case 'count': {
      const control = random.pick(DOT_CONTROLS);
      return random
        .shuffle(random.pick<readonly number[]>(COUNTS[likeness]))
        .map((dots) => dotsOf(dots, control));
    }
    default:
      return undefined;
  }
}

/** Pairs of upright turns that lie to each other as wanted: which they are hangs on where the form points. */
function turnPairs(
  base: Figure,
  likeness: ChangeValues['likeness'],
): readonly (readonly number[])[] {
  const pairs = UPRIGHT_TURNS.flatMap((turn) =>
    UPRIGHT_TURNS.filter((other) => other > turn).map((other) => [turn, other] as const),
  );
  return pairs.filter(
    ([turn, other]) =>
      directionRelation({ ...base, turn }, { ...base, turn: other }) === RELATIONS[likeness],
  );
}

/**
 * A look for each place: every value of an attribute about equally often, of two values the rarer as often as
 * the usual one once the changes are made.
 */
export function dealLooks(
  { space }: Stock,
  { figures, changes, kind }: ChangeValues,
  random: Random,
): readonly Look[] {
  const leaving = kind === 'swapped' ? 0 : changes;
  const rarer = Math.max(1, Math.floor((figures - leaving) / 2));
  const dealt = space.axes.map(({ values }) => {
    const order = random.shuffle(values.map((_, value) => value));
    const all = Array.from({ length: figures }, (_, index) =>
      values.length === 2 ? Number(index < rarer) : (order[index % order.length] ?? 0),
    );
    return random.shuffle(all);
  });
  return Array.from({ length: figures }, (_, place) => dealt.map((axis) => axis[place] ?? 0));
}
