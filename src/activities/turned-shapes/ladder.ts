// The steps of turned-shapes: from one bigger shape among three up to two turned at a slant among eight.
import type { Step } from '../activity.ts';
import { ladderOf, type Rung } from '../ladder.ts';
import type { TurnedValues } from './task.ts';

const FIRST: TurnedValues = {
  content: 'shapes',
  response: 'point',
  choices: 3,
  matches: 1,
  turn: 'none',
  resize: 'bigger',
  mixed: false,
  likeness: 'far',
  colours: 'one',
  mirrors: false,
  layout: 'grid',
};

/**
 * What each step changes. Ages: common practice, no source. More turn takes longer (Shepard & Metzler 1971, Science
 * 171, 701–703, from memory); distractors like the target are harder (Duncan & Humphreys 1989, Psychol. Rev. 96(3)
 * 433–458). Mirror images are on no step: they are at chance from four to six (Corballis & Zalik 1977, J. Exp. Child
 * Psychol. 24, 516).
 */
const RUNGS: readonly Rung<TurnedValues>[] = [
  { change: {}, age: 3, tasks: 4 },
  { change: { mixed: true }, age: 3, tasks: 4 },
  { change: { choices: 4 }, age: 3, tasks: 3 },
  { change: { turn: 'quarter' }, age: 3, tasks: 3 },
  { change: { response: 'ring' }, age: 4, tasks: 3 },
  { change: { colours: 'mixed' }, age: 4, tasks: 3 },
  { change: { choices: 5 }, age: 4, tasks: 3 },
  { change: { likeness: 'near' }, age: 4, tasks: 3 },
  { change: { choices: 6 }, age: 4, tasks: 3 },
  { change: { matches: 2 }, age: 5, tasks: 3 },
  { change: { turn: 'eighth' }, age: 5, tasks: 3 },
  { change: { colours: 'lure' }, age: 5, tasks: 3 },
  { change: { choices: 8 }, age: 5, tasks: 3 },
];

export const LADDER: readonly Step<TurnedValues>[] = ladderOf(FIRST, RUNGS);
