// What makes a grid hard to fill, measured from what is printed; the thought is graded without the solver.
import { sameFigure } from '../../figures/index.ts';
import { drawingDeed } from '../drawing-deed.ts';
import type { Features } from '../features.ts';
import { likenessFeatures } from '../figure-features.ts';
import { type Deed, hardestHand } from '../hand.ts';
import { type Grading, gradingOf, LOGICS, type Units, unitsOf } from './grading.ts';
import type { Printed } from './task.ts';

export function features(printed: Printed): Features {
  const { rows, figures, boxes = false } = printed;
  const cells = rows
    .flat()
    .map((figure) => figure && figures.findIndex((other) => sameFigure(other, figure)));
  const units = unitsOf(rows.length, boxes);
  const empty = cells.filter((cell) => cell === null).length;
  // A grid that needs guessing is no sheet of ours; one from a file counts as the hardest there is.
  const grading = gradingOf(cells, units) ?? { logic: 'elsewhere', rounds: Math.max(1, empty) };
  return {
    compared: Math.log(seenFor(grading, units)),
    answers: Math.log(Math.max(1, empty)),
    ...likenessFeatures(figures),
    kinds: Math.log(figures.length),
    inferred: Math.log(grading.rounds),
    rule: 1 + LOGICS.indexOf(grading.logic) + (boxes ? 1 : 0),
    hand: hardestHand(deedsOf(printed)),
  };
}

/** How many cells must be looked at for one conclusion: a line, all lines through a cell, or the whole grid. */
function seenFor({ logic }: Grading, { order, lines, through }: Units): number {
  switch (logic) {
    case 'one-gap':
      return order;
    case 'row-and-column':
      return new Set((through[0] ?? []).flatMap((line) => lines[line] ?? [])).size;
    case 'elsewhere':
      return order ** 2;
  }
}

function deedsOf({ response = 'point', figures }: Printed): readonly Deed[] {
  if (response === 'draw') return figures.map(drawingDeed);
  // A counter is put down like a sticker.
  return [response === 'counters' ? 'sticker' : response];
}
