// The steps of look-and-remember: from one figure among three up to four among ten that are nearly right.
import type { Step } from '../activity.ts';
import { ladderOf, type Rung } from '../ladder.ts';
import type { RememberValues } from './task.ts';

const FIRST: RememberValues = {
  content: 'shapes-and-colours',
  response: 'point',
  set: 1,
  again: 'all',
  choices: 3,
  nearMisses: 0,
  likeness: 'far',
  layout: 'rows',
};

/**
 * What each step changes. How many things are kept in mind after a short look grows from about two at three to
 * three or four at five (Simmering 2012, J. Exp. Child Psychol. 111, 695–707, from memory); what joins two
 * attributes is lost sooner than either (Treisman & Gelade 1980, Cogn. Psychol. 12, 97–136). The other changes
 * and the ages: common practice, no source.
 */
const RUNGS: readonly Omit<Rung<RememberValues>, 'tasks'>[] = [
  { change: {}, age: 3 },
  { change: { choices: 4 }, age: 3 },
  { change: { set: 2 }, age: 3 },
  { change: { response: 'ring' }, age: 4 },
  { change: { choices: 6 }, age: 4 },
  { change: { nearMisses: 1 }, age: 4 },
  { change: { set: 3 }, age: 4 },
  { change: { nearMisses: 2 }, age: 4 },
  { change: { choices: 8 }, age: 5 },
  { change: { layout: 'loose' }, age: 5 },
  { change: { likeness: 'near' }, age: 5 },
  { change: { nearMisses: 4 }, age: 5 },
  { change: { set: 4 }, age: 5 },
];

/** One task fills a sheet, which is folded in its middle. */
export const LADDER: readonly Step<RememberValues>[] = ladderOf(
  FIRST,
  RUNGS.map((rung) => ({ ...rung, tasks: 1 })),
);
