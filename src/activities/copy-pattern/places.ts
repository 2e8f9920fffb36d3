// The places of a grid or lattice: where they lie, which touch, and where each goes when the pattern is mirrored or turned.
import type { Figure } from '../../figures/index.ts';

/** A cell, or a line between two neighbouring lattice points. */
export type PlaceKind = 'cell' | 'level' | 'upright' | 'rising' | 'falling';

/** Points are numbered row by row; a cell counts as a line from its point to itself. */
export interface Place {
  readonly kind: PlaceKind;
  readonly from: number;
  readonly to: number;
}

/** How many cells, or lattice points, lie below and beside each other. */
export interface Sides {
  readonly rows: number;
  readonly columns: number;
}

export interface Symmetry {
  readonly name:
    | 'turn-90'
    | 'turn-180'
    | 'turn-270'
    | 'mirror-left-right'
    | 'mirror-up-down'
    | 'mirror-falling'
    | 'mirror-rising';
  /** For each place, the place that it lands on. */
  readonly images: readonly number[];
}

/** The figure that a line in this direction is; cells hold figures of their own. */
export const LINE_FIGURES: Readonly<Record<Exclude<PlaceKind, 'cell'>, Figure>> = {
  level: { form: 'sign-level-line' },
  upright: { form: 'sign-upright-line' },
  rising: { form: 'sign-upright-line', turn: 45 },
  falling: { form: 'sign-upright-line', turn: 135 },
};

/** The places in the order of the pack file. */
export function placesOf(net: 'grid' | 'lattice', { rows, columns }: Sides): readonly Place[] {
  const across = (count: number, down: number, kind: PlaceKind, from: number, to: number) =>
    Array.from({ length: count * down }, (_, index): Place => {
      const corner = Math.floor(index / count) * columns + (index % count);
      return { kind, from: corner + from, to: corner + to };
    });
  if (net === 'grid') return across(columns, rows, 'cell', 0, 0);
  return [
    ...across(columns - 1, rows, 'level', 0, 1),
    ...across(columns, rows - 1, 'upright', 0, columns),
    ...across(columns - 1, rows - 1, 'rising', 1, columns),
    ...across(columns - 1, rows - 1, 'falling', 0, columns + 1),
  ];
}

/** For each place, the others that hang together with it: cells with a side or corner in common, lines with a point in common. */
export function neighboursOf(places: readonly Place[], columns: number): readonly number[][] {
  const touch = (one: Place, other: Place) =>
    one.kind === 'cell'
      ? Math.abs((one.from % columns) - (other.from % columns)) <= 1 &&
        Math.abs(Math.floor(one.from / columns) - Math.floor(other.from / columns)) <= 1
      : [one.from, one.to].some((point) => point === other.from || point === other.to);
  return places.map((one) =>
    places.flatMap((other, index) => (other !== one && touch(one, other) ? [index] : [])),
  );
}

/** Every way but standing still in which the rectangle lands on itself. */
export function symmetriesOf(
  places: readonly Place[],
  { rows, columns }: Sides,
): readonly Symmetry[] {
  const [down, right] = [rows - 1, columns - 1];
  const moves: [Symmetry['name'], (row: number, column: number) => readonly [number, number]][] = [
    ['turn-180', (row, column) => [down - row, right - column]],
    ['mirror-left-right', (row, column) => [row, right - column]],
    ['mirror-up-down', (row, column) => [down - row, column]],
  ];
  if (rows === columns) {
    moves.push(
      ['turn-90', (row, column) => [column, right - row]],
      ['turn-270', (row, column) => [down - column, row]],
      ['mirror-falling', (row, column) => [column, row]],
      ['mirror-rising', (row, column) => [down - column, right - row]],
    );
  }
  const placeAt = new Map(places.map((place, index) => [ends(place.from, place.to), index]));
  return moves.map(([name, move]) => {
    const moved = (point: number) => {
      const [row, column] = move(Math.floor(point / columns), point % columns);
      return row * columns + column;
    };
    const images = places.map(({ from, to }) => placeAt.get(ends(moved(from), moved(to))) ?? -1);
    return { name, images };
  });
}

function ends(one: number, other: number): string {
  return `${Math.min(one, other)}-${Math.max(one, other)}`;
}

/** Whether the contents of the places look the same after the move; contents compare by `===`. */
export function isUnmoved(contents: readonly unknown[], { images }: Symmetry): boolean {
  return contents.every((content, index) => content === contents[images[index] ?? -1]);
}

export function isMirror({ name }: Symmetry): boolean {
  return name.startsWith('mirror');
}
