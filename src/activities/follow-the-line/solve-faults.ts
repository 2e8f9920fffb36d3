// What makes a follow-the-line page unfit, whatever its lines lead to.
import { type Point, type Told, told } from '../../base/index.ts';
import { type Figure, fairlyDifferent } from '../../figures/index.ts';
import { goTogether } from './solve-looks.ts';
import { distance, type Meeting } from './solve-meetings.ts';
import type { Printed } from './task.ts';

/** Least length in mm between two crossings, and between a crossing and a start or end. */
const APART_MM = 12;
const FROM_ENDS_MM = 8;

/** `from`: for each line the number of the start that it begins at; −1 for none. */
export function faultsOf(
  printed: Printed,
  lines: readonly (readonly Point[])[],
  crossings: readonly Meeting[],
  from: readonly number[],
): readonly Told[] {
  return [
    ...figureFaults(printed),
    ...colourFaults(printed, from),
    ...lines.flatMap((line, index) =>
      line.some(({ x }, place) => x <= (line[place - 1]?.x ?? Number.NEGATIVE_INFINITY))
        ? [told('follow-the-line', 'fault.turns-back', { line: index + 1 })]
        : [],
    ),
    ...crowdFaults(printed, crossings),
  ];
}

/** A blue line from a red dot: it seems to come from the blue one, and what is to be put at its end is no longer plain. */
function colourFaults({ starts, colours = [] }: Printed, from: readonly number[]): readonly Told[] {
  const isOther = colours.some((colour, line) => {
    const own = starts[from[line] ?? -1]?.colour;
    return own !== undefined && own !== colour;
  });
  return isOther ? [told('follow-the-line', 'fault.line-colour')] : [];
}

function crowdFaults({ lengthMm }: Printed, crossings: readonly Meeting[]): readonly Told[] {
  const places = crossings.map(({ spots: [spot] }) => spot);
  const isCrowded = places.some((one, index) =>
    places.slice(index + 1).some((other) => distance(one, other) < APART_MM),
  );
  const isAtEnd = places.some(({ x }) => Math.min(x, lengthMm - x) < FROM_ENDS_MM);
  return [
    ...(isCrowded ? [told('follow-the-line', 'fault.crowded', { leastMm: APART_MM })] : []),
    ...(isAtEnd ? [told('follow-the-line', 'fault.near-end', { leastMm: FROM_ENDS_MM })] : []),
  ];
}

function figureFaults({ starts, ends, lines }: Printed): readonly Told[] {
  const count = lines.length;
  const isShort = starts.length !== count || (ends ?? starts).length !== count;
  return [
    ...(count < 2 ? [told('follow-the-line', 'fault.one-line')] : []),
    ...(isShort ? [told('follow-the-line', 'fault.uneven')] : []),
    ...(areApart(starts) ? [] : [told('follow-the-line', 'fault.starts-alike')]),
    ...(areApart(ends ?? []) ? [] : [told('follow-the-line', 'fault.ends-alike')]),
    ...(starts.some((start) => ends?.some((end) => goTogether(start, end)))
      ? [told('follow-the-line', 'fault.end-like-start')]
      : []),
  ];
}

function areApart(figures: readonly Figure[]): boolean {
  return figures.every((one, index) =>
    figures.slice(index + 1).every((other) => fairlyDifferent(one, other)),
  );
}
