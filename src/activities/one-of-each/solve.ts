// Finds every way in which the printed grid can be filled, and what makes a page unfit.
import { type Figure, sameFigure } from '../../figures/index.ts';
import type { Findings } from '../activity.ts';
import { completionsOf } from './solve-completions.ts';
import { faultsOf } from './solve-faults.ts';
import type { Answer, Printed } from './task.ts';

/** As many answers as are told; more than one is too many. */
const MOST_ANSWERS = 20;

export function solve(printed: Printed): Findings<Answer> {
  const { rows, figures, boxes = false } = printed;
  const order = figures.length;
  const cells = rows.flat();
  const numbers = cells.map((figure) => (figure ? numberOf(figures, figure) : null));
  const isSquare = rows.length === order && rows.every((row) => row.length === order);
  const isKnown = numbers.every((number) => number !== -1);
  const completions =
    isSquare && isKnown ? completionsOf(numbers, { order, boxes }, MOST_ANSWERS) : [];
  const answers = completions.map((full) => ({
    figures: full.flatMap((number, cell) => {
      const figure = figures[number];
      return cells[cell] === null && figure ? [figure] : [];
    }),
  }));
  return { answers, faults: faultsOf(printed, isSquare, isKnown, answers) };
}

function numberOf(figures: readonly Figure[], figure: Figure): number {
  return figures.findIndex((other) => sameFigure(other, figure));
}
