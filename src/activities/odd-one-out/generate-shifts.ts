// Draws how far figures stand from their places where they are strewn, so that none stands by itself.
import type { Random } from '../../base/index.ts';
import type { Shift } from './task.ts';

/** Hundredths of the distance of places by which figures are moved at most, in steps of two. */
const MOST_STEPS = 7;
/** Farthest over nearest of the distances to the nearest neighbour; more looks as if one stood apart (by eye). */
const MOST_UNEVEN = 1.35;
/** Tries before figures are moved by half as much, which is always even enough. */
const TRIES = 20;

/** A shift for each of `count` figures in rows of `columns`. */
export function drawShifts(count: number, columns: number, random: Random): readonly Shift[] {
  for (let attempt = 0; attempt < TRIES; attempt++) {
    const shifts = shiftsOf(count, MOST_STEPS, random);
    if (isEven(shifts, count, columns)) return shifts;
  }
  return shiftsOf(count, Math.floor(MOST_STEPS / 2), random);
}

function shiftsOf(count: number, steps: number, random: Random): readonly Shift[] {
  const step = () => random.int(-steps, steps) / 50;
  return Array.from({ length: count }, () => ({ x: step(), y: step() }));
}

function isEven(shifts: readonly Shift[], count: number, columns: number): boolean {
  const points = shifts.map(({ x, y }, place) => {
    const row = Math.floor(place / columns);
    const missing = row === 0 ? 0 : 2 * columns - count;
    return { x: (place % columns) + missing / 2 + x, y: row + y };
  });
  const squares = points.map((one) =>
    Math.min(
      ...points.flatMap((other) =>
        other === one ? [] : [(one.x - other.x) ** 2 + (one.y - other.y) ** 2],
      ),
    ),
  );
  return Math.max(...squares) <= MOST_UNEVEN ** 2 * Math.min(...squares);
}
