// The rules of two activities told to a general solver (MiniSat, by the package logic-solver), to compare with ours.
import Logic from 'logic-solver';
import type { Figure } from '../src/figures/index.ts';

/** What is printed of an in-every-box task, as far as its rule goes. */
export interface Boxes {
  readonly boxes: readonly { readonly figures: readonly Figure[] }[];
}

/** What is printed of a one-of-each task, as far as its rule goes. */
export interface Grid {
  readonly rows: readonly (readonly (Figure | null)[])[];
  readonly figures: readonly Figure[];
  readonly boxes?: boolean | undefined;
}

const BLOCK_SIDE = 2;

/** Figures that print alike have one name; those of one task are written alike. */
export function nameOf(figure: Figure): string {
  return JSON.stringify(figure);
}

/** The names of all figures that stand in every box: one is chosen, and each box has it. */
export function sharedBySolver({ boxes }: Boxes): readonly string[] {
  const solver = new Logic.Solver();
  const names = boxes.map(({ figures }) => figures.map(nameOf));
  solver.require(Logic.exactlyOne(...new Set(names.flat())));
  for (const box of names) solver.require(Logic.or(...box));
  return solutionsOf(solver, Number.POSITIVE_INFINITY).flat();
}

/**
 * What the empty cells hold in each completion, in reading order by name; up to `most` completions. A variable for
 * each figure in each cell; each cell holds one, and each line has each figure once.
 */
export function completionsBySolver(grid: Grid, most: number): readonly (readonly string[])[] {
  const solver = new Logic.Solver();
  const cells = grid.rows.flat();
  const names = grid.figures.map(nameOf);
  const variable = (cell: number, name: string) => `${cell} ${name}`;
  for (const [cell, figure] of cells.entries()) {
    solver.require(Logic.exactlyOne(...names.map((name) => variable(cell, name))));
    if (figure) solver.require(variable(cell, nameOf(figure)));
  }
  for (const line of linesOf(grid.rows.length, grid.boxes ?? false)) {
    for (const name of names) {
      solver.require(Logic.exactlyOne(...line.map((cell) => variable(cell, name))));
    }
  }
  return solutionsOf(solver, most).map((chosen) => {
    const held = new Map(chosen.map((one) => splitAt(one, one.indexOf(' '))));
    return cells.flatMap((figure, cell) => (figure ? [] : [held.get(String(cell)) ?? '']));
  });
}

/** Starts a solver that is told no rule; it has one answer. */
export function solveNothing(): number {
  return solutionsOf(new Logic.Solver(), 1).length;
}

function splitAt(words: string, place: number): readonly [string, string] {
  return [words.slice(0, place), words.slice(place + 1)];
}

/** The cells of each row, column and block. */
export function linesOf(order: number, boxes: boolean): readonly (readonly number[])[] {
  const row = (cell: number) => Math.floor(cell / order);
  const column = (cell: number) => cell % order;
  const block = (cell: number) =>
    BLOCK_SIDE * Math.floor(row(cell) / BLOCK_SIDE) + Math.floor(column(cell) / BLOCK_SIDE);
  const cells = Array.from({ length: order ** 2 }, (_, cell) => cell);
  return [row, column, ...(boxes ? [block] : [])].flatMap((groupOf) =>
    Array.from({ length: order }, (_, group) => cells.filter((cell) => groupOf(cell) === group)),
  );
}

/** The true variables of each solution, up to `most`: each that is found is forbidden, and the next sought. */
function solutionsOf(
  solver: InstanceType<typeof Logic.Solver>,
  most: number,
): readonly (readonly string[])[] {
  const found: (readonly string[])[] = [];
  while (found.length < most) {
    const solution = solver.solve();
    if (!solution) break;
    found.push(solution.getTrueVars());
    solver.forbid(solution.getFormula());
  }
  return found;
}
