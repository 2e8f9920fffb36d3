// What the places of the figures give away: one that stands by itself, or two that touch.
import { type Point, type Told, told } from '../../base/index.ts';
import type { Printed } from './task.ts';

/** Nearer than this, in distances of places, two figures touch. */
const LEAST_APART = 0.68;
/** Farther from its nearest than all others are from theirs by this factor, a figure stands by itself; by eye. */
const APART_FACTOR = 1.4;
/** A thousandth of a place more is not more. */
const SLACK = 0.001;

/** Reasons in plain words why the places single out a figure or cannot be printed. */
export function placeFaults(printed: Printed): readonly Told[] {
  const { figures, columns = figures.length, shifts } = printed;
  const count = figures.length;
  if (shifts && shifts.length !== count)
    return [told('odd-one-out', 'fault.shifts', { count, shifts: shifts.length })];
  const points = placesOf(printed);
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
    ...nearest.flatMap((distance, place) => {
      const others = nearest.filter((_, other) => other !== place);
      return distance > APART_FACTOR * Math.max(...others) + SLACK
        ? [told('odd-one-out', 'fault.apart', { place: place + 1 })]
        : [];
    }),
  ];
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
