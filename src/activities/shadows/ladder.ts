// The steps of shadows: from one picture with three shadows up to five pictures that look for theirs among six.
import type { Step } from '../activity.ts';
import { ladderOf, type Rung } from '../ladder.ts';
import type { ShadowValues } from './task.ts';

const FIRST: ShadowValues = {
  content: 'pictures',
  response: 'point',
  models: 1,
  shadows: 3,
  likeness: 'far',
  resize: 'same',
  mirrors: 'none',
};

/**
 * What each step changes. Ages: common practice, no source. More to compare and outlines that are nearer are
 * harder (Duncan & Humphreys 1989, Psychol. Rev. 96(3) 433–458). Mirror images are on no step: seen side by
 * side they are at chance from four to six (Corballis & Zalik 1977, J. Exp. Child Psychol. 24, 516; Fisher &
 * Heincke 1982, Child Dev. 53(1) 235–238).
 */
const RUNGS: readonly Rung<ShadowValues>[] = [
  { change: {}, age: 3, tasks: 4 },
  { change: { shadows: 4 }, age: 3, tasks: 3 },
  { change: { response: 'join' }, age: 3, tasks: 2 },
  { change: { models: 2 }, age: 4, tasks: 2 },
  { change: { shadows: 5 }, age: 4, tasks: 2 },
  { change: { models: 3 }, age: 4, tasks: 2 },
  { change: { resize: 'smaller' }, age: 4, tasks: 2 },
  { change: { likeness: 'middle' }, age: 4, tasks: 2 },
  { change: { models: 4 }, age: 5, tasks: 2 },
  { change: { shadows: 6 }, age: 5, tasks: 2 },
  { change: { likeness: 'near' }, age: 5, tasks: 2 },
  { change: { models: 5 }, age: 5, tasks: 2 },
  { change: { resize: 'mixed' }, age: 5, tasks: 2 },
];

export const LADDER: readonly Step<ShadowValues>[] = ladderOf(FIRST, RUNGS);
