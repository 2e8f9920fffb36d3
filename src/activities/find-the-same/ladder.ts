// The steps of find-the-same: from three choices, two of them alike, up to eight of which seven are near misses.
import type { Step } from '../activity.ts';
import { ladderOf, type Rung } from '../ladder.ts';
import type { SameValues } from './task.ts';

const FIRST: SameValues = {
  content: 'shapes-and-colours',
  response: 'point',
  choices: 3,
  mixed: false,
  nearMisses: 0,
  likeness: 'far',
  mirrors: 'none',
  layout: 'grid',
};

/**
 * What each step changes. Ages: common practice, no source. More to compare, distractors that differ among
 * themselves and distractors like the target are harder (Duncan & Humphreys 1989, Psychol. Rev. 96(3)
 * 433–458), and so is what only joined features tell (Treisman & Gelade 1980, Cogn. Psychol. 12, 97–136).
 * Mirror images are on no step: seen side by side they are at chance from four to six (Corballis & Zalik
 * 1977, J. Exp. Child Psychol. 24, 516; Fisher & Heincke 1982, Child Dev. 53(1) 235–238).
 */
const RUNGS: readonly Rung<SameValues>[] = [
  { change: {}, age: 3, tasks: 4 },
  { change: { mixed: true }, age: 3, tasks: 4 },
  { change: { choices: 4 }, age: 3, tasks: 3 },
  { change: { response: 'ring' }, age: 3, tasks: 3 },
  { change: { choices: 5 }, age: 4, tasks: 3 },
  { change: { nearMisses: 1 }, age: 4, tasks: 3 },
  { change: { nearMisses: 2 }, age: 4, tasks: 3 },
  { change: { likeness: 'near' }, age: 4, tasks: 3 },
  { change: { choices: 6 }, age: 4, tasks: 3 },
  { change: { nearMisses: 3 }, age: 5, tasks: 3 },
  { change: { content: 'shapes-colours-and-sizes' }, age: 5, tasks: 3 },
  { change: { choices: 8 }, age: 5, tasks: 3 },
  { change: { nearMisses: 5 }, age: 5, tasks: 3 },
  { change: { nearMisses: 7 }, age: 5, tasks: 3 },
];

export const LADDER: readonly Step<SameValues>[] = ladderOf(FIRST, RUNGS);
