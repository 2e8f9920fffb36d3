// What holds several places and is drawn as one thing: boxes, entries of a key, pairs, pieces; and where empty cells lie.
import { listsIn, type Path, placesIn, valueAt } from './places.ts';

/** An item of a list that is drawn as one thing. */
export interface Whole {
  readonly path: Path;
  /** The part of the drawn task that shows it, and which of those with that name, from 0. */
  readonly role: string;
  readonly nth: number;
  /** Numbers of the places in it. */
  readonly places: readonly number[];
}

/** Where something could be put: all of a drawn part, or one cell of it that is divided evenly. */
export interface EmptyCell {
  readonly place: number;
  readonly role: string;
  readonly nth: number;
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

/** What the items of a list are drawn as, by the name of the list. */
const DRAWN: Readonly<Record<string, string>> = {
  boxes: 'box',
  key: 'entry',
  offered: 'piece',
  pairs: 'pair',
};

/** Every one with something to do besides what its only figure has: a fact beside it, or another place. */
export function wholesIn(printed: unknown): readonly Whole[] {
  const places = placesIn(printed);
  return listsIn(printed).flatMap(({ path, length }) => {
    const role = path.length === 1 ? DRAWN[String(path[0])] : undefined;
    if (role === undefined) return [];
    return Array.from({ length }, (_, nth) => {
      const own = [...path, nth];
      const inside = places.flatMap((place, number) => (isWithin(place.path, own) ? [number] : []));
      return { path: own, role: roleOf(valueAt(printed, own), role), nth, places: inside };
    }).filter((whole) => whole.places.length > 1 || (role === 'entry' && whole.places.length > 0));
  });
}

/** A half that is offered is drawn with its cells, a piece with its figures alone. */
function roleOf(item: unknown, usual: string): string {
  return usual === 'piece' && !Array.isArray(item) ? 'offered' : usual;
}

function isWithin(path: Path, outer: Path): boolean {
  return outer.every((step, index) => step === path[index]);
}

/** Empty places that lie in even rows and columns, or are drawn as places of their own; lines of a lattice do not. */
export function emptyCellsIn(printed: unknown): readonly EmptyCell[] {
  const empty = placesIn(printed).flatMap(({ path, figure }, place) =>
    figure === null ? [{ path, place }] : [],
  );
  return empty.flatMap(({ path, place }, index) => {
    const cell = cellAt(printed, path, index);
    return cell === undefined ? [] : [{ place, ...cell }];
  });
}

const WHOLE_PART = { row: 0, column: 0, rows: 1, columns: 1 };

/** `index`: which of the empty places it is. */
function cellAt(printed: unknown, path: Path, index: number): Omit<EmptyCell, 'place'> | undefined {
  const [first, second, third] = path;
  if (first === 'row') return { role: 'empty', nth: index, ...WHOLE_PART };
  if (first === 'field') {
    return inGrid(printed, ['field'], Number(second), numberAt(printed, ['columns']), 'field');
  }
  if (first === 'rows') return inRows(printed, Number(second), Number(third));
  if (first === 'part') {
    const columns = numberAt(printed, ['part', 'columns']);
    return inGrid(printed, ['part', 'cells'], Number(third), columns, 'given');
  }
  const columns = numberAt(printed, ['model', 'columns']);
  if (first === 'model') {
    return inGrid(printed, ['model', 'cells'], Number(third), columns, 'model');
  }
  if (first !== 'boxes') return undefined;
  const inBox = inGrid(printed, path.slice(0, -1), Number(path.at(-1)), columns, 'box');
  return inBox && { ...inBox, nth: Number(second) };
}

function numberAt(printed: unknown, path: Path): number {
  const value = valueAt(printed, path);
  return typeof value === 'number' ? value : 0;
}

function inGrid(
  printed: unknown,
  list: Path,
  at: number,
  columns: number,
  role: string,
): Omit<EmptyCell, 'place'> | undefined {
  const { length } = valueAt(printed, list) as readonly unknown[];
  const around = valueAt(printed, ['model']) as { readonly rows?: unknown } | undefined;
  const told = typeof around?.rows === 'number' ? around.rows : length / columns;
  if (columns < 1 || told * columns !== length) return undefined;
  const [row, column] = [Math.floor(at / columns), at % columns];
  return { role, nth: 0, row, column, rows: told, columns };
}

/** A square to fill, or a table; whichever of the two it is drawn as. */
function inRows(printed: unknown, row: number, column: number): Omit<EmptyCell, 'place'> {
  const rows = valueAt(printed, ['rows']) as readonly (readonly unknown[])[];
  const role = valueAt(printed, ['figures']) === undefined ? 'table' : 'grid';
  return { role, nth: 0, row, column, rows: rows.length, columns: rows[row]?.length ?? 1 };
}
