// Makes full squares and empties some of their cells so that exactly the wanted thought is needed.
import type { Random } from '../../base/index.ts';
import { ELSEWHERE } from './elsewhere.ts';
import { type Cells, gradingOf, roundsWith, type Units, unitsOf } from './grading.ts';
import type { SquareValues } from './task.ts';

export type Wanted = Pick<SquareValues, 'order' | 'boxes' | 'logic' | 'chain' | 'empty'>;

/**
 * Tries until a square of the wanted kind comes out. At least one in ten does for all values that are not
 * refused (tests count), so that all fail has a chance below 10^−18.
 */
const MOST_TRIES = 400;

export interface Square {
  readonly full: readonly number[];
  /** Which cells are empty. */
  readonly isEmpty: readonly boolean[];
}

export function drawSquare(wanted: Wanted, random: Random): Square {
  if (wanted.logic === 'elsewhere') return knownSquare(wanted, random);
  for (let tries = 0; tries < MOST_TRIES; tries++) {
    const square = trySquare(wanted, random);
    if (square) return square;
  }
  throw new Error(`one-of-each › squares: no square of ${JSON.stringify(wanted)}`);
}

function knownSquare({ order, empty }: Wanted, random: Random): Square {
  const known = random.pick(ELSEWHERE[empty] ?? []);
  const move = drawMove(order, false, random);
  const full = [...known].map((sign) =>
    'abcde'.includes(sign) ? 'abcde'.indexOf(sign) : Number(sign),
  );
  return {
    full: moved(full, move).map((figure) => move.figures[figure] ?? 0),
    isEmpty: moved([...known], move).map((sign) => 'abcde'.includes(sign)),
  };
}

/** One square, its cells emptied as chance has it; undefined where that leads nowhere. */
export function trySquare(wanted: Wanted, random: Random): Square | undefined {
  const units = unitsOf(wanted.order, wanted.boxes);
  const full = drawFull(wanted, random);
  const cells: (number | null)[] = [...full];
  let left = wanted.empty;
  for (const cell of emptyingOrder(wanted, random)) {
    if (left === 0) break;
    cells[cell] = null;
    if (isStillTold(cells, units, wanted)) left -= 1;
    else cells[cell] = full[cell] ?? null;
  }
  if (left > 0 || !isAsWanted(cells, units, wanted)) return undefined;
  return { full, isEmpty: cells.map((figure) => figure === null) };
}

/** Where more than single gaps are wanted the corners of a rectangle come first: none is alone in its line. */
function emptyingOrder({ order, logic }: Wanted, random: Random): readonly number[] {
  const cells = random.shuffle(Array.from({ length: order ** 2 }, (_, cell) => cell));
  if (logic === 'one-gap') return cells;
  const numbers = Array.from({ length: order }, (_, index) => index);
  const columns = random.sample(numbers, 2);
  const corners = random
    .sample(numbers, 2)
    .flatMap((row) => columns.map((column) => row * order + column));
  return [...corners, ...cells.filter((cell) => !corners.includes(cell))];
}

function isStillTold(cells: Cells, units: Units, { logic, chain }: Wanted): boolean {
  const rounds = roundsWith(cells, units, logic);
  return rounds !== undefined && (chain || rounds === 1);
}

function isAsWanted(cells: Cells, units: Units, { logic, chain }: Wanted): boolean {
  const grading = gradingOf(cells, units);
  return grading?.logic === logic && grading.rounds > 1 === chain;
}

/** A full square: one to start from, changed about. */
function drawFull({ order, boxes }: Wanted, random: Random): readonly number[] {
  const start = [...random.pick(boxes ? BOXED : (STARTS[order] ?? []))].map(Number);
  const move = drawMove(order, boxes, random);
  return moved(start, move).map((figure) => move.figures[figure] ?? 0);
}

/** How rows, columns and figures change places. */
interface Move {
  readonly rows: readonly number[];
  readonly columns: readonly number[];
  readonly figures: readonly number[];
  /** Rows become columns. */
  readonly isTurnedOver: boolean;
}

function drawMove(order: number, boxes: boolean, random: Random): Move {
  return {
    rows: drawLines(order, boxes, random),
    columns: drawLines(order, boxes, random),
    figures: drawLines(order, false, random),
    isTurnedOver: random.int(0, 1) === 1,
  };
}

function moved<T>(cells: readonly T[], { rows, columns, isTurnedOver }: Move): readonly T[] {
  return rows.flatMap((row) =>
    columns.flatMap((column) => {
      const cell = isTurnedOver ? column * rows.length + row : row * rows.length + column;
      return cells.slice(cell, cell + 1);
    }),
  );
}

/** An order of rows or columns; with blocks, those of a block stay together. */
function drawLines(order: number, boxes: boolean, random: Random): readonly number[] {
  const lines = Array.from({ length: order }, (_, index) => index);
  if (!boxes) return random.shuffle(lines);
  return random.shuffle([0, 2]).flatMap((first) => random.shuffle([first, first + 1]));
}

/**
 * Squares from which all others of their order come by changing rows, columns and figures about: there are 1, 1, 2
 * and 2 kinds (isotopy classes, OEIS A040082, from memory). The second of order five is no group's table.
 */
const STARTS: Readonly<Record<number, readonly string[]>> = {
  2: ['0110'],
  3: ['012120201'],
  4: ['0123123023013012', '0123103223013210'],
  5: ['0123412340234013401240123', '0123410342240133240143120'],
};

/** Squares with blocks: every one comes from these two by such changes (tests count all 288). */
const BOXED: readonly string[] = ['0123230110323210', '0123230112303012'];
