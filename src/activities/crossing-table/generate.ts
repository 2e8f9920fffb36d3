// Makes a table with empty cells, the loose figures that belong into them, and the key. Never fails for valid values.
import type { Random } from '../../base/index.ts';
import type { Figure } from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { drawCrossed, isCrossable, type Line, mostCrossed } from './crossed.ts';
import { chooseHeads, drawGivens } from './givens.ts';
import type { Answer, Printed, TableValues } from './task.ts';

export function generate(
  values: TableValues,
  random: Random,
  style: PrintStyle,
): { readonly printed: Printed; readonly answer: Answer } {
  const { rows, columns, empty, extra, response } = values;
  const lines = drawLines(values, random, style);
  const [rowLines, columnLines] = [lines.rows.slice(0, rows), lines.columns.slice(0, columns)];
  const heads = chooseHeads(values, random);
  const isGiven = drawGivens(values, heads, rows * columns - empty, random);
  const full = rowLines.flatMap((row) => columnLines.map((column) => crossing(row, column)));
  const missing = full.filter((_, cell) => !isGiven[cell]);
  const foreign = random.sample(foreignFigures(lines, rows, columns), extra);
  return {
    printed: {
      rows: rowLines.map((_, row) =>
        columnLines.map((_, column) => {
          const cell = row * columns + column;
          return isGiven[cell] ? (full[cell] ?? null) : null;
        }),
      ),
      ...(heads.rows ? { rowHeads: rowLines } : {}),
      ...(heads.columns ? { columnHeads: columnLines } : {}),
      ...(response === 'draw' ? {} : { loose: random.shuffle([...missing, ...foreign]) }),
      response,
    },
    answer: { figures: missing },
  };
}

interface Lines {
  readonly rows: readonly Line[];
  readonly columns: readonly Line[];
}

/** Lines of both directions; where some figures belong nowhere with one more of each kind that has one. */
function drawLines(values: TableValues, random: Random, style: PrintStyle): Lines {
  const { content, rows, columns, extra } = values;
  const swapped = { ...values, rows: columns, columns: rows };
  const canSwap = isCrossable(swapped, style) && random.int(0, 1) === 1;
  const counts = canSwap ? ([columns, rows] as const) : ([rows, columns] as const);
  const most = mostCrossed(content, style);
  const drawn = [0, 1].map((place) =>
    extra > 0 ? Math.min(most[place] ?? 0, (counts[place] ?? 0) + 1) : (counts[place] ?? 0),
  );
  const { first, second } = drawCrossed(content, [drawn[0] ?? 0, drawn[1] ?? 0], random, style);
  return canSwap ? { rows: second, columns: first } : { rows: first, columns: second };
}

/** Figures that have one thing of the table right: of a row and no column, or of a column and no row. */
function foreignFigures(lines: Lines, rows: number, columns: number): readonly Figure[] {
  const [noRow, noColumn] = [lines.rows[rows], lines.columns[columns]];
  return [
    ...(noColumn ? lines.rows.slice(0, rows).map((row) => crossing(row, noColumn)) : []),
    ...(noRow ? lines.columns.slice(0, columns).map((column) => crossing(noRow, column)) : []),
  ];
}

function crossing(row: Line, column: Line): Figure {
  return { ...row, ...column };
}
