// How much thought a grid asks for: which kind of conclusion is needed, and how many follow one upon the other.
import { type Logic, PARAMETERS } from './task.ts';

/** Numbers of figures, 0 upward, row by row; `null` is an empty cell. */
export type Cells = readonly (number | null)[];

export interface Grading {
  /** The least kind of conclusion with which, and the easier ones, the grid can be filled without guessing. */
  readonly logic: Logic;
  /** How often all that can be told is filled in until the grid is full; 1 where all can be told at once. */
  readonly rounds: number;
}

/** The kinds of conclusion, the easiest first. */
export const LOGICS: readonly Logic[] = PARAMETERS.logic.values;

/** Rows, columns and where asked for blocks of two by two: each holds one of each. */
export interface Units {
  readonly order: number;
  readonly lines: readonly (readonly number[])[];
  /** For each cell the numbers of its lines. */
  readonly through: readonly (readonly number[])[];
}

const known = new Map<string, Units>();

export function unitsOf(order: number, boxes: boolean): Units {
  const key = `${order} ${boxes}`;
  const before = known.get(key);
  if (before) return before;
  const units = buildUnits(order, boxes);
  known.set(key, units);
  return units;
}

function buildUnits(order: number, boxes: boolean): Units {
  const places = Array.from({ length: order ** 2 }, (_, cell) => cell);
  const groupings = [
    (cell: number) => Math.floor(cell / order),
    (cell: number) => cell % order,
    ...(boxes
      ? [(cell: number) => 2 * Math.floor(cell / order / 2) + Math.floor((cell % order) / 2)]
      : []),
  ];
  const lines = groupings.flatMap((groupOf) =>
    Array.from({ length: order }, (_, group) => places.filter((cell) => groupOf(cell) === group)),
  );
  const through = places.map((cell) =>
    lines.flatMap((line, number) => (line.includes(cell) ? [number] : [])),
  );
  return { order, lines, through };
}

/** The grading of a grid; undefined where it cannot be filled without guessing. */
export function gradingOf(cells: Cells, units: Units): Grading | undefined {
  for (const logic of LOGICS) {
    const rounds = roundsWith(cells, units, logic);
    if (rounds !== undefined) return { logic, rounds };
  }
  return undefined;
}

/** How many rounds fill the grid with conclusions up to this kind; undefined where they do not. */
export function roundsWith(cells: Cells, units: Units, logic: Logic): number | undefined {
  const filled = [...cells];
  for (let rounds = 0; ; rounds++) {
    if (!filled.includes(null)) return rounds;
    const found = conclusions(filled, units, LOGICS.indexOf(logic));
    if (found.size === 0) return undefined;
    for (const [cell, figure] of found) filled[cell] = figure;
  }
}

/** What can be told of empty cells at once, each by itself; sets of figures are bits of a number. */
function conclusions(cells: Cells, units: Units, level: number): ReadonlyMap<number, number> {
  const { order, lines, through } = units;
  const every = 2 ** order - 1;
  const missing = lines.map((line) => every & ~bitsIn(cells, line));
  const gaps = lines.map((line) => line.filter((cell) => cells[cell] === null).length);
  const possible = cells.map((figure, cell) =>
    figure === null
      ? (through[cell] ?? []).reduce((bits, line) => bits & (missing[line] ?? 0), every)
      : 0,
  );
  const found = new Map<number, number>();
  for (const [cell, bits] of possible.entries()) {
    const isOnlyGap = (through[cell] ?? []).some((line) => gaps[line] === 1);
    if (isSingle(bits) && (level > 0 || isOnlyGap)) found.set(cell, onlyIn(bits));
  }
  if (level > 1) for (const line of lines) findPlaces(line, possible, order, found);
  return found;
}

/** Figures that can go to one cell of the line only: they are elsewhere in every line through its others. */
function findPlaces(
  line: readonly number[],
  possible: readonly number[],
  order: number,
  found: Map<number, number>,
): void {
  for (let figure = 0; figure < order; figure++) {
    const open = line.filter((cell) => ((possible[cell] ?? 0) >> figure) % 2 === 1);
    const [only] = open;
    if (only !== undefined && open.length === 1) found.set(only, figure);
  }
}

function bitsIn(cells: Cells, line: readonly number[]): number {
  return line.reduce((bits, cell) => {
    const figure = cells[cell] ?? null;
    return figure === null ? bits : bits | (1 << figure);
  }, 0);
}

function isSingle(bits: number): boolean {
  return bits !== 0 && (bits & (bits - 1)) === 0;
}

/** The figure of a set of one: in whole numbers, since logarithms may end otherwise in another engine. */
function onlyIn(bits: number): number {
  return 31 - Math.clz32(bits);
}
