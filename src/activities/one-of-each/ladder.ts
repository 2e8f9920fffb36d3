// The steps of one-of-each: from one empty cell of four up to twelve of sixteen, with blocks, one change at a time.
import type { Step } from '../activity.ts';
import { ladderOf, type Rung } from '../ladder.ts';
import type { SquareValues } from './task.ts';

const FIRST: SquareValues = {
  content: 'colours',
  response: 'sticker',
  order: 2,
  empty: 1,
  logic: 'one-gap',
  chain: false,
  boxes: false,
  stickerMm: '16',
};

/**
 * What each step changes. Order and ages: common practice, no source, but that more things related at once come
 * later (Halford, Wilson & Phillips 1998, Behav. Brain Sci. 21, 803–831, from memory): one line holds one of
 * each before row and column are minded together.
 */
const RUNGS: readonly Rung<SquareValues>[] = [
  { change: {}, age: 3, tasks: 4 },
  { change: { empty: 2 }, age: 3, tasks: 4 },
  { change: { order: 3 }, age: 3, tasks: 4 },
  { change: { empty: 3 }, age: 3, tasks: 4 },
  { change: { empty: 4 }, age: 4, tasks: 4 },
  { change: { chain: true }, age: 4, tasks: 4 },
  { change: { order: 4 }, age: 4, tasks: 2 },
  { change: { empty: 6 }, age: 4, tasks: 2 },
  { change: { logic: 'row-and-column' }, age: 5, tasks: 2 },
  { change: { empty: 8 }, age: 5, tasks: 2 },
  { change: { empty: 10 }, age: 5, tasks: 2 },
  { change: { boxes: true }, age: 5, tasks: 2 },
  { change: { empty: 12 }, age: 5, tasks: 2 },
];

export const LADDER: readonly Step<SquareValues>[] = ladderOf(FIRST, RUNGS);
