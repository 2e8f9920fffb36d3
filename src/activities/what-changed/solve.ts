// Finds the places in which two printed pictures differ, and what makes the page unfit, from the page alone.
import { type Told, told } from '../../base/index.ts';
import {
  differencesOf,
  type Figure,
  fairlyDifferent,
  formOf,
  sameFigure,
} from '../../figures/index.ts';
import { gridPlaces } from '../../page/index.ts';
import type { Findings } from '../activity.ts';
import { type Answer, columnsFor, GAP_SHARE, type Printed, type Scene } from './task.ts';

/** Figures keep at least this between their cells, in cells, so that none is behind or part of another. */
const LEAST_GAP = 0.08;

/** The pictures are compared place by place; a page that can be counted otherwise is unfit. */
export function solve(printed: Printed): Findings<Answer> {
  const { first, second, asked } = printed;
  if (first.length !== second.length) {
    return { answers: [], faults: [told('what-changed', 'fault.places')] };
  }
  const differing = first.flatMap((_, place) => (isSame(printed, place) ? [] : [place]));
  const faults = [
    ...(differing.length === asked
      ? []
      : [told('what-changed', 'fault.count', { differing: differing.length, asked })]),
    ...(2 * differing.length > first.length ? [told('what-changed', 'fault.half')] : []),
    ...differing.flatMap((place) => unfairness(printed, place)),
    ...(printed.told === 'swaps' ? swapFaults(printed, differing) : wanderers(printed, differing)),
    ...(standApart(printed) ? [] : [told('what-changed', 'fault.near')]),
  ];
  return { answers: differing.length === 0 ? [] : [differing], faults };
}

function isSame({ first, second }: Printed, place: number): boolean {
  return areAlike(first[place] ?? null, second[place] ?? null);
}

function areAlike(one: Figure | null, other: Figure | null): boolean {
  return one && other ? sameFigure(one, other) : one === other;
}

/** A change that cannot be seen fairly, or that can be counted as two: in colour and in form, say. */
function unfairness({ first, second, told: kind }: Printed, place: number): readonly Told[] {
  const [before, after] = [first[place], second[place]];
  if (!before || !after) return [];
  if (!fairlyDifferent(before, after))
    return [told('what-changed', 'fault.too-little', { place: place + 1 })];
  const isTwofold = kind !== 'swaps' && countWays(before, after) > 1;
  return isTwofold ? [told('what-changed', 'fault.twofold', { place: place + 1 })] : [];
}

/** In how many ways two figures are seen to differ. */
function countWays(one: Figure, other: Figure): number {
  const found = differencesOf(one, other);
  const isOneForm = formOf(one) === formOf(other);
  const isDirected = isOneForm && (found.turnDeg !== undefined || found.mirrored === true);
  return [
    found.colourDe00 !== undefined,
    found.fill === true,
    found.sizeRatio !== undefined,
    // Dots of another number may be of another size to keep their ink.
    found.countRatio !== undefined || found.dotRatio !== undefined || found.layout === true,
    isDirected || found.turnedOutlineShare !== undefined || found.insideShare !== undefined,
  ].filter(Boolean).length;
}

/**
 * What stands newly in one place and has gone from another: it may be seen as one figure that moved, or as two
 * that changed places, and then counted as one change.
 */
function wanderers({ first, second }: Printed, differing: readonly number[]): readonly Told[] {
  return differing.flatMap((to) => {
    const from = differing.find((place) => place !== to && mayBe(first[place], second[to]));
    if (from === undefined) return [];
    return [told('what-changed', 'fault.moved', { from: from + 1, to: to + 1 })];
  });
}

function mayBe(one: Figure | null | undefined, other: Figure | null | undefined): boolean {
  return !!one && !!other && (sameFigure(one, other) || !fairlyDifferent(one, other));
}

/** Where the child is told of swaps, all that differs must be figures that changed places two and two. */
function swapFaults({ first, second }: Printed, differing: readonly number[]): readonly Told[] {
  return arePaired(first, second, differing) ? [] : [told('what-changed', 'fault.unpaired')];
}

function arePaired(first: Scene, second: Scene, [one, ...rest]: readonly number[]): boolean {
  if (one === undefined) return true;
  return rest.some((other) => {
    const hasSwapped =
      areAlike(first[one] ?? null, second[other] ?? null) &&
      areAlike(first[other] ?? null, second[one] ?? null) &&
      !!first[one] &&
      !!first[other];
    const left = rest.filter((place) => place !== other);
    return hasSwapped && arePaired(first, second, left);
  });
}

/** Whether all cells keep their distance, wherever figures stand in their places. */
function standApart({ first, nudges }: Printed): boolean {
  if (!nudges) return true;
  if (nudges.length !== first.length) return false;
  const columns = columnsFor(first.length);
  const lengthOf = (count: number) => count + (count - 1) * GAP_SHARE;
  const area = {
    left: 0,
    top: 0,
    width: lengthOf(columns),
    height: lengthOf(Math.ceil(first.length / columns)),
  };
  const cells = gridPlaces(first.length, columns, area, GAP_SHARE).map(({ left, top }, place) => ({
    x: left + (nudges[place]?.across ?? 0),
    y: top + (nudges[place]?.down ?? 0),
  }));
  const least = 1 + LEAST_GAP;
  return cells.every((one, index) =>
    cells
      .slice(index + 1)
      .every((other) => Math.max(Math.abs(one.x - other.x), Math.abs(one.y - other.y)) >= least),
  );
}
