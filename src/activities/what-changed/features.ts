// What makes it hard to find the changes, measured from the printed pictures alone.
import type { Features } from '../features.ts';
import { compareFigures } from '../figure-comparison.ts';
import { type Deed, handLevel } from '../hand.ts';
import type { Printed, Response } from './task.ts';

const DEEDS: Readonly<Record<Response, Deed>> = {
  point: 'point',
  ring: 'ring',
  cross: 'sign-oblique-cross',
};

export function features({ first, second, nudges, response }: Printed): Features {
  const pairs = first.flatMap((before, place) => {
    const after = second[place];
    return before && after ? [compareFigures(before, after)] : [];
  });
  const changed = pairs.filter((pair) => !pair.isAlike);
  const holes = first.filter((before, place) => !before !== !second[place]).length;
  const differing = Math.max(1, changed.length + holes);
  const shown = [...first, ...second].filter((figure) => figure !== null).length;
  const compared = Math.log(Math.max(1, shown));
  const ways = new Set(changed.flatMap((pair) => [...pair.differing]));
  const conjunction = Math.max(0, ways.size + (holes > 0 ? 1 : 0) - 1);
  const share = (amounts: readonly number[]) =>
    amounts.reduce((sum, amount) => sum + amount, 0) / differing;
  return {
    compared,
    answers: Math.log(differing),
    // What is still there, the same but for one thing, is overlooked; an empty place is not.
    nearMisses: Math.log(1 + changed.filter((pair) => pair.differing.size === 1).length),
    likeness: share(changed.map((pair) => pair.likeness)),
    quantities: share(changed.map(({ countShare = 0 }) => countShare)),
    mirrored: share(changed.map((pair) => (pair.isMirror ? 1 : 0))),
    oblique: share(changed.map((pair) => (pair.isOblique ? 1 : 0))),
    conjunction,
    conjunctionCompared: conjunction * compared,
    disorder: nudges ? 1 : 0,
    hand: handLevel(DEEDS[response ?? 'point']),
  };
}
