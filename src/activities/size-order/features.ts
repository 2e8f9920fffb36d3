// What makes a task of size-order hard, measured from the printed figures alone.
import { type Figure, formOf, pairLikeness } from '../../figures/index.ts';
import type { Features } from '../features.ts';
import { compareFigures } from '../figure-comparison.ts';
import { meanOf } from '../figure-features.ts';
import { type Deed, handLevel } from '../hand.ts';
import { lengthOf } from './extent.ts';
import type { Asked, Printed, Response } from './task.ts';

const DEEDS: Readonly<Record<Response, Deed>> = {
  point: 'point',
  ring: 'ring',
  dots: 'sign-dot',
  join: 'join',
  cut: 'cut',
};

/** An extreme is set against all others; what stands between is bigger than some and smaller than others. */
const RELATED: Readonly<Record<Asked, number>> = { biggest: 1, smallest: 1, middle: 2, order: 2 };

export function features({ figures, asked = 'order', response, layout }: Printed): Features {
  const isOfDots = figures.every((figure) => formOf(figure) === 'dots');
  const pairs = figures.map((one) => figures.filter((other) => other !== one).map(ratioTo(one)));
  const nearest = pairs.map((ratios) => Math.max(0, ...ratios));
  return {
    compared: Math.log(figures.length),
    answers: asked === 'order' ? Math.log(figures.length) : 0,
    likeness: meanOf(figures.map((one) => mostLikeness(one, figures, isOfDots))),
    quantities: isOfDots ? meanOf(nearest) : 0,
    rule: RELATED[asked],
    idle: idleCount(figures),
    disorder: layout === 'loose' ? 1 : 0,
    hand: handLevel(DEEDS[response ?? 'point']),
  };
}

/** Smaller over larger, of numbers or of lengths. */
function ratioTo(one: Figure): (other: Figure) => number {
  const amountOf = (figure: Figure) =>
    formOf(figure) === 'dots' ? (figure.count ?? 1) : lengthOf(figure);
  return (other) => {
    const [a, b] = [amountOf(one), amountOf(other)];
    return Math.min(a, b) / Math.max(a, b);
  };
}

/** The likeness to the figure nearest in size, form and colour left aside: they say nothing of the order. */
function mostLikeness(one: Figure, figures: readonly Figure[], isOfDots: boolean): number {
  const others = figures.filter((other) => other !== one);
  if (isOfDots) {
    return Math.max(0, ...others.map((other) => compareFigures(one, other).likeness));
  }
  const nearest = Math.max(0, ...others.map(ratioTo(one)));
  return pairLikeness({ size: 1 }, { size: nearest });
}

/** How many attributes change besides the size or the number. */
function idleCount(figures: readonly Figure[]): number {
  const looks = [formOf, ({ colour }: Figure) => colour, ({ fill }: Figure) => fill ?? 'solid'];
  return looks.filter((look) => new Set(figures.map(look)).size > 1).length;
}
