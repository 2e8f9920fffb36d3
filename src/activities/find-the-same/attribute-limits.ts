// How many values each attribute of a content can take in a task of find-the-same.
import {
  type Attribute,
  attributesOf,
  MOST_UNMIRRORED_DIRECTIONS,
  mostValues,
} from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import type { SameValues } from './task.ts';

/** Of six numbers of dots there is a single fair set, and nothing to draw near ones from. */
const MOST_NEAR_COUNTS = 5;

/** What limits the values of one attribute. */
export interface Limit {
  readonly attribute: Attribute;
  readonly most: number;
}

/** The attributes of the content, each with the most values that can stand in one task. */
export function limitsOfAttributes(
  values: Pick<SameValues, 'content' | 'mirrors' | 'likeness'>,
  style: PrintStyle,
): readonly Limit[] {
  return attributesOf(values.content).map((attribute) => {
    const most = mostValues(values.content, attribute, style);
    return { attribute, most: Math.min(most, mostBeside(attribute, values)) };
  });
}

function mostBeside(
  attribute: Attribute,
  { mirrors, likeness }: Pick<SameValues, 'mirrors' | 'likeness'>,
): number {
  if (attribute === 'turn' && mirrors === 'none') return MOST_UNMIRRORED_DIRECTIONS;
  if (attribute === 'count' && likeness === 'near') return MOST_NEAR_COUNTS;
  return Number.POSITIVE_INFINITY;
}
