// How two figures are laid on each other to agree best: scaled to one spread, then moved and scaled a little.
import type { Outline } from './outline-data.ts';
import { rasterOf, spreadOf, WHOLE_CELL, type Window } from './raster.ts';

/** Root-mean-square distance of ink from its middle after scaling, in grid sides: leaves room to move. */
const SPREAD = 0.2;
/** Scales of the second figure that are tried, and moves each way in grid cells. */
const SCALES = [0.8, 0.9, 1, 1.11, 1.25];
/** Among the windows, the one that neither shrinks nor grows. */
export const LEVEL = SCALES.indexOf(1);
const FAR_MOVES = [-4, -2, 0, 2, 4];
const NEAR_MOVES = [-1, 0, 1];

/** Where the grid lies on an outline for each scale, the middle of its ink in the middle of the grid. */
export function windowsOf(outline: Outline): readonly Window[] {
  const { x, y, spread } = spreadOf(rasterOf(outline, WHOLE_CELL));
  return SCALES.map((scale) => ({ x, y, side: spread / SPREAD / scale }));
}

/** How much two grids agree, 0 to 1, the second moved by whole cells first. */
export type Agreement<G> = (one: G, other: G, moveX: number, moveY: number) => number;

interface Fit {
  readonly share: number;
  readonly x: number;
  readonly y: number;
}

/**
 * The most that two figures agree, each as its `windowsOf` show it: the second moved far and then near at the same
 * scale, then near at every other scale.
 */
export function bestAgreement<G>(
  one: readonly G[],
  others: readonly G[],
  agreement: Agreement<G>,
): number {
  const [base, same] = [one[LEVEL], others[LEVEL]];
  if (!base || !same) throw new Error('figures › outline: expected a raster at scale 1, got none');
  const bestMove = (other: G, from: Fit, moves: readonly number[]): Fit => {
    let best = from;
    for (const moveX of moves) {
      for (const moveY of moves) {
        const [x, y] = [from.x + moveX, from.y + moveY];
        const share = agreement(base, other, x, y);
        if (share > best.share) best = { share, x, y };
      }
    }
    return best;
  };
  const far = bestMove(same, { share: 0, x: 0, y: 0 }, FAR_MOVES);
  const near = others.map((other) => bestMove(other, { ...far, share: 0 }, NEAR_MOVES));
  return Math.max(far.share, ...near.map(({ share }) => share));
}
