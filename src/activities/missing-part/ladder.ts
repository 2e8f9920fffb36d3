// The steps of missing-part: from a field in rows with one figure missing up to a piece of four under two rules.
import type { Step } from '../activity.ts';
import { ladderOf, type Rung } from '../ladder.ts';
import type { PartValues } from './task.ts';

const FIRST: PartValues = {
  content: 'shapes-and-colours',
  response: 'point',
  rule: 'rows',
  second: 'same',
  field: 3,
  hole: 'one',
  choices: 2,
  likeness: 'far',
};

/**
 * What each step changes. Patterns that repeat at once are gone on with before longer ones (Rittle-Johnson et
 * al. 2013, J. Cogn. Dev.), and two rules at once come late (Halford, Wilson & Phillips 1998, Behav. Brain Sci.
 * 21, 803–831, from memory); the other changes and the ages: common practice, no source.
 */
const RUNGS: readonly Rung<PartValues>[] = [
  { change: {}, age: 3, tasks: 3 },
  { change: { choices: 3 }, age: 3, tasks: 3 },
  { change: { rule: 'checker' }, age: 3, tasks: 3 },
  { change: { likeness: 'near' }, age: 4, tasks: 3 },
  { change: { choices: 4 }, age: 4, tasks: 3 },
  { change: { field: 4 }, age: 4, tasks: 2 },
  { change: { response: 'ring' }, age: 4, tasks: 2 },
  { change: { rule: 'diagonal' }, age: 5, tasks: 2 },
  { change: { hole: 'two' }, age: 5, tasks: 2 },
  { change: { second: 'columns' }, age: 5, tasks: 2 },
];

export const LADDER: readonly Step<PartValues>[] = ladderOf(FIRST, RUNGS);
