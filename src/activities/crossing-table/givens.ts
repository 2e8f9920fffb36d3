// Which cells of a table are filled already: any where heads are printed, else enough to find the heads from.
import type { Random } from '../../base/index.ts';
import type { TableValues } from './task.ts';

type Shape = Pick<TableValues, 'rows' | 'columns' | 'heads'>;

/** Which of the heads are printed. */
export interface Heads {
  readonly rows: boolean;
  readonly columns: boolean;
}

/** Of which lines; where those of one direction alone are asked for, by lot of which. */
export function chooseHeads({ heads }: Shape, random: Random): Heads {
  if (heads !== 'one') return { rows: heads === 'both', columns: heads === 'both' };
  const rows = random.int(0, 1) === 1;
  return { rows, columns: !rows };
}

/**
 * The fewest cells that must be filled: without one kind of heads, one in each line that has none. Without any, some
 * row and some column need two, so that it shows which is about what; some more make it plain.
 */
export function fewestGiven({ rows, columns, heads }: Shape): number {
  if (heads === 'both') return 0;
  const longest = Math.max(rows, columns);
  return heads === 'one' ? longest : Math.max(longest + 1, rows + columns - 2);
}

/** For each cell whether it is filled; `count` of them are, at least the fewest. */
export function drawGivens(
  shape: Shape,
  heads: Heads,
  count: number,
  random: Random,
): readonly boolean[] {
  const cells = Array.from({ length: shape.rows * shape.columns }, (_, cell) => cell);
  const needed = new Set(neededCells(shape, heads, random));
  const others = random.shuffle(cells.filter((cell) => !needed.has(cell)));
  const given = new Set([...needed, ...others.slice(0, count - needed.size)]);
  return cells.map((cell) => given.has(cell));
}

function neededCells({ rows, columns }: Shape, heads: Heads, random: Random): readonly number[] {
  if (heads.rows && heads.columns) return [];
  if (heads.rows)
    return counted(columns).map((column) => random.int(0, rows - 1) * columns + column);
  if (heads.columns) return counted(rows).map((row) => row * columns + random.int(0, columns - 1));
  return coveringCells(rows, columns, random);
}

/** One cell in each row and column, and one more: it makes two in a row and, if no column has two yet, in a column. */
function coveringCells(rows: number, columns: number, random: Random): readonly number[] {
  const rowOrder = random.shuffle(counted(rows));
  const columnOrder = random.shuffle(counted(columns));
  const covering = counted(Math.max(rows, columns)).map(
    (place) => (rowOrder[place % rows] ?? 0) * columns + (columnOrder[place % columns] ?? 0),
  );
  const others = counted(rows * columns).filter((cell) => !covering.includes(cell));
  return [...covering, random.pick(others)];
}

function counted(length: number): readonly number[] {
  return Array.from({ length }, (_, index) => index);
}
