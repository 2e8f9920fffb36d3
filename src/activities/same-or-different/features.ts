// What makes a task of same-or-different hard, measured from the printed pairs alone.
import type { Features } from '../features.ts';
import { compareFigures } from '../figure-comparison.ts';
import { idleAttributes, mixture, pairFeatures } from '../figure-features.ts';
import { type Deed, hardestHand } from '../hand.ts';
import type { Printed, Response } from './task.ts';

const DEEDS: Readonly<Record<Response, readonly Deed[]>> = {
  point: ['point'],
  dot: ['sign-dot'],
  ring: ['ring'],
  cross: ['sign-oblique-cross'],
  signs: ['sign-dot', 'sign-upright-line'],
};

export function features({ pairs, response = 'point' }: Printed): Features {
  const compared = pairs.map(([one, other]) => compareFigures(one, other));
  const different = compared.filter(({ isAlike }) => !isAlike);
  const within = new Set(different.flatMap(({ differing }) => [...differing]));
  const conjunction = Math.max(0, within.size - 1);
  const figures = Math.log(2 * pairs.length);
  const near = conjunction === 0 ? [] : different.filter(({ differing }) => differing.size === 1);
  return {
    compared: figures,
    answers: Math.log(Math.max(1, markedIn(response, pairs.length, different.length))),
    nearMisses: Math.log(1 + near.length),
    ...pairFeatures(different),
    mixed: mixture(pairs.map(([one]) => one)),
    conjunction,
    conjunctionCompared: conjunction * figures,
    idle: Math.max(0, idleAttributes(pairs.flat(), []) - within.size),
    hand: hardestHand(DEEDS[response]),
    movements: Math.log(DEEDS[response].length),
  };
}

/** How many pairs get something: those that are the same, those that are not, or all. */
function markedIn(response: Response, pairs: number, different: number): number {
  if (response === 'signs') return pairs;
  return response === 'cross' ? different : pairs - different;
}
