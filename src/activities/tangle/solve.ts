// Finds which candidates may be taken to be in the tangle, from the printed outlines and their places alone.
import { type Told, told } from '../../base/index.ts';
import {
  type DirectionRelation,
  directionRelation,
  type Figure,
  formOf,
  haveLikeOutlines,
  type LinePoint,
  linePointsOf,
  sameFigure,
} from '../../figures/index.ts';
import type { Findings } from '../activity.ts';
import { linesAt, mostCovered } from './solve-cover.ts';
import { hiddenShares } from './solve-hidden.ts';
import { type Answer, closeness, type Placed, type Printed } from './task.ts';

/** An outline of which this share is found along the lines of the tangle may be taken to be in it. */
const MAY_BE_IN = 0.85;
/** An outline of which this share runs along other lines may be overlooked. */
const MAY_BE_HIDDEN = 0.3;
/** Middles nearer than this, in cell sides, put one outline about the other. */
const ABOUT = 0.12;
/** Points of an outline that is looked for may stand so many times further apart than those it is found along. */
const COARSE = 2;
const MOST_ANSWERS = 20;

/** An outline as points about its middle, and where that lies. */
interface Laid {
  readonly points: readonly LinePoint[];
  readonly x: number;
  readonly y: number;
}

export function solve({ tangle, candidates }: Printed): Findings<Answer> {
  const near = Math.min(...tangle.map(({ figure }) => closeness(figure)));
  const laid = tangle.map(({ figure, x, y }) => ({ points: linePointsOf(figure, near), x, y }));
  const lines = linesAt(laid);
  const hidden = hiddenShares(laid.map(pointsAt), near);
  const readings = candidates.map((candidate): readonly boolean[] => {
    const place = tangle.findIndex(({ figure }) => sameFigure(figure, candidate));
    if (place >= 0) return (hidden[place] ?? 0) > MAY_BE_HIDDEN ? [true, false] : [true];
    const covered = mostCovered(linePointsOf(candidate, COARSE * near), lines, near);
    return covered >= MAY_BE_IN || isOfOtherColour(candidate, tangle) ? [false, true] : [false];
  });
  return { answers: allReadings(readings), faults: faultsOf(tangle, candidates) };
}

function pointsAt({ points, x, y }: Laid): readonly LinePoint[] {
  return points.map((point) => ({ ...point, x: point.x + x, y: point.y + y }));
}

/** The same outline in another colour: in the tangle for who looks at shapes, not for who looks at both. */
function isOfOtherColour(candidate: Figure, tangle: readonly Placed[]): boolean {
  return tangle.some(({ figure }) =>
    sameFigure({ ...figure, colour: undefined }, { ...candidate, colour: undefined }),
  );
}

/** Every way to take each candidate in one of its readings; cut off. */
function allReadings(readings: readonly (readonly boolean[])[]): readonly Answer[] {
  let answers: readonly Answer[] = [[]];
  for (const [place, reading] of readings.entries()) {
    answers = answers
      .flatMap((before) => reading.map((isIn) => (isIn ? [...before, place] : before)))
      .slice(0, MOST_ANSWERS);
  }
  return answers;
}

function faultsOf(tangle: readonly Placed[], candidates: readonly Figure[]): readonly Told[] {
  const figures = tangle.map(({ figure }) => figure);
  const isIn = candidates.map((one) => figures.some((figure) => sameFigure(figure, one)));
  const isOffered = figures.every((figure) => candidates.some((one) => sameFigure(figure, one)));
  return [
    ...(tangle.length < 2 ? [told('tangle', 'fault.one-outline')] : []),
    ...(isIn.every((is) => is) ? [told('tangle', 'fault.all-in')] : []),
    ...(isOffered ? [] : [told('tangle', 'fault.not-offered')]),
    ...(areApart(candidates) ? [] : [told('tangle', 'fault.choices-alike')]),
    ...(areApart(figures) ? [] : [told('tangle', 'fault.outlines-alike')]),
    ...(isOneAboutOther(tangle) ? [told('tangle', 'fault.about-middle')] : []),
  ];
}

/** No two are look-alikes; of one form all lie otherwise, and none of them is another's mirror image. */
function areApart(figures: readonly Figure[]): boolean {
  return figures.every((one, index) =>
    figures.slice(index + 1).every((other) => isApart(one, other)),
  );
}

/** Mirror images seen side by side, which young children take for the same. */
const MIRRORED: readonly DirectionRelation[] = ['left-right', 'opposite-obliques'];

function isApart(one: Figure, other: Figure): boolean {
  if (formOf(one) !== formOf(other)) return !haveLikeOutlines(formOf(one), formOf(other));
  const relation = directionRelation(one, other);
  return relation !== undefined && !MIRRORED.includes(relation);
}

function isOneAboutOther(tangle: readonly Placed[]): boolean {
  return tangle.some((one, index) =>
    tangle.slice(index + 1).some((other) => Math.hypot(one.x - other.x, one.y - other.y) < ABOUT),
  );
}
