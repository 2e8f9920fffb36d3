// Quantities of dots in which number, not ink, is the difference.
import { MOST_DOTS } from './dots.ts';
import type { DotLayout, Figure } from './figure.ts';

/**
 * What does not tell the number: `spread`, how far apart the dots lie; `area`, that and all their ink
 * together. Children tell areas apart more finely than numbers at every age from three to six (Odic et al.
 * 2013), so that without control they may answer by ink.
 */
export const DOT_CONTROLS = ['area', 'spread'] as const;
export type DotControl = (typeof DOT_CONTROLS)[number];

/** Layouts whose dots lie about as far from their middle whatever their number, 0.28 to 0.37 of the cell. */
export const SPREAD_LAYOUTS: readonly DotLayout[] = ['dice', 'scattered-1', 'scattered-2'];

/** Diameter of each of six dots with control of area, a little under the usual: fewer, bigger ones must fit. */
const SIXTH_DOT_SIZE = 0.94;

/** The number of dots and, where their ink is controlled, the size that gives all numbers the same ink. */
export function dotsOf(count: number, control: DotControl): Pick<Figure, 'count' | 'dotSize'> {
  if (control !== 'area') return { count };
  const dotSize = Math.round(1000 * SIXTH_DOT_SIZE * Math.sqrt(MOST_DOTS / count)) / 1000;
  return { count, dotSize };
}
