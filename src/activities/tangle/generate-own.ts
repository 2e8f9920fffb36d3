// Which pictures of a family's own can lie in a tangle: none that another outline hides, and none found in another.
import type { Random } from '../../base/index.ts';
import {
  type FormId,
  haveLikeOutlines,
  isOwnPicture,
  isPlainLine,
  linePointsOf,
} from '../../figures/index.ts';
import { emptyGrid, isFound, onGrid, stamp } from './generate-raster.ts';
import { closeness } from './task.ts';

/** No outline has more than this of its line along the line of another, as of those that were chosen by hand. */
const MOST_ALONG = 0.6;
/** How many always there are mixed with own ones where these are to be seen, beyond those that are needed. */
const SPARE = 4;

/** The pool with those of `own` that can stand beside all before them. */
export function withOwn(pool: readonly FormId[], own: readonly FormId[]): readonly FormId[] {
  const taken = [...pool];
  for (const form of own) {
    if (isPlainLine({ form }) && taken.every((other) => canLieBeside(form, other)))
      taken.push(form);
  }
  return taken;
}

function canLieBeside(one: FormId, other: FormId): boolean {
  return !haveLikeOutlines(one, other) && !isIn(one, other) && !isIn(other, one);
}

/** Whether much of an outline is found along the line of another, wherever it is laid on it. */
function isIn(one: FormId, other: FormId): boolean {
  const near = closeness({ form: one });
  const side = Math.ceil(3 / near);
  const [line, along] = [one, other].map((form) => onGrid(linePointsOf({ form }, near), near));
  if (!line || !along) return false;
  const grid = emptyGrid(side, side);
  stamp(grid, along, side, side);
  return isFound(grid, line, MOST_ALONG);
}

/** Half the time own pictures among a few others, since among many they would hardly ever be seen. */
export function ownSeen(
  forms: readonly FormId[],
  needed: number,
  random: Random,
): readonly FormId[] {
  const own = forms.filter(isOwnPicture);
  if (own.length === 0 || own.length === forms.length || random.int(0, 1) === 1) return forms;
  const others = forms.filter((form) => !isOwnPicture(form));
  const count = Math.min(others.length, Math.max(0, needed + SPARE - own.length));
  return [...own, ...random.sample(others, count)];
}
