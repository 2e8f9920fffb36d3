// The steps of tangle: from two outlines that hardly overlap up to six that lie over one another.
import type { Step } from '../activity.ts';
import { ladderOf, type Rung } from '../ladder.ts';
import type { TangleValues } from './task.ts';

const FIRST: TangleValues = {
  content: 'shapes',
  response: 'point',
  shown: 2,
  absent: 1,
  overlap: 'little',
};

/**
 * What each step changes. Overlapping outlines are seen apart by most children of four to five, more and closer
 * ones later (Ghent 1956, Am. J. Psychol. 69, 575–587, from memory); the order of the steps and the ages in
 * single: common practice, no source.
 */
const RUNGS: readonly Rung<TangleValues>[] = [
  { change: {}, age: 3, tasks: 2 },
  { change: { absent: 2 }, age: 3, tasks: 2 },
  { change: { overlap: 'half' }, age: 3, tasks: 2 },
  { change: { shown: 3 }, age: 4, tasks: 2 },
  { change: { response: 'ring' }, age: 4, tasks: 2 },
  { change: { absent: 3 }, age: 4, tasks: 2 },
  { change: { overlap: 'much' }, age: 4, tasks: 2 },
  { change: { shown: 4 }, age: 4, tasks: 2 },
  { change: { absent: 4 }, age: 5, tasks: 2 },
  { change: { shown: 5 }, age: 5, tasks: 2 },
  { change: { shown: 6 }, age: 5, tasks: 2 },
];

export const LADDER: readonly Step<TangleValues>[] = ladderOf(FIRST, RUNGS);
