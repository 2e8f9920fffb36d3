// Draws the values that the figures of a task take, those of the field first.
import type { Random } from '../../base/index.ts';
import {
  type Attribute,
  type Axis,
  attributesOf,
  type ContentId,
  DOT_CONTROLS,
  directionRelation,
  dotsOf,
  drawCounts,
  drawSpace,
  type Figure,
  type Space,
} from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { poolsOf } from './rules.ts';

/** Three sizes, each so much bigger than the next: a fair ratio, and the smallest stays large enough to see. */
const SIZE_RATIO = 1.35;
/** Up, down and a side: none is the left-right mirror image of another. */
const TURNS = [0, 180, 90] as const;

export function drawStock(content: ContentId, random: Random, style: PrintStyle): Space {
  const counts = poolsOf(content, style);
  const wanted = attributesOf(content).map(
    (attribute, axis) => [attribute, isDrawnHere(attribute) ? 1 : (counts[axis] ?? 1)] as const,
  );
  const { base, axes } = drawSpace(content, random, Object.fromEntries(wanted), style);
  return {
    base,
    axes: axes.map(
      (axis, index): Axis => ({
        attribute: axis.attribute,
        values: drawFew(axis.attribute, base, counts[index] ?? 1, random) ?? axis.values,
      }),
    ),
  };
}

function isDrawnHere(attribute: Attribute): boolean {
  return attribute === 'size' || attribute === 'turn' || attribute === 'count';
}

/** Attributes that have few values, which belong together as they are drawn. */
function drawFew(
  attribute: Attribute,
  base: Figure,
  count: number,
  random: Random,
): Axis['values'] | undefined {
  switch (attribute) {
    case 'size': {
      const sizes = Array.from({ length: count }, (_, step) => SIZE_RATIO ** -step);
      return random.shuffle(sizes).map((size) => ({ size: Math.round(1000 * size) / 1000 }));
    }
    case 'turn': {
      // A crescent opens to the side where other shapes point up: a quarter turn more.
      const isSideways = directionRelation(base, { ...base, turn: 180 }) === 'left-right';
      return random.shuffle(TURNS).map((turn) => ({ turn: isSideways ? (turn + 90) % 360 : turn }));
    }
    case 'count': {
      const control = random.pick(DOT_CONTROLS);
      return drawCounts(random, count).map((dots) => dotsOf(dots, control));
    }
    default:
      return undefined;
  }
}
