// Which lanes change places in which column, and where each line ends by that.
import type { Random } from '../../base/index.ts';
import { type Slot, slotsOf } from './field.ts';

export interface Braid {
  readonly lines: number;
  readonly columns: number;
  readonly swaps: readonly Slot[];
}

/** So many braids are drawn, and the one kept that is least easily guessed. */
const DRAWS = 6;

/**
 * A braid of so many crossings, at random. Of two or more lines that cross not all end straight across: the first
 * places of the slots in order, which are taken if chance finds no other, never do.
 */
export function drawBraid(
  lines: number,
  crossings: number,
  columns: number,
  random: Random,
): Braid {
  const shifts = ([0, 1] as const).filter(
    (shift) => slotsOf(lines, columns, shift).length >= crossings,
  );
  const slots = slotsOf(lines, columns, random.pick(shifts));
  const sets = Array.from({ length: DRAWS }, () => random.sample(slots, crossings));
  const braids = [...sets, slots.slice(0, crossings)].map((swaps) => ({ lines, columns, swaps }));
  const scores = braids.map(hardToGuess);
  const best = braids[scores.indexOf(Math.max(...scores))];
  if (!best) throw new Error('follow-the-line › braid: expected one, got none');
  return best;
}

/** How many lines end elsewhere than straight across, and how many cross any other. */
function hardToGuess(braid: Braid): number {
  const moved = placesAfter(braid).filter((place, start) => place !== start).length;
  const crossing = new Set(
    lanesBefore(braid).flatMap((order, column) => crossingIn(braid, order, column)),
  );
  return 2 * moved + crossing.size;
}

/** The lines that cross in a column. */
function crossingIn({ swaps }: Braid, order: readonly number[], column: number): readonly number[] {
  const lanes = swaps.filter((swap) => swap.column === column).map(({ lane }) => lane);
  return lanes.flatMap((lane) => order.slice(lane, lane + 2));
}

/** For each column and after the last, the line that is in each lane. */
export function lanesBefore({ lines, columns, swaps }: Braid): readonly (readonly number[])[] {
  const orders = [Array.from({ length: lines }, (_, line) => line)];
  for (let column = 0; column < columns; column++) {
    const order = [...(orders[column] ?? [])];
    for (const { lane } of swaps.filter((swap) => swap.column === column)) {
      order.splice(lane, 2, ...order.slice(lane, lane + 2).reverse());
    }
    orders.push(order);
  }
  return orders;
}

/** For each line the lane in which it ends. */
export function placesAfter(braid: Braid): readonly number[] {
  const last = lanesBefore(braid).at(-1) ?? [];
  return Array.from({ length: braid.lines }, (_, line) => last.indexOf(line));
}
