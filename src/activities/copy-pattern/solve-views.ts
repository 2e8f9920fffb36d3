// How the model looks in a mirror or turned: what a child may copy who minds the shape and not the place.
import type { Mark, Spot } from './solve-reading.ts';
import type { Model } from './task.ts';

/** A way of looking at the model in its frame. */
export interface View {
  readonly way: 'mirrored' | 'turned';
  readonly marks: readonly Mark[];
}

type Move = (spot: Spot) => Spot;

const ACROSS: Readonly<Record<Spot['slope'], Spot['slope']>> = {
  cell: 'cell',
  level: 'level',
  upright: 'upright',
  rising: 'falling',
  falling: 'rising',
};
const OVER: Readonly<Record<Spot['slope'], Spot['slope']>> = {
  cell: 'cell',
  level: 'upright',
  upright: 'level',
  rising: 'rising',
  falling: 'falling',
};

/** The mirrored and turned views that fill the same frame and differ from the model itself. */
export function viewsOf(
  { rows, columns }: Model,
  spots: readonly Spot[],
  marks: readonly Mark[],
): readonly View[] {
  const shown = new Map(spots.map((spot, index) => [keyOf(spot), marks[index] ?? '']));
  const views = movesOf(rows, columns).map(({ way, move }) => ({
    way,
    marks: spots.map((spot) => shown.get(keyOf(move(spot))) ?? ''),
  }));
  return views.filter((view) => view.marks.some((mark, index) => mark !== marks[index]));
}

function keyOf({ x, y, slope }: Spot): string {
  return `${x} ${y} ${slope}`;
}

/** All moves made of two: swapping left and right, and, in a square, swapping rows for columns. */
function movesOf(rows: number, columns: number): readonly { way: View['way']; move: Move }[] {
  const [width, height] = [2 * (columns - 1), 2 * (rows - 1)];
  const across: Move = ({ x, y, slope }) => ({ x: width - x, y, slope: ACROSS[slope] });
  const down: Move = ({ x, y, slope }) => ({ x, y: height - y, slope: ACROSS[slope] });
  const over: Move = ({ x, y, slope }) => ({ x: y, y: x, slope: OVER[slope] });
  const upright = [
    { way: 'mirrored', move: across },
    { way: 'mirrored', move: down },
    { way: 'turned', move: (spot: Spot) => down(across(spot)) },
  ] as const;
  if (rows !== columns) return upright;
  return [
    ...upright,
    { way: 'mirrored', move: over },
    { way: 'mirrored', move: (spot) => down(across(over(spot))) },
    { way: 'turned', move: (spot) => across(over(spot)) },
    { way: 'turned', move: (spot) => down(over(spot)) },
  ];
}
