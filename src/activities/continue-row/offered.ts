// Which figures are offered below a row: all that are missing, and wrong ones that are near them.
import type { Random } from '../../base/index.ts';

/** A figure by the number of its value on each attribute. */
type Indices = readonly number[];

/**
 * `count` different figures in random order: every one of `wanted`, then wrong ones, first those that
 * differ from a wanted one in a single attribute, of these first those that stand in the row.
 * `axes` is how many values each attribute has; together they hold at least `count` figures.
 */
export function drawOffered(
  axes: readonly number[],
  given: readonly Indices[],
  wanted: readonly Indices[],
  count: number,
  random: Random,
): readonly Indices[] {
  const right = wanted.filter((one, place) => !holds(wanted.slice(0, place), one));
  const wrong = random.shuffle(combinations(axes).filter((one) => !holds(right, one)));
  const rank = (one: Indices) => {
    const isNear = right.some((other) => differing(one, other) === 1);
    return (isNear ? 0 : 2) + (holds(given, one) ? 0 : 1);
  };
  const nearest = [0, 1, 2, 3].flatMap((wantedRank) =>
    wrong.filter((one) => rank(one) === wantedRank),
  );
  return random.shuffle([...right, ...nearest].slice(0, count));
}

function combinations(axes: readonly number[]): readonly Indices[] {
  return axes.reduce<readonly Indices[]>(
    (rows, size) =>
      rows.flatMap((row) => Array.from({ length: size }, (_, value) => [...row, value])),
    [[]],
  );
}

function holds(figures: readonly Indices[], wanted: Indices): boolean {
  return figures.some((figure) => differing(figure, wanted) === 0);
}

function differing(one: Indices, other: Indices): number {
  return one.filter((value, axis) => value !== other[axis]).length;
}
