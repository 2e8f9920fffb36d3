// The steps of size-order: from the biggest of three up to the whole order of five that differ idly as well.
import type { Step } from '../activity.ts';
import { ladderOf, type Rung } from '../ladder.ts';
import type { OrderValues } from './task.ts';

const FIRST: OrderValues = {
  content: 'sizes',
  response: 'point',
  asked: 'biggest',
  figures: 3,
  difference: 'wide',
  layout: 'ground',
};

/**
 * What each step changes. Children find the biggest before they can bring all into an order, and order by
 * trying before they see it at once (Piaget & Szeminska 1941, The Child's Conception of Number, from memory);
 * the other changes and the ages: common practice, no source.
 */
const RUNGS: readonly Rung<OrderValues>[] = [
  { change: {}, age: 3, tasks: 3 },
  { change: { figures: 4 }, age: 3, tasks: 3 },
  { change: { difference: 'plain' }, age: 3, tasks: 3 },
  { change: { content: 'colours-and-sizes' }, age: 4, tasks: 3 },
  { change: { asked: 'order' }, age: 4, tasks: 3 },
  { change: { response: 'join' }, age: 4, tasks: 2 },
  { change: { layout: 'loose' }, age: 4, tasks: 2 },
  { change: { figures: 5 }, age: 5, tasks: 2 },
  { change: { difference: 'fine' }, age: 5, tasks: 2 },
  { change: { content: 'shapes-colours-and-sizes' }, age: 5, tasks: 2 },
];

export const LADDER: readonly Step<OrderValues>[] = ladderOf(FIRST, RUNGS);
