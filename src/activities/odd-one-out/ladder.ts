// The steps of odd-one-out: from three dots of colour up to pictures of which one is of another kind.
import type { AgeHint, Step } from '../activity.ts';
import { ladderOf } from '../ladder.ts';
import type { Parameters } from './task.ts';

const FIRST: Parameters = {
  content: 'colours',
  response: 'point',
  figures: 3,
  odd: 'any',
  vary: false,
  likeness: 'far',
  layout: 'row',
  mirrors: false,
};

/**
 * What each step changes. That more figures, likeness and idle variation are harder: Duncan & Humphreys 1989,
 * Psychol. Rev. 96(3) 433–458. The rest of the order and the ages: common practice, no source. Mirror images
 * stand on no step: four-year-olds do not find the odd one among them (Izard & Spelke 2009, Human Evolution
 * 23, 213–248; both seen at once also Fisher & Heincke 1982, Child Dev. 53(1) 235–238).
 */
const RUNGS: readonly (readonly [AgeHint, tasks: number, Partial<Parameters>])[] = [
  [3, 5, {}],
  [3, 5, { figures: 4 }],
  [3, 5, { likeness: 'near' }],
  [3, 5, { content: 'shapes' }],
  [4, 5, { figures: 5 }],
  [4, 5, { response: 'ring' }],
  [4, 5, { figures: 6 }],
  [4, 5, { vary: true }],
  [5, 3, { layout: 'loose' }],
  [5, 3, { figures: 7 }],
  [5, 3, { response: 'cross' }],
  [5, 3, { content: 'shapes-colours-and-sizes' }],
  [5, 3, { content: 'picture-kinds' }],
];

export const LADDER: readonly Step<Parameters>[] = ladderOf(
  FIRST,
  RUNGS.map(([age, tasks, change]) => ({ age, tasks, change })),
);
