// What makes a table hard to fill, measured from what is printed.
import type { Figure } from '../../figures/index.ts';
import { drawingDeed } from '../drawing-deed.ts';
import type { Features } from '../features.ts';
import { ATTRIBUTES, compareFigures } from '../figure-comparison.ts';
import { distinctFigures, likenessFeatures } from '../figure-features.ts';
import { type Deed, hardestHand } from '../hand.ts';
import { type Printed, responseTo } from './task.ts';

export function features(printed: Printed): Features {
  const { rows, rowHeads, columnHeads, loose = [] } = printed;
  const empty = rows.flat().filter((figure) => figure === null).length;
  const figures = figuresOf(printed);
  const compared = Math.log(rows.length + (rows[0]?.length ?? 0));
  const conjunction = Math.max(0, changingIn(figures) - 1);
  const unheaded = [rowHeads, columnHeads].filter((heads) => !heads).length;
  return {
    compared,
    answers: Math.log(Math.max(1, empty)),
    ...likenessFeatures(figures),
    conjunction,
    conjunctionCompared: conjunction * compared,
    inferred: Math.log(1 + unheaded),
    rule: 1,
    absence: loose.length > empty ? 1 : 0,
    hand: hardestHand(deedsOf(printed, figures)),
  };
}

/** All different figures of the page; where nothing else is shown, the crossings of its heads. */
function figuresOf({
  rows,
  rowHeads = [],
  columnHeads = [],
  loose = [],
}: Printed): readonly Figure[] {
  const shown = [...rows.flat(), ...loose].filter((figure) => figure !== null);
  const crossed = rowHeads.flatMap((row) => columnHeads.map((column) => ({ ...row, ...column })));
  return distinctFigures([...shown, ...crossed]);
}

/** In how many attributes not all figures agree. */
function changingIn(figures: readonly Figure[]): number {
  const [first] = figures;
  if (!first) return 0;
  return ATTRIBUTES.filter(
    (attribute) =>
      attribute !== 'layout' &&
      figures.some((figure) => compareFigures(first, figure).differing.has(attribute)),
  ).length;
}

function deedsOf(printed: Printed, figures: readonly Figure[]): readonly Deed[] {
  const response = responseTo(printed);
  return response === 'draw' ? figures.map(drawingDeed) : [response];
}
