// What makes a follow-the-line page unfit, whatever its lines lead to.
import type { Point } from '../../base/index.ts';
import { type Figure, fairlyDifferent } from '../../figures/index.ts';
import { goTogether } from './solve-looks.ts';
import { distance, type Meeting } from './solve-meetings.ts';
import type { Printed } from './task.ts';

/** Least length in mm between two crossings, and between a crossing and a start or end. */
const APART_MM = 12;
const FROM_ENDS_MM = 8;

export function faultsOf(
  printed: Printed,
  lines: readonly (readonly Point[])[],
  crossings: readonly Meeting[],
): readonly string[] {
  return [
    ...figureFaults(printed),
    ...lines.flatMap((line, index) =>
      line.some(({ x }, place) => x <= (line[place - 1]?.x ?? Number.NEGATIVE_INFINITY))
        ? [`line ${index + 1} turns back`]
        : [],
    ),
    ...crowdFaults(printed, crossings),
  ];
}

function crowdFaults({ lengthMm }: Printed, crossings: readonly Meeting[]): readonly string[] {
  const places = crossings.map(({ spots: [spot] }) => spot);
  const isCrowded = places.some((one, index) =>
    places.slice(index + 1).some((other) => distance(one, other) < APART_MM),
  );
  const isAtEnd = places.some(({ x }) => Math.min(x, lengthMm - x) < FROM_ENDS_MM);
  return [
    ...(isCrowded ? [`two crossings are less than ${APART_MM} mm apart`] : []),
    ...(isAtEnd ? [`a crossing is less than ${FROM_ENDS_MM} mm from a start or an end`] : []),
  ];
}

function figureFaults({ starts, ends, lines }: Printed): readonly string[] {
  const count = lines.length;
  const isShort = starts.length !== count || (ends ?? starts).length !== count;
  return [
    ...(count < 2 ? ['there is only one line, so nothing has to be found'] : []),
    ...(isShort ? ['there are not as many starts, lines and ends'] : []),
    ...(areApart(starts) ? [] : ['two starts cannot be told apart']),
    ...(areApart(ends ?? []) ? [] : ['two ends cannot be told apart']),
    ...(starts.some((start) => ends?.some((end) => goTogether(start, end)))
      ? ['an end looks as if it belonged to a start']
      : []),
  ];
}

function areApart(figures: readonly Figure[]): boolean {
  return figures.every((one, index) =>
    figures.slice(index + 1).every((other) => fairlyDifferent(one, other)),
  );
}
