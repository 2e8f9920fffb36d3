// The options that make a pack for a group, as children of a recipe.
import { type GroupChild, readChildren, SORTINGS, type Sorting } from '../sheets/index.ts';
import { accepted, Refused } from './failure.ts';
import { choiceOf } from './option-values.ts';

export interface GroupOptions {
  readonly children?: string;
  readonly sorted?: string;
  readonly ownLetters?: boolean;
}

/** What the options say of a group, over what a recipe says. */
export function groupOf(
  { children, sorted, ownLetters }: GroupOptions,
  base: {
    readonly children?: readonly GroupChild[];
    readonly sortedBy?: Sorting;
    readonly ownLetters?: boolean;
  } = {},
): typeof base {
  const group =
    children === undefined ? base.children : accepted(readChildren(children, '--children'));
  const sortedBy = sorted === undefined ? base.sortedBy : choiceOf(sorted, '--sorted', SORTINGS);
  const needing = sorted === undefined ? (ownLetters ? '--own-letters' : undefined) : '--sorted';
  if (needing !== undefined && group === undefined) {
    throw new Refused({
      code: 'missing',
      at: needing,
      expected: 'a group (--children "Wren, Moss")',
    });
  }
  return {
    ...(group === undefined ? {} : { children: group }),
    ...(sortedBy === undefined ? {} : { sortedBy }),
    ...((ownLetters ?? base.ownLetters) ? { ownLetters: true } : {}),
  };
}
