// The rules by which a field is made, and how many values of each attribute a task draws from.
import { type Attribute, attributesOf, type ContentId, mostValues } from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import type { PartValues } from './task.ts';

export type Rule = PartValues['rule'];

interface Course {
  /** How many different values it has. */
  readonly kinds: number;
  /** The number of the value in a row and column, from 0. */
  readonly at: (row: number, column: number) => number;
}

export const COURSES: Readonly<Record<Rule, Course>> = {
  rows: { kinds: 2, at: (row) => row % 2 },
  columns: { kinds: 2, at: (_, column) => column % 2 },
  checker: { kinds: 2, at: (row, column) => (row + column) % 2 },
  diagonal: { kinds: 3, at: (row, column) => (row + column) % 3 },
  tiles: { kinds: 4, at: (row, column) => 2 * (row % 2) + (column % 2) },
};

/** The rule that an attribute of the content follows: the second may have its own, a third goes with the first. */
export function ruleOf({ rule, second }: PartValues, axis: number): Rule {
  return axis === 1 && second !== 'same' ? second : rule;
}

/** Values drawn of an attribute: those of the field, and others for wrong pieces; fewer are calmer. */
const POOLS: Readonly<Record<Attribute, { readonly alone: number; readonly joined: number }>> = {
  colour: { alone: 6, joined: 5 },
  form: { alone: 7, joined: 5 },
  fill: { alone: 6, joined: 6 },
  count: { alone: 4, joined: 4 },
  // Three sizes keep the smallest large enough; three directions leave left and right apart.
  size: { alone: 3, joined: 3 },
  turn: { alone: 3, joined: 3 },
};

/** How many values of each attribute of the content a task draws from. */
export function poolsOf(content: ContentId, style: PrintStyle): readonly number[] {
  const attributes = attributesOf(content);
  return attributes.map((attribute) => {
    const { alone, joined } = POOLS[attribute];
    return Math.min(
      mostValues(content, attribute, style),
      attributes.length === 1 ? alone : joined,
    );
  });
}
