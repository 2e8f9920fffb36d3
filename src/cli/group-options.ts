// The options that make a pack for a group, as children of a recipe.
import { type GroupChild, readChildren, SORTINGS, type Sorting } from '../sheets/index.ts';
import { accepted, Refused } from './failure.ts';
import { choiceOf } from './option-values.ts';

export interface GroupOptions {
  readonly children?: string;
  readonly sorted?: string;
}

/** What the options say of a group, over what a recipe says. */
export function groupOf(
  { children, sorted }: GroupOptions,
  base: { readonly children?: readonly GroupChild[]; readonly sortedBy?: Sorting } = {},
): typeof base {
  const group =
    children === undefined ? base.children : accepted(readChildren(children, '--children'));
  const sortedBy = sorted === undefined ? base.sortedBy : choiceOf(sorted, '--sorted', SORTINGS);
  if (sorted !== undefined && group === undefined) {
    throw new Refused({
      code: 'missing',
      at: '--sorted',
      expected: 'a group (--children "Wren, Moss")',
    });
  }
  return {
    ...(group === undefined ? {} : { children: group }),
    ...(sortedBy === undefined ? {} : { sortedBy }),
  };
}
