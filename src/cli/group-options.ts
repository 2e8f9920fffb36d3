// The options that make a pack for a group, as children of a recipe.
import {
  type GroupChild,
  LONGEST_NAME,
  MOST_CHILDREN,
  SORTINGS,
  type Sorting,
} from '../sheets/index.ts';
import { Refused } from './failure.ts';
import { choiceOf } from './option-values.ts';

export interface GroupOptions {
  readonly children?: string;
  readonly sorted?: string;
}

const AT = '--children';
/** No ladder has so many steps. */
const MOST_SHIFT = 31;

/** Names with commas between them; +1 or -2 behind a name shifts that child's steps. */
export function childrenOf(written: string): readonly GroupChild[] {
  const names = written.split(',').map((name) => name.trim());
  if (names.length > MOST_CHILDREN) {
    throw new Refused({
      code: 'too-big',
      at: AT,
      got: names.length,
      max: MOST_CHILDREN,
      unit: 'children',
    });
  }
  return names.map(childOf);
}

function childOf(written: string): GroupChild {
  const [, name = '', shift] = /^(.*?)\s*([+-]\d{1,2})?$/u.exec(written) ?? [];
  if (name === '')
    throw new Refused({ code: 'missing', at: AT, expected: 'names with commas between' });
  if (name.length > LONGEST_NAME) {
    const unit = 'characters of a name';
    throw new Refused({ code: 'too-big', at: AT, got: name.length, max: LONGEST_NAME, unit });
  }
  if (shift === undefined) return { name };
  const got = Number(shift);
  if (Math.abs(got) > MOST_SHIFT) {
    throw new Refused({ code: 'out-of-range', at: AT, got, min: -MOST_SHIFT, max: MOST_SHIFT });
  }
  return { name, shift: got };
}

/** What the options say of a group, over what a recipe says. */
export function groupOf(
  { children, sorted }: GroupOptions,
  base: { readonly children?: readonly GroupChild[]; readonly sortedBy?: Sorting } = {},
): typeof base {
  const group = children === undefined ? base.children : childrenOf(children);
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
