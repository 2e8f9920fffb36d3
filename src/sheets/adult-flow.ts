// Blocks that flow through columns, from one page of the adult to the next.
import { type Area, type Block, type Group, stackBlocks } from '../page/index.ts';

/** A block that can be set at any width, in mm. */
export type Piece = (widthMm: number) => Block;

/** A column and what is to stand in it. */
export interface Column {
  readonly area: Area;
  readonly pieces: readonly Piece[];
}

export interface Filled {
  readonly groups: readonly Group[];
  /** Height that each column takes, in mm. */
  readonly heightsMm: readonly number[];
  /** What the columns had no room for, in order. */
  readonly rest: readonly Piece[];
}

/** Each column filled with its own pieces. */
export function fillEach(columns: readonly Column[]): Filled {
  const stacks = columns.map(({ area, pieces }) => {
    const blocks = pieces.map((piece) => piece(area.width));
    return { pieces, ...stackBlocks(blocks, area) };
  });
  return {
    groups: stacks.map(({ group }) => group),
    heightsMm: stacks.map(({ heightMm }) => heightMm),
    rest: stacks.flatMap(({ pieces, rest }) => lastOf(pieces, rest.length)),
  };
}

/** How much longer the columns are tried each time, in mm. */
const STEP_MM = 2;

/**
 * The pieces one after the other down the columns, which are equally wide. Where all find room the columns are no longer
 * than they must be, so that they end about level.
 */
export function fillLevel(pieces: readonly Piece[], columns: readonly Area[]): Filled {
  const { width = 0, height = 0 } = columns[0] ?? {};
  const blocks = pieces.map((piece) => piece(width));
  const filled = (heightMm: number) => {
    const { rest, ...placed } = fillInTurn(blocks, columns, heightMm);
    return { ...placed, rest: lastOf(pieces, rest.length) };
  };
  for (let tryMm = STEP_MM; tryMm < height; tryMm += STEP_MM) {
    const tried = filled(tryMm);
    // A column takes at least one block, however long it is.
    const isWithin = tried.heightsMm.every((usedMm) => usedMm <= height);
    if (tried.rest.length === 0 && isWithin) return tried;
  }
  return filled(height);
}

function fillInTurn(blocks: readonly Block[], columns: readonly Area[], heightMm: number) {
  let rest = blocks;
  const groups: Group[] = [];
  const heightsMm: number[] = [];
  for (const column of columns) {
    const stack = stackBlocks(rest, { ...column, height: heightMm });
    groups.push(stack.group);
    heightsMm.push(stack.heightMm);
    rest = stack.rest;
  }
  return { groups, heightsMm, rest };
}

function lastOf<T>(all: readonly T[], count: number): readonly T[] {
  return all.slice(all.length - count);
}
