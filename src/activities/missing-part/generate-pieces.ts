// Chooses wrong pieces: quite unlike the right one, or right but for one figure or for its order.
import type { Random } from '../../base/index.ts';
import { type Figure, figureAt, type Space } from '../../figures/index.ts';
import { compareFigures } from '../figure-comparison.ts';
import type { PartValues } from './task.ts';

/** For each attribute the number of a value. */
export type Look = readonly number[];
type LookPiece = readonly Look[];

/** A look that figures can take, made once for a task. */
interface Shown {
  readonly look: Look;
  readonly key: string;
  readonly figure: Figure;
}

/** All wrong pieces that can be wanted, the fittest first; in an order that says nothing where two are as fit. */
export function wrongPieces(
  { likeness, choices }: PartValues,
  space: Space,
  right: LookPiece,
  field: readonly Look[],
  random: Random,
): readonly LookPiece[] {
  const isNear = likeness === 'near';
  const pool = allLooks(space).map(
    (look): Shown => ({ look, key: String(look), figure: figureAt(space, look) }),
  );
  const ranked = right.map((look) => rankedLooks(pool, look, field, isNear));
  const order = random.shuffle(right.map((_, cell) => cell));
  const wanted = Array.from({ length: choices - 1 }, (_, index) => index);
  const made = isNear
    ? [...turnedRound(right), ...wanted.map((index) => withOneOther(right, ranked, order, index))]
    : wanted.map((index) => right.map((look, cell) => ranked[cell]?.[index] ?? look));
  // The same pieces in the same order, however they were come by: order is drawn afterwards.
  return made.slice(0, choices - 1).sort((one, other) => (String(one) < String(other) ? -1 : 1));
}

/** The piece with its figures in the other order, where that is another piece. */
function turnedRound(right: LookPiece): readonly LookPiece[] {
  const turned = [...right].reverse();
  return String(turned) === String(right) ? [] : [turned];
}

/** One figure replaced, in each cell in turn. */
function withOneOther(
  right: LookPiece,
  ranked: readonly (readonly Look[])[],
  order: readonly number[],
  index: number,
): LookPiece {
  const at = order[index % order.length] ?? 0;
  const other = ranked[at]?.[Math.floor(index / order.length)];
  return right.map((look, cell) => (cell === at ? (other ?? look) : look));
}

/**
 * Every other look. Near: those of the field first, and those that differ in one attribute by a value of the
 * field; then the likest. Far: those that differ most and stand nowhere in the field; then the least like.
 */
function rankedLooks(
  pool: readonly Shown[],
  look: Look,
  field: readonly Look[],
  isNear: boolean,
): readonly Look[] {
  const shown = new Set(field.map(String));
  const used = look.map((_, axis) => new Set(field.map((other) => other[axis])));
  const own = pool.find(({ key }) => key === String(look));
  const scored = pool
    .filter((other) => other !== own)
    .map(({ look: other, key, figure }) => {
      const apart = other.filter((value, axis) => value !== look[axis]).length;
      const isOfField = other.every((value, axis) => used[axis]?.has(value));
      const isNearest = shown.has(key) || (apart === 1 && isOfField);
      const rank = isNearest ? 0 : apart + (isOfField ? 0 : 1);
      const likeness = own ? compareFigures(own.figure, figure).likeness : 0;
      // In hundredths, whole: what is as fit stays in the order of its values.
      return { other, score: 1000 * rank - Math.round(100 * likeness) };
    });
  const sign = isNear ? 1 : -1;
  return scored.sort((one, two) => sign * (one.score - two.score)).map(({ other }) => other);
}

function allLooks({ axes }: Space): readonly Look[] {
  return axes.reduce<readonly Look[]>(
    (looks, { values }) => looks.flatMap((look) => values.map((_, value) => [...look, value])),
    [[]],
  );
}
