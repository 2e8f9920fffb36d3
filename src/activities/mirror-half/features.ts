// What makes a task of mirror-half hard, measured from what is printed alone.
import { type Figure, formOf, sameFigure } from '../../figures/index.ts';
import { formDeed } from '../drawing-deed.ts';
import type { Features } from '../features.ts';
import { compareFigures } from '../figure-comparison.ts';
import { attributesNeeded, distinctFigures, likenessFeatures } from '../figure-features.ts';
import { handLevel, hardestHand } from '../hand.ts';
import { missingPlaces, seenIn, wholeOf } from './solve-places.ts';
import { type Cells, type Printed, responseTo } from './task.ts';

/** How like the right half a child finds the given one shifted, or turned half round; provisional. */
const COPIED_LIKENESS = 0.85;
const TURNED_LIKENESS = 0.7;

export function features(printed: Printed): Features {
  const { part, axis, offered = [] } = printed;
  const elements = part.cells.filter((figure) => figure !== null);
  const kinds = distinctFigures(elements);
  const whole = wholeOf(printed);
  const missing = whole.length - part.cells.length;
  const chosen = offered.length > 0 ? chosenFeatures(printed) : undefined;
  const changed = elements.filter((figure) => isChanged(figure, printed));
  const mirrored = changed.length / elements.length;
  return {
    elements: Math.log(elements.length),
    places: Math.log(part.cells.length),
    kinds: Math.log(kinds.length),
    repeats: Math.log(missing / part.cells.length),
    conjunction: kinds.length < 2 ? 0 : attributesNeeded(kinds) - 1,
    ...likenessFeatures(kinds),
    mirrored,
    levelLine: { upright: 0, level: 1, both: 0.5 }[axis],
    rule: axis === 'both' ? 2 : 1,
    ...chosen,
    hand: handOf(printed, kinds),
  };
}

/** Whether a line of the task turns the figure round. */
function isChanged(figure: Figure, { axis }: Printed): boolean {
  const lines = axis === 'both' ? (['upright', 'level'] as const) : ([axis] as const);
  return lines.some((line) => !sameFigure(figure, seenIn(figure, [line])));
}

/** How many halves there are, and how near the wrong ones come to the right one. */
function chosenFeatures(printed: Printed): Features {
  const { part, offered = [] } = printed;
  const right = missingPlaces(printed).map(({ source, lines }) => {
    const figure = part.cells[source] ?? null;
    return figure && seenIn(figure, lines);
  });
  const wrong = offered.filter(({ cells }) => shareOf(cells, right) < 1);
  const likeness = wrong.map(({ cells }) => {
    if (shareOf(cells, part.cells) === 1) return COPIED_LIKENESS;
    if (shareOf(cells, [...part.cells].reverse()) === 1) return TURNED_LIKENESS;
    return elementShare(cells, right);
  });
  const near = wrong.filter(({ cells }) => isOneOff(cells, right));
  const copied = wrong.filter(({ cells }) => shareOf(cells, part.cells) === 1);
  const count = Math.max(1, wrong.length);
  return {
    compared: Math.log(Math.max(1, offered.length)),
    nearMisses: Math.log(1 + near.length),
    likeness: likeness.reduce((sum, next) => sum + next, 0) / count,
    mirrored: copied.length / count,
  };
}

/** Share of the places that hold the same. */
function shareOf(one: Cells, other: Cells): number {
  return one.filter((cell, place) => isLike(cell, other[place] ?? null)).length / one.length;
}

/** Share of the elements of the right half that are in their places. */
function elementShare(cells: Cells, right: Cells): number {
  const elements = right.flatMap((figure, place) => (figure ? [place] : []));
  const kept = elements.filter((place) => isLike(cells[place] ?? null, right[place] ?? null));
  return kept.length / elements.length;
}

/** One element of three or more stands elsewhere, or is another. */
function isOneOff(cells: Cells, right: Cells): boolean {
  const elements = right.filter((figure) => figure !== null).length;
  return elements > 2 && Math.round(elements * (1 - elementShare(cells, right))) === 1;
}

function isLike(one: Figure | null, other: Figure | null): boolean {
  if (one === null || other === null) return one === other;
  return compareFigures(one, other).isAlike;
}

function handOf(printed: Printed, kinds: readonly Figure[]): number {
  const response = responseTo(printed);
  return response === 'draw'
    ? hardestHand(kinds.map((kind) => formDeed(formOf(kind))))
    : handLevel(response);
}
