// Counts in how many ways a grid can be completed, exactly: tries every figure that fits, the fullest cell first.

/** Numbers of figures, 0 upward, row by row; `null` is an empty cell. */
type Grid = readonly (number | null)[];

export interface Rule {
  /** How many rows, columns and figures. */
  readonly order: number;
  /** Whether blocks of two by two hold one of each, too. */
  readonly boxes: boolean;
}

/** What the rows, columns and blocks still lack, as bits; changed and changed back while trying. */
interface Lacks {
  readonly rows: number[];
  readonly columns: number[];
  readonly blocks: number[];
}

/** All completions, cell by cell, up to `most`; none where what is given breaks the rule already. */
export function completionsOf(
  grid: Grid,
  rule: Rule,
  most: number,
): readonly (readonly number[])[] {
  const lacks = lacksOf(grid, rule);
  if (!lacks) return [];
  const found: (readonly number[])[] = [];
  const cells = [...grid];
  fillNext(cells, rule, lacks, most, found);
  return found;
}

function fillNext(
  cells: (number | null)[],
  rule: Rule,
  lacks: Lacks,
  most: number,
  found: (readonly number[])[],
): void {
  const next = fullestCell(cells, rule, lacks);
  if (next === undefined) {
    found.push(cells.map((figure) => figure ?? 0));
    return;
  }
  for (let figure = 0; figure < rule.order && found.length < most; figure++) {
    if ((next.open & (1 << figure)) === 0) continue;
    cells[next.cell] = figure;
    flip(lacks, rule, next.cell, 1 << figure);
    fillNext(cells, rule, lacks, most, found);
    flip(lacks, rule, next.cell, 1 << figure);
    cells[next.cell] = null;
  }
}

/** The empty cell with the fewest figures that fit; undefined where none is empty. */
function fullestCell(
  cells: Grid,
  rule: Rule,
  lacks: Lacks,
): { readonly cell: number; readonly open: number } | undefined {
  let best: { readonly cell: number; readonly open: number; readonly count: number } | undefined;
  for (const [cell, figure] of cells.entries()) {
    if (figure !== null) continue;
    const open = openAt(lacks, rule, cell);
    const count = countBits(open);
    if (!best || count < best.count) best = { cell, open, count };
  }
  return best;
}

function openAt({ rows, columns, blocks }: Lacks, { order, boxes }: Rule, cell: number): number {
  const [row, column] = [Math.floor(cell / order), cell % order];
  const lines = (rows[row] ?? 0) & (columns[column] ?? 0);
  return boxes ? lines & (blocks[blockOf(row, column, order)] ?? 0) : lines;
}

/** Takes a figure from what the lines of a cell lack, or gives it back. */
function flip({ rows, columns, blocks }: Lacks, { order }: Rule, cell: number, bit: number): void {
  const [row, column] = [Math.floor(cell / order), cell % order];
  const block = blockOf(row, column, order);
  rows[row] = (rows[row] ?? 0) ^ bit;
  columns[column] = (columns[column] ?? 0) ^ bit;
  blocks[block] = (blocks[block] ?? 0) ^ bit;
}

/** Undefined where a row, column or block holds a figure twice. */
function lacksOf(grid: Grid, rule: Rule): Lacks | undefined {
  const every = 2 ** rule.order - 1;
  const all = () => Array.from({ length: rule.order ** 2 }, () => every);
  const lacks = { rows: all(), columns: all(), blocks: all() };
  for (const [cell, figure] of grid.entries()) {
    if (figure === null) continue;
    if ((openAt(lacks, rule, cell) & (1 << figure)) === 0) return undefined;
    flip(lacks, rule, cell, 1 << figure);
  }
  return lacks;
}

function blockOf(row: number, column: number, order: number): number {
  return Math.floor(row / 2) * order + Math.floor(column / 2);
}

function countBits(bits: number): number {
  let count = 0;
  for (let left = bits; left > 0; left >>= 1) count += left & 1;
  return count;
}
