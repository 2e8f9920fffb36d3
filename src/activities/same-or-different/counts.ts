// How many pairs are the same and how many are not: about half each, by chance, never all and never none.
import { attributesOf } from '../../figures/index.ts';
import type { PairValues } from './task.ts';

export interface Range {
  readonly min: number;
  readonly max: number;
}

type Asked = Pick<PairValues, 'content' | 'pairs' | 'checked'>;

/** How many pairs differ: each checked attribute is what tells at least one apart. */
export function differentRange({ content, pairs, checked }: Asked): Range {
  const least = Math.max(1, Math.ceil(pairs / 2) - 1);
  return { min: Math.max(least, checkedCount({ content, checked })), max: pairs - least };
}

/** The fewest pairs of which each checked attribute tells one apart and the number of those is open. */
export function leastPairs(asked: Pick<Asked, 'content' | 'checked'>): number {
  return 2 * checkedCount(asked);
}

/** How many attributes are checked: no more than the content has. */
function checkedCount({ content, checked }: Pick<Asked, 'content' | 'checked'>): number {
  return Math.min(checked, attributesOf(content).length);
}
