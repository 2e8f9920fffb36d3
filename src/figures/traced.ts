// Figures that carry the number of their place, so that a drawn one is found again in what is printed.
import type { Figure } from './figure.ts';

/** A symbol: copies of a figure keep it, and neither JSON nor a schema sees it. */
const PLACE = Symbol('place');

interface Traced {
  readonly [PLACE]?: number;
}

/** The same figure, knowing its place: a whole number from 0. */
export function traced(figure: Figure, place: number): Figure {
  return Object.assign({}, figure, { [PLACE]: place });
}

/** The place that the figure was given; absent: none. */
export function placeOf(figure: Figure): number | undefined {
  return (figure as Traced)[PLACE];
}
