// The children of a group as a person writes them down: names with commas or line ends between.
import { accept, type Refusal, type Result, refuse, told } from '../base/index.ts';
import { type GroupChild, LONGEST_NAME, MOST_CHILDREN, MOST_SHIFT } from './recipe.ts';

/** +1 or -2 behind a name shifts that child's steps. Refuses what no group can be made of; `at` names the place. */
export function readChildren(written: string, at: string): Result<readonly GroupChild[]> {
  const names = written
    .split(/[,\n]/)
    .map((name) => name.trim())
    .filter((name) => name !== '');
  if (names.length === 0) {
    return refuse({ code: 'missing', at, expected: told('reasons', 'expected.names') });
  }
  if (names.length > MOST_CHILDREN) {
    const [got, max] = [names.length, MOST_CHILDREN];
    return refuse({ code: 'too-big', at, got, max, unit: told('reasons', 'amount.children') });
  }
  const children = names.map(childOf);
  const refusals = children.flatMap((child) => refusalsOfChild(child, at));
  return refusals.length > 0 ? refuse(...refusals) : accept(children);
}

function childOf(written: string): GroupChild {
  const [, name = written, shift] = /^(.*\S)\s*([+-]\d{1,2})$/u.exec(written) ?? [];
  return { name, ...(shift === undefined ? {} : { shift: Number(shift) }) };
}

function refusalsOfChild({ name, shift = 0 }: GroupChild, at: string): readonly Refusal[] {
  const [min, max] = [-MOST_SHIFT, MOST_SHIFT];
  return [
    ...longNameRefusals(name, at),
    ...(Math.abs(shift) > max ? [{ code: 'out-of-range', at, got: shift, min, max } as const] : []),
  ];
}

/** Why a text is too long for a name; none where it is not. */
export function longNameRefusals(name: string, at: string): readonly Refusal[] {
  if (name.length <= LONGEST_NAME) return [];
  const unit = told('reasons', 'amount.characters.name');
  return [{ code: 'too-big', at, got: name.length, max: LONGEST_NAME, unit }];
}
