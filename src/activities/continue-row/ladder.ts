// The steps of continue-row: from two colours in turn up to two attributes with a unit each, one change at a time.
import type { Step } from '../activity.ts';
import { ladderOf, type Rung } from '../ladder.ts';
import type { RowValues } from './task.ts';

const FIRST: RowValues = {
  content: 'colours',
  response: 'point',
  unit: 'AB',
  second: 'same',
  shown: 6,
  missing: 1,
  gap: 'end',
  choices: 2,
  stickerMm: '16',
};

/**
 * What each step changes. A row is first gone on with, later filled in the middle, as four-year-olds extend
 * a pattern before they can tell what repeats in it (Rittle-Johnson et al. 2013, J. Cogn. Dev.); the other
 * changes and the ages: common practice, no source. The child points all the way up, which every content
 * allows; stickers, colouring in, drawing and ringing are there to choose.
 */
const RUNGS: readonly Rung<RowValues>[] = [
  { change: {}, age: 3, tasks: 3 },
  { change: { choices: 3 }, age: 3, tasks: 3 },
  { change: { unit: 'ABB' }, age: 3, tasks: 3 },
  { change: { unit: 'ABC' }, age: 4, tasks: 3 },
  { change: { missing: 2 }, age: 4, tasks: 3 },
  { change: { shown: 8 }, age: 4, tasks: 3 },
  { change: { unit: 'ABBC' }, age: 4, tasks: 4 },
  { change: { gap: 'middle' }, age: 5, tasks: 4 },
  { change: { choices: 4 }, age: 5, tasks: 4 },
  { change: { content: 'shapes-and-colours' }, age: 5, tasks: 4 },
  { change: { second: 'AB' }, age: 5, tasks: 4 },
  { change: { missing: 3 }, age: 5, tasks: 4 },
];

export const LADDER: readonly Step<RowValues>[] = ladderOf(FIRST, RUNGS);
