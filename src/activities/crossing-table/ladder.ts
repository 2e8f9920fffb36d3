// The steps of crossing-table: from one figure for a table of four up to nine whose rows and columns must be found.
import type { Step } from '../activity.ts';
import { ladderOf, type Rung } from '../ladder.ts';
import type { TableValues } from './task.ts';

const FIRST: TableValues = {
  content: 'shapes-and-colours',
  response: 'point',
  rows: 2,
  columns: 2,
  empty: 1,
  heads: 'both',
  extra: 0,
};

/**
 * What each step changes. Order and ages: common practice, no source, but that the crossing of two classes is
 * managed later than one class by itself (Inhelder & Piaget 1959, La genèse des structures logiques
 * élémentaires, from memory), and that more things related at once come later (Halford, Wilson & Phillips 1998,
 * Behav. Brain Sci. 21, 803–831, from memory).
 */
const RUNGS: readonly Rung<TableValues>[] = [
  { change: {}, age: 3, tasks: 4 },
  { change: { empty: 2 }, age: 3, tasks: 4 },
  { change: { empty: 3 }, age: 3, tasks: 4 },
  { change: { response: 'join' }, age: 4, tasks: 4 },
  { change: { columns: 3 }, age: 4, tasks: 2 },
  { change: { empty: 4 }, age: 4, tasks: 2 },
  { change: { rows: 3 }, age: 4, tasks: 2 },
  { change: { response: 'cut' }, age: 4, tasks: 2 },
  { change: { empty: 6 }, age: 5, tasks: 2 },
  { change: { extra: 1 }, age: 5, tasks: 2 },
  { change: { heads: 'one' }, age: 5, tasks: 2 },
  { change: { columns: 4 }, age: 5, tasks: 2 },
  { change: { heads: 'none' }, age: 5, tasks: 2 },
  { change: { rows: 4 }, age: 5, tasks: 2 },
  { change: { empty: 9 }, age: 5, tasks: 1 },
];

export const LADDER: readonly Step<TableValues>[] = ladderOf(FIRST, RUNGS);
