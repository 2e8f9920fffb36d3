// What the places of the figures give away: one that stands by itself, or two that touch.
import { type Point, type Told, told } from '../../base/index.ts';
import type { Printed } from './task.ts';

/** Nearer than this, in distances of places, two figures touch. */
const LEAST_APART = 0.68;
/** Farther from its nearest than all others are from theirs by this factor, a figure stands by itself; by eye. */
const APART_FACTOR = 1.4;
/** Farther off its own place than all others by so much, in distances of places, a figure stands out of line; by eye. */
const OUT_OF_LINE = 0.2;
/** A thousandth of a place more is not more. */
const SLACK = 0.001;

/** Reasons in plain words why the places single out a figure or cannot be printed. */
export function placeFaults(printed: Printed): readonly Told[] {
  const { figures, columns = figures.length, shifts } = printed;
  const count = figures.length;
  if (shifts && shifts.length !== count)
    return [told('odd-one-out', 'fault.shifts', { count, shifts: shifts.length })];
  const points = placesOf(printed);
  const moved = figures.map((_, place) => {
    const { x = 0, y = 0 } = shifts?.[place] ?? {};
    return Math.sqrt(x ** 2 + y ** 2);
  });
  const nearest = points.map((point, place) =>
    Math.min(...points.filter((_, other) => other !== place).map((other) => apart(point, other))),
  );
  return [
    ...(columns < count && (columns === 1 || count % columns === 1)
      ? [
          columns === 1
            ? told('odd-one-out', 'fault.column')
            : told('odd-one-out', 'fault.last-alone'),
        ]
      : []),
    ...(Math.min(...nearest) < LEAST_APART - SLACK ? [told('odd-one-out', 'fault.touching')] : []),
    ...figures.flatMap((_, place) =>
      exceeds(nearest, place, (others) => APART_FACTOR * others) ||
      exceeds(moved, place, (others) => OUT_OF_LINE + others)
        ? [told('odd-one-out', 'fault.apart', { place: place + 1 })]
        : [],
    ),
  ];
}

/** Whether the length at a place is more than what the longest of all others allows. */
function exceeds(
  lengths: readonly number[],
  place: number,
  allowed: (others: number) => number,
): boolean {
  const others = lengths.filter((_, other) => other !== place);
  return (lengths[place] ?? 0) > allowed(Math.max(...others)) + SLACK;
}

/** Where the figures stand, in distances of neighbouring places. */
function placesOf({ figures, columns = figures.length, shifts }: Printed): readonly Point[] {
  return figures.map((_, place) => {
    const row = Math.floor(place / columns);
    const inRow = Math.min(columns, figures.length - row * columns);
    const { x = 0, y = 0 } = shifts?.[place] ?? {};
    return { x: (place % columns) - (inRow - 1) / 2 + x, y: row + y };
  });
}

function apart(one: Point, other: Point): number {
  return Math.sqrt((one.x - other.x) ** 2 + (one.y - other.y) ** 2);
}
