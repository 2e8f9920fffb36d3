// How large the parts of a task are in mm, and what a task takes up for a given side of its cells.
import type { Reading } from './reading.ts';

/** All that a child touches is at least this wide: the least for three-year-olds, common practice. */
const TARGET_MM = 12;
/** Blank between stickers: hands of three miss by about a millimetre or two; common practice, no source. */
const BETWEEN_STICKERS_MM = 3;
/** A cell in which a shape, sign or letter is drawn: common practice, no source. */
const DRAWN_CELL_MM = 18;
/** The most a cell grows to where the page has room, so that a pattern is still seen as one. */
const MOST_CELL_MM = 24;

/** From frame to frame, at least; never less than half a cell, the widest blank inside a box. */
const LEAST_GAP_MM = 8;
/** Width of the frame's line; its middle is the edge of the outermost cells and their blank. */
export const FRAME_MM = 0.7;
/** The tone round the model, outside its frame. */
export const PLATE_MM = 3;

/** Sizes that do not depend on the room that the page has. */
export interface Measures {
  readonly rows: number;
  readonly columns: number;
  readonly leastCellMm: number;
  readonly mostCellMm: number;
  /** Blank between the outermost cells and the frame. */
  readonly padMm: number;
}

export function measuresOf(
  { rows, columns }: { readonly rows: number; readonly columns: number },
  { content, response, stickerMm, hasCircles }: Reading,
): Measures {
  const isDrawn = response === 'draw';
  const sides = { rows, columns, mostCellMm: MOST_CELL_MM };
  if (response === 'sticker') {
    const leastCellMm = Math.max(TARGET_MM, stickerMm + BETWEEN_STICKERS_MM);
    const mostCellMm = leastCellMm + BETWEEN_STICKERS_MM;
    return { ...sides, leastCellMm, mostCellMm, padMm: BETWEEN_STICKERS_MM / 2 };
  }
  if (hasCircles) {
    const leastCellMm = TARGET_MM + BETWEEN_STICKERS_MM;
    return { ...sides, leastCellMm, padMm: BETWEEN_STICKERS_MM / 2 };
  }
  const leastCellMm = content === 'dots' ? TARGET_MM + 2 : isDrawn ? DRAWN_CELL_MM : 15;
  return { ...sides, leastCellMm, padMm: 0 };
}

/** Blank between frames for a side of cell. */
export function gapFor(cellMm: number): number {
  return Math.max(LEAST_GAP_MM, cellMm / 2);
}

/** Width, or height, of a run of blocks: `cells` to a block, `blocks` of them, plus plates and gaps. */
export interface Run {
  readonly cells: number;
  readonly blocks: number;
  /** Whether the model is among the blocks, with its plate. */
  readonly plate: boolean;
}

export function runMm({ cells, blocks, plate }: Run, { padMm }: Measures, cellMm: number): number {
  const blockMm = cells * cellMm + 2 * padMm + FRAME_MM;
  return blocks * blockMm + (blocks - 1) * gapFor(cellMm) + (plate ? 2 * PLATE_MM : 0);
}

/** The side of cell for which a run is just `roomMm` long. */
export function cellForRun(run: Run, { padMm }: Measures, roomMm: number): number {
  const { cells, blocks, plate } = run;
  const fixed = blocks * (2 * padMm + FRAME_MM) + (plate ? 2 * PLATE_MM : 0);
  const free = roomMm - fixed;
  const withLeastGap = (free - (blocks - 1) * LEAST_GAP_MM) / (blocks * cells);
  const withHalfGap = free / (blocks * cells + (blocks - 1) / 2);
  return Math.min(withLeastGap, withHalfGap);
}
