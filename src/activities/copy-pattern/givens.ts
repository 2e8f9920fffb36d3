// How much of a box is there before the child begins, and in how many ways that can be.
import type { CopyValues } from './parameters.ts';

type Given = Pick<CopyValues, 'elements' | 'givens'>;

/**
 * How many elements of each box are printed: `some` is half of them, rounded down; `most` is all but a
 * quarter, rounded down but at least one.
 */
export function givenCount({ elements, givens }: Given): number {
  switch (givens) {
    case 'none':
      return 0;
    case 'some':
      return Math.floor(elements / 2);
    case 'most':
      return elements - Math.max(1, Math.floor(elements / 4));
  }
}

/** How many boxes can differ in what is given. */
export function waysToGive(values: Given): number {
  return choose(values.elements, givenCount(values));
}

/** In how many ways `count` things can be picked from `all`. */
export function choose(all: number, count: number): number {
  let ways = 1;
  for (let picked = 0; picked < count; picked++) ways = (ways * (all - picked)) / (picked + 1);
  return ways;
}
