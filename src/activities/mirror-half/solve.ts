// Finds every way to finish the picture that the printed page admits, from the page alone.
import {
  type Figure,
  fairlyDifferent,
  formOf,
  isLetter,
  isNumeral,
  sameFigure,
} from '../../figures/index.ts';
import type { Findings } from '../activity.ts';
import { faultsOf } from './solve-faults.ts';
import { missingPlaces, type Place, seenIn, wholeOf } from './solve-places.ts';
import { type Answer, type Cells, isChosen, type Printed, responseTo } from './task.ts';

/**
 * Every place of the picture is looked at across the line, or both lines: what stands there is seen here in the
 * mirror. A letter or numeral that its mirror image is not may be meant as it is written: that is a second answer.
 */
export function solve(printed: Printed): Findings<Answer> {
  const faults = faultsOf(printed);
  const { rows, columns, cells } = printed.part;
  if (cells.length !== rows * columns) return { answers: [], faults };
  const readings = [wholeIn(printed, 'mirror')];
  if (cells.some((figure) => figure && isOtherCharacter(figure, printed))) {
    readings.push(wholeIn(printed, 'as-written'));
  }
  if (!isChosen(responseTo(printed)))
    return { answers: readings.map((whole) => ({ cells: whole })), faults };
  return { answers: chosen(printed, readings), faults };
}

function wholeIn(printed: Printed, reading: 'mirror' | 'as-written'): Cells {
  return wholeOf(printed).map(({ source, lines }) => {
    const figure = printed.part.cells[source] ?? null;
    const isKept = reading === 'as-written' && figure && isCharacter(figure);
    return figure && !isKept ? seenIn(figure, lines) : figure;
  });
}

function isCharacter(figure: Figure): boolean {
  const form = formOf(figure);
  return isLetter(form) || isNumeral(form);
}

function isOtherCharacter(figure: Figure, { axis }: Printed): boolean {
  const lines = axis === 'both' ? (['upright', 'level'] as const) : ([axis] as const);
  return isCharacter(figure) && lines.some((line) => !sameFigure(figure, seenIn(figure, [line])));
}

/** The offered halves that are the missing one, first those that print alike, then those hardly different. */
function chosen(printed: Printed, readings: readonly Cells[]): readonly Answer[] {
  const places = missingPlaces(printed);
  const fits = (isLike: (one: Figure, other: Figure) => boolean) =>
    (printed.offered ?? []).flatMap(({ cells }, choice) =>
      readings.some((whole) => agrees(cells, places, whole, isLike)) ? [choice] : [],
    );
  const alike = fits(sameFigure);
  const loose = fits((one, other) => !fairlyDifferent(one, other));
  return [...new Set([...alike, ...(alike.length > 0 ? loose : [])])].map((choice) => ({ choice }));
}

function agrees(
  cells: Cells,
  places: readonly Place[],
  whole: Cells,
  isLike: (one: Figure, other: Figure) => boolean,
): boolean {
  return places.every(({ at }, index) => {
    const [one, other] = [cells[index] ?? null, whole[at] ?? null];
    return one === null || other === null ? one === other : isLike(one, other);
  });
}
