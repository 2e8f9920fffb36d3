// The steps of same-or-different: from two pairs, of which one differs in form, up to eight that may differ in three things.
import type { Step } from '../activity.ts';
import { ladderOf, type Rung } from '../ladder.ts';
import type { PairValues } from './task.ts';

const FIRST: PairValues = {
  content: 'shapes-and-colours',
  response: 'point',
  pairs: 2,
  checked: 1,
  likeness: 'far',
  idle: false,
  mirrors: 'none',
};

/**
 * What each step changes. Ages: common practice, no source. More to compare and differences that are nearer are
 * harder (Duncan & Humphreys 1989, Psychol. Rev. 96(3) 433–458); so is a difference that may be in any of
 * several attributes, which asks for looking from feature to feature before saying “the same” (Vurpillot 1968,
 * J. Exp. Child Psychol. 6, 632–650, from memory). Mirror images are on no step: seen side by side they are at
 * chance from four to six (Corballis & Zalik 1977, J. Exp. Child Psychol. 24, 516; Fisher & Heincke 1982, Child
 * Dev. 53(1) 235–238).
 */
const RUNGS: readonly Rung<PairValues>[] = [
  { change: {}, age: 3, tasks: 4 },
  { change: { pairs: 3 }, age: 3, tasks: 3 },
  { change: { response: 'dot' }, age: 3, tasks: 3 },
  { change: { pairs: 4 }, age: 3, tasks: 3 },
  { change: { idle: true }, age: 4, tasks: 3 },
  { change: { checked: 2 }, age: 4, tasks: 3 },
  { change: { likeness: 'middle' }, age: 4, tasks: 3 },
  { change: { response: 'ring' }, age: 4, tasks: 3 },
  { change: { pairs: 5 }, age: 4, tasks: 2 },
  { change: { content: 'shapes-colours-and-sizes' }, age: 5, tasks: 2 },
  { change: { pairs: 6 }, age: 5, tasks: 2 },
  { change: { checked: 3 }, age: 5, tasks: 2 },
  { change: { likeness: 'near' }, age: 5, tasks: 2 },
  { change: { pairs: 8 }, age: 5, tasks: 1 },
];

export const LADDER: readonly Step<PairValues>[] = ladderOf(FIRST, RUNGS);
