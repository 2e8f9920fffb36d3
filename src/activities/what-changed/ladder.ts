// The steps of what-changed: from one of four figures that is gone up to three changes of one attribute among ten.
import type { Step } from '../activity.ts';
import { ladderOf, type Rung } from '../ladder.ts';
import type { ChangeValues } from './task.ts';

const FIRST: ChangeValues = {
  content: 'shapes-and-colours',
  response: 'point',
  kind: 'gone',
  figures: 4,
  changes: 1,
  likeness: 'far',
  layout: 'grid',
};

/**
 * What each step changes. More to compare and changes that are less of a change are harder (Duncan & Humphreys
 * 1989, Psychol. Rev. 96(3) 433–458); children compare only some of the features of two pictures before about
 * six and a half (Vurpillot 1968, J. Exp. Child Psychol. 6, 632–650, from memory), so that two attributes that
 * may change come late. Ages: common practice, no source.
 */
const RUNGS: readonly Rung<ChangeValues>[] = [
  { change: {}, age: 3, tasks: 3 },
  { change: { kind: 'first' }, age: 3, tasks: 3 },
  { change: { figures: 6 }, age: 3, tasks: 4 },
  { change: { response: 'ring' }, age: 4, tasks: 4 },
  { change: { changes: 2 }, age: 4, tasks: 4 },
  { change: { layout: 'loose' }, age: 4, tasks: 4 },
  { change: { figures: 8 }, age: 4, tasks: 2 },
  { change: { kind: 'any' }, age: 5, tasks: 2 },
  { change: { likeness: 'near' }, age: 5, tasks: 2 },
  { change: { changes: 3 }, age: 5, tasks: 2 },
  { change: { content: 'shapes-colours-and-sizes' }, age: 5, tasks: 2 },
  { change: { figures: 10 }, age: 5, tasks: 2 },
];

export const LADDER: readonly Step<ChangeValues>[] = ladderOf(FIRST, RUNGS);
