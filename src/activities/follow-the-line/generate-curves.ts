// Turns a braid into winding curves: all lanes swell together, each line a little on its own, corners nowhere.
import type { Random } from '../../base/index.ts';
import type { Field } from './field.ts';
import { type Braid, lanesBefore } from './generate-braid.ts';
import type { Curve, FieldPoint } from './task.ts';

/** The least and most that all lanes are shifted together, one way and then the other, in lanes. */
const LEAST_SWELL = 0.12;
const SWELL = 0.28;
/** The most that each line is shifted on its own, in lanes. */
const OWN = 0.06;
/** The most that the end of a column is shifted along, in columns. */
const ALONG = 0.06;
/** How far the control points of a curve lie from its ends, in its length along. */
const HANDLE = 0.4;
/** The steepest that a line runs between two columns, across for along. */
const STEEPEST = 0.5;

export function windLines(braid: Braid, field: Field, random: Random): readonly Curve[] {
  const { laneMm, columnMm, columns } = field;
  const ends = (index: number) => index === 0 || index === columns;
  const between = (share: number, lengthMm: number) => {
    const most = Math.round(10 * share * lengthMm);
    return random.int(-most, most) / 10;
  };
  const firstSign = random.pick([1, -1]);
  const swellAt = (index: number) => {
    const mm = [LEAST_SWELL, SWELL].map((share) => Math.round(10 * share * laneMm));
    return (firstSign * (-1) ** index * random.int(mm[0] ?? 0, mm[1] ?? 0)) / 10;
  };
  const knots = Array.from({ length: columns + 1 }, (_, index) => ({
    along: index * columnMm + (ends(index) ? 0 : between(ALONG, columnMm)),
    swell: ends(index) ? 0 : swellAt(index),
  }));
  const orders = lanesBefore(braid);
  return Array.from({ length: braid.lines }, (_, line) =>
    curveThrough(
      knots.map(({ along, swell }, index): FieldPoint => {
        const lane = orders[index]?.indexOf(line) ?? line;
        const own = ends(index) ? 0 : between(OWN, laneMm);
        return [toTenth(along), toTenth((lane + 0.5) * laneMm + swell + own)];
      }),
    ),
  );
}

/** A smooth curve through the points, level at both ends, that never overshoots a point. */
function curveThrough(points: readonly FieldPoint[]): Curve {
  const slopes = points.map((point, index) => slopeAt(points[index - 1], point, points[index + 1]));
  return points.flatMap((point, index) => {
    const before = points[index - 1];
    if (!before) return [point];
    const handle = HANDLE * (point[0] - before[0]);
    const [out, into] = [slopes[index - 1] ?? 0, slopes[index] ?? 0];
    return [
      [toTenth(before[0] + handle), toTenth(before[1] + out * handle)] as const,
      [toTenth(point[0] - handle), toTenth(point[1] - into * handle)] as const,
      point,
    ];
  });
}

/** The gentler of the slopes on both sides where both go the same way, else level. */
function slopeAt(
  before: FieldPoint | undefined,
  [along, across]: FieldPoint,
  after: FieldPoint | undefined,
): number {
  if (!before || !after) return 0;
  const arriving = (across - before[1]) / (along - before[0]);
  const leaving = (after[1] - across) / (after[0] - along);
  if (arriving * leaving <= 0) return 0;
  return Math.sign(leaving) * Math.min(STEEPEST, Math.abs(arriving), Math.abs(leaving));
}

function toTenth(mm: number): number {
  return Math.round(10 * mm) / 10 + 0;
}
