// Which numbers of empty cells go with which thought: what there is at all, or comes out often enough to be drawn.
import type { Logic, SquareValues } from './task.ts';

export interface Range {
  readonly min: number;
  readonly max: number;
}

type Kind = Pick<SquareValues, 'order' | 'boxes' | 'logic' | 'chain'>;

/** Fewest and most empty cells: where all can be told at once, and where one follows upon another. */
type Ways = Readonly<Partial<Record<Logic, readonly [atOnce: Range | undefined, chained: Range]>>>;

/**
 * By order; counted by trying (tests try again). With single gaps alone the empty cells, as lines between their
 * rows and columns, are a forest, so there are at most 2 × order − 1. Up to order four every grid with one
 * completion can be filled by looking along row and column; `elsewhere` is needed from five on, and rarely.
 */
const WAYS: Readonly<Record<string, Ways>> = {
  2: { 'one-gap': [range(1, 2), range(3, 3)] },
  3: { 'one-gap': [range(1, 4), range(3, 5)], 'row-and-column': [range(6, 6), range(4, 7)] },
  4: { 'one-gap': [range(1, 6), range(3, 7)], 'row-and-column': [range(4, 8), range(4, 12)] },
  '4 boxes': {
    'one-gap': [range(1, 6), range(4, 8)],
    'row-and-column': [range(4, 8), range(5, 12)],
  },
  5: {
    'one-gap': [range(1, 7), range(3, 9)],
    'row-and-column': [range(4, 11), range(4, 17)],
    elsewhere: [undefined, range(13, 17)],
  },
};

/** The numbers of empty cells that a kind of square can have; undefined where there is none. */
export function emptyRange({ order, boxes, logic, chain }: Kind): Range | undefined {
  const [atOnce, chained] = WAYS[boxes ? `${order} boxes` : String(order)]?.[logic] ?? [];
  return chain ? chained : atOnce;
}

/** The kinds of thought that some square of the order needs. */
export function logicsOf({ order, boxes }: Kind): readonly Logic[] {
  return Object.keys(WAYS[boxes ? `${order} boxes` : String(order)] ?? {}) as Logic[];
}

function range(min: number, max: number): Range {
  return { min, max };
}
