// Where the boxes of the pairs stand on paper, each with its two figures and, where one is filled in, its circle.
import { type Area, centredIn, gridPlaces, type Hand, onSideFor } from '../../page/index.ts';
import type { Size } from '../activity.ts';
import { leastCellMm } from '../placing.ts';
import type { Printed } from './task.ts';

/** All about one pair. */
export interface PairPlan {
  readonly box: Area;
  readonly cells: readonly Area[];
  /** The little circle beside the box, on the side of the writing hand. */
  readonly circle?: Area;
}

/** Lengths in mm; common practice, no source: boxes stand twice as far apart as the figures inside them. */
interface Measures {
  readonly cellMm: number;
  readonly insideMm: number;
  readonly padMm: number;
  readonly acrossMm: number;
  readonly downMm: number;
  readonly circleMm: number;
  readonly besideMm: number;
  readonly aroundMm: number;
}

const COLUMNS = 2;
/** Beyond this, times the least, a page looks stretched, not calm (by eye). */
const MOST_SCALE = 1.3;

export function leastSize(printed: Printed): Size {
  return sizeWith(printed, measuresOf(printed, 1));
}

/** Plans the task in the middle of `size`, which is at least its least size. */
export function planPage(printed: Printed, size: Size, hand?: Hand): readonly PairPlan[] {
  const least = leastSize(printed);
  const scale = Math.min(size.widthMm / least.widthMm, size.heightMm / least.heightMm, MOST_SCALE);
  const measures = measuresOf(printed, Math.max(1, scale));
  const { widthMm, heightMm } = sizeWith(printed, measures);
  const whole = { left: 0, top: 0, width: size.widthMm, height: size.heightMm };
  const { aroundMm, acrossMm, downMm } = measures;
  const area = centredIn(whole, widthMm - 2 * aroundMm, heightMm - 2 * aroundMm);
  const gap = { across: acrossMm, down: downMm };
  return gridPlaces(printed.pairs.length, COLUMNS, area, gap).map((place) =>
    planPair(place, measures, hand),
  );
}

function measuresOf({ pairs, response }: Printed, scale: number): Measures {
  const hasCircle = response === 'dot' || response === 'signs';
  return {
    cellMm: leastCellMm(pairs.flat()) * scale,
    insideMm: 6 * scale,
    padMm: 4 * scale,
    acrossMm: 14 * scale,
    downMm: 9 * scale,
    circleMm: hasCircle ? 12 * scale : 0,
    besideMm: hasCircle ? 3 * scale : 0,
    aroundMm: 3,
  };
}

function sizeWith({ pairs }: Printed, measures: Measures): Size {
  const columns = Math.min(COLUMNS, pairs.length);
  const rows = Math.ceil(pairs.length / columns);
  const { acrossMm, downMm, circleMm, besideMm, aroundMm } = measures;
  const { width, height } = boxSize(measures);
  return {
    widthMm: columns * (width + besideMm + circleMm) + (columns - 1) * acrossMm + 2 * aroundMm,
    heightMm: rows * height + (rows - 1) * downMm + 2 * aroundMm,
  };
}

function boxSize({ cellMm, insideMm, padMm }: Measures) {
  return { width: 2 * cellMm + insideMm + 2 * padMm, height: cellMm + 2 * padMm };
}

function planPair(place: Area, measures: Measures, hand: Hand): PairPlan {
  const { cellMm, insideMm, padMm, circleMm, besideMm } = measures;
  const { left: start, top } = place;
  const { width, height } = boxSize(measures);
  const box = onSideFor(hand, { left: start, top, width, height }, place);
  const cells = [0, 1].map((side) => ({
    left: box.left + padMm + side * (cellMm + insideMm),
    top: top + padMm,
    width: cellMm,
    height: cellMm,
  }));
  if (circleMm === 0) return { box, cells };
  const beside = { left: start + width + besideMm, top, width: circleMm, height };
  return { box, cells, circle: centredIn(onSideFor(hand, beside, place), circleMm) };
}
