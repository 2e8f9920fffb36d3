// What makes a task of shadows hard, measured from the printed models and shadows alone.
import type { Figure } from '../../figures/index.ts';
import type { Features } from '../features.ts';
import { compareFigures } from '../figure-comparison.ts';
import { meanOf } from '../figure-features.ts';
import { handLevel } from '../hand.ts';
import type { Printed } from './task.ts';

/** No two shadows are ever alike, so that how much they differ among themselves says no more than `likeness`. */
export function features({ models, shadows, response = 'point' }: Printed): Features {
  const outlines = shadows.map(outlineAlone);
  const rows = models.map((model) =>
    outlines.map((outline) => compareFigures(outlineAlone(model), outline)),
  );
  const wrong = rows.flatMap((row) => row.filter(({ isAlike }) => !isAlike));
  const places = rows.map((row) => row.findIndex(({ isAlike }) => isAlike));
  return {
    compared: Math.log(models.length + shadows.length),
    answers: Math.log(models.length),
    likeness: meanOf(wrong.map(({ likeness }) => likeness)),
    mirrored: meanOf(wrong.map(({ isMirror }) => (isMirror ? 1 : 0))),
    oblique: meanOf(wrong.map(({ isOblique }) => (isOblique ? 1 : 0))),
    resized: meanOf(models.flatMap((model) => shadows.map((shadow) => resizedBy(model, shadow)))),
    crossings: response === 'join' ? Math.log(1 + crossingsOf(places)) : 0,
    hand: handLevel(response),
  };
}

function outlineAlone({ form, turn, mirrored }: Figure): Figure {
  return { form, turn, mirrored, fill: 'solid' };
}

function resizedBy({ size = 1 }: Figure, { size: otherSize = 1 }: Figure): number {
  return Math.abs(Math.log(otherSize / size));
}

/** How many lines from a row to the row below it cross, by the places where they end. */
function crossingsOf(places: readonly number[]): number {
  return places.flatMap((place, index) => places.slice(index + 1).filter((next) => next < place))
    .length;
}
