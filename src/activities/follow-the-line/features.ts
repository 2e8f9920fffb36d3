// What makes a follow-the-line task hard, measured from the printed lines and figures.
import type { Features } from '../features.ts';
import { likenessFeatures } from '../figure-features.ts';
import { type Deed, handLevel } from '../hand.ts';
import { meetingsOf, pointsOf } from './solve-meetings.ts';
import type { Printed, Response } from './task.ts';

const DEEDS: Readonly<Record<Response, Deed>> = {
  point: 'point',
  trace: 'join',
  sticker: 'sticker',
  'colour-in': 'colour-in',
};

/** Lines in one ink are as like as can be; they count as much as the figures that they start from. */
export function features({ starts, lines, colours, response = 'point' }: Printed): Features {
  const meetings = meetingsOf(lines.map(pointsOf));
  const crossings = meetings.filter(({ angleDeg }) => angleDeg !== undefined).length;
  return {
    compared: Math.log(lines.length),
    answers: Math.log(lines.length),
    crossings: Math.log(1 + crossings),
    likeness:
      (likenessOf(starts) + (colours ? likenessOf(colours.map((colour) => ({ colour }))) : 1)) / 2,
    hand: handLevel(DEEDS[response]),
  };
}

function likenessOf(figures: Printed['starts']): number {
  return likenessFeatures(figures).likeness ?? 0;
}
