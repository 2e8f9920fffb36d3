// What makes a task of odd-one-out hard, measured from the printed figures alone.
import type { Figure } from '../../figures/index.ts';
import type { Features } from '../features.ts';
import { compareFigures } from '../figure-comparison.ts';
import { distinctFigures, idleAttributes, likenessFeatures, mixture } from '../figure-features.ts';
import { type Deed, handLevel } from '../hand.ts';
import { solve } from './solve.ts';
import { lookOf } from './solve-looks.ts';
import type { Printed, Response } from './task.ts';

const DEEDS: Readonly<Record<Response, Deed>> = {
  point: 'point',
  sticker: 'sticker',
  ring: 'ring',
  cross: 'sign-oblique-cross',
};

export function features(printed: Printed): Features {
  const { figures, shifts, response = 'point' } = printed;
  const odd = figures[solve(printed).answers[0]?.odd ?? 0];
  const others = figures.filter((figure) => figure !== odd);
  const pair = odd ? [odd, ...nearestTo(odd, others)] : [];
  return {
    compared: Math.log(figures.length),
    ...likenessFeatures(pair),
    mixed: mixture(others),
    idle: idleAttributes(others, []),
    rule: odd ? relatedBy(odd, others) : 1,
    disorder: shifts ? 1 : 0,
    hand: handLevel(DEEDS[response]),
  };
}

/**
 * That like goes with like is one thing to relate. Where no two are alike, that they are of one kind is one
 * more, and another is a colour that the odd one shares, which speaks against its being odd.
 */
function relatedBy(odd: Figure, others: readonly Figure[]): number {
  const isAllDifferent = distinctFigures([odd, ...others]).length === others.length + 1;
  const isColourShared = others.some((other) => lookOf(other, 'colour') === lookOf(odd, 'colour'));
  return isAllDifferent ? (isColourShared ? 3 : 2) : 1;
}

/** The figure that the odd one is most easily taken for. */
function nearestTo(odd: Figure, others: readonly Figure[]): readonly Figure[] {
  const likenesses = others.map((other) => compareFigures(odd, other).likeness);
  const nearest = others[likenesses.indexOf(Math.max(...likenesses))];
  return nearest ? [nearest] : [];
}
