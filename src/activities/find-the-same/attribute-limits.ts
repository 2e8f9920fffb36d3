// How many values each attribute of a content can take in a task of find-the-same.
import {
  type Attribute,
  attributesOf,
  MOST_UNMIRRORED_DIRECTIONS,
  mostValues,
} from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import type { SameValues } from './task.ts';

/** What limits the values of one attribute. */
export interface Limit {
  readonly attribute: Attribute;
  readonly most: number;
}

/** The attributes of the content, each with the most values that can stand in one task. */
export function limitsOfAttributes(
  { content, mirrors }: Pick<SameValues, 'content' | 'mirrors'>,
  style: PrintStyle,
): readonly Limit[] {
  return attributesOf(content).map((attribute) => {
    const most = mostValues(content, attribute, style.print);
    const isLimited = attribute === 'turn' && mirrors === 'none';
    return { attribute, most: isLimited ? Math.min(most, MOST_UNMIRRORED_DIRECTIONS) : most };
  });
}
