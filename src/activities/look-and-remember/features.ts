// What makes a task of look-and-remember hard, measured from the printed figures alone.
import type { Features } from '../features.ts';
import { type Attribute, areAlike, type Comparison, compareFigures } from '../figure-comparison.ts';
import { meanOf, neededToTell } from '../figure-features.ts';
import { type Deed, handLevel } from '../hand.ts';
import type { Printed, Response } from './task.ts';

const DEEDS: Readonly<Record<Response, Deed>> = {
  point: 'point',
  sticker: 'sticker',
  ring: 'ring',
  cross: 'sign-oblique-cross',
};

export function features({ set, choices, layout, response }: Printed): Features {
  const seen = choices.filter((choice) => set.some((figure) => areAlike(figure, choice)));
  const wrong = choices.filter((choice) => !seen.includes(choice));
  const pairs = wrong.map((choice) => set.map((figure) => compareFigures(figure, choice)));
  const compared = Math.log(choices.length);
  // So that each wrong one is seen to differ from each in the frame.
  const conjunction = neededToTell(pairs.flat().map(({ differing }) => differing)) - 1;
  return {
    compared,
    memory: Math.log(1 + set.length),
    answers: Math.log(Math.max(1, seen.length)),
    nearMisses: Math.log(1 + countNear(pairs)),
    likeness: meanOf(pairs.map((all) => most(all.map(({ likeness }) => likeness)))),
    quantities: meanOf(pairs.map((all) => most(all.map(({ countShare = 0 }) => countShare)))),
    mirrored: meanOf(pairs.map((all) => (all.some(({ isMirror }) => isMirror) ? 1 : 0))),
    oblique: meanOf(pairs.map((all) => (all.some(({ isOblique }) => isOblique) ? 1 : 0))),
    absence: seen.length < set.length ? 1 : 0,
    conjunction,
    conjunctionCompared: conjunction * compared,
    disorder: layout === 'loose' ? 1 : 0,
    hand: handLevel(DEEDS[response ?? 'point']),
  };
}

/** Wrong ones that have all but one of several attributes of a figure in the frame. */
function countNear(pairs: readonly (readonly Comparison[])[]): number {
  if (attributesIn(pairs.flat()).length < 2) return 0;
  return pairs.filter((all) => all.some(({ differing }) => differing.size === 1)).length;
}

function attributesIn(pairs: readonly Comparison[]): readonly Attribute[] {
  return [...new Set(pairs.flatMap(({ differing }) => [...differing]))];
}

function most(numbers: readonly number[]): number {
  return Math.max(0, ...numbers);
}
