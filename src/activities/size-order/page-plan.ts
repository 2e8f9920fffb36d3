// Where the figures of a task stand at their true sizes, and what lies below them for the answer.
import type { Bounds } from '../../base/index.ts';
import { type Figure, formOf } from '../../figures/index.ts';
import type { Area } from '../../page/index.ts';
import type { Size } from '../activity.ts';
import { leastCellMm } from '../placing.ts';
import { inkOf, lengthOf } from './extent.ts';
import { GROWING_MM, growing, growingWidth } from './growing-places.ts';
import type { Printed } from './task.ts';

/** One figure: the side of its own cell, the middle of that, and the area of its ink. */
export interface Place {
  readonly figure: Figure;
  readonly cellMm: number;
  readonly x: number;
  readonly y: number;
  readonly ink: Area;
}

/** All of a task from (0, 0) to the size it was planned for. */
export interface PagePlan {
  readonly places: readonly Place[];
  /** The line that the figures stand on; absent: there is none. */
  readonly groundMm?: number;
  /** Where the row of figures ends below. */
  readonly bottomMm: number;
  readonly left: number;
  readonly width: number;
  /** Boxes to put dots in, below each figure, or places to join to, growing from left to right. */
  readonly boxes: readonly Area[];
  /** The frame to stick cards into. */
  readonly strip?: Area;
}

/** Lengths in mm; common practice, no source: the smallest figure, and a box to put dots in. */
const SMALLEST_MM = 12.5;
const BOX_MM = 15;
const GAP_MM = 8;
/** Between a card's dashed line and the ink in it. */
export const CARD_PAD_MM = 3;
const CARD_GAP_MM = 5;
/** Blank all round: room for a ring. */
const AROUND_MM = 3.5;
/** Between the figures and what lies below them. */
const BELOW_MM = { point: 2, ring: 0, dots: 5, join: 22, cut: 10 };
/** The em of the numerals of an answer, the height of the wedge below a strip. */
export const NUMERAL_EM_MM = 6;
export const WEDGE_MM = 7;
/** Loose figures lie so much of the spare height down, by place; spare besides what the biggest needs, in mm. */
const DOWN = [0.1, 0.95, 0.4, 0, 0.7, 0.2, 0.85, 0.5];
const LOOSE_MM = 10;
/** Beyond this, times the least, a page looks stretched (by eye). */
const MOST_SCALE = 1.25;

export function leastSize(printed: Printed): Size {
  return sizeAt(printed, 1);
}

/** Plans the task in the middle of `size`, which is at least its least size. */
export function planPage(printed: Printed, size: Size): PagePlan {
  const least = leastSize(printed);
  const fitting = Math.min(size.widthMm / least.widthMm, size.heightMm / least.heightMm);
  const scale = Math.min(MOST_SCALE, Math.max(1, fitting));
  const used = sizeAt(printed, scale);
  const width = rowWidth(printed, scale);
  const left = (size.widthMm - width) / 2;
  const top = (size.heightMm - used.heightMm) / 2 + scale * AROUND_MM;
  const places = placesAt(printed, scale, left, top);
  const bottomMm = top + rowHeight(printed, scale);
  return {
    places,
    bottomMm,
    left,
    width,
    ...(isOnGround(printed) ? { groundMm: bottomMm } : {}),
    ...belowAt(printed, scale, places, bottomMm, size.widthMm / 2),
  };
}

/** Cards with dots are equally large, and figures to cut out lie on cards; all others stand on a line. */
function isOnGround({ layout, response, figures }: Printed): boolean {
  const isOfDots = figures.some((figure) => formOf(figure) === 'dots');
  return layout !== 'loose' && response !== 'cut' && !isOfDots;
}

/** The side of the full cell, in which the smallest figure is at its least length. */
function fullCellMm({ figures }: Printed): number {
  if (figures.some((figure) => formOf(figure) === 'dots')) return leastCellMm(figures) + 2;
  return SMALLEST_MM / Math.min(...figures.map(lengthOf));
}

interface Sized {
  readonly figure: Figure;
  readonly cellMm: number;
  readonly ink: Bounds;
  readonly width: number;
  readonly height: number;
  /** Of the row, at least the ink's. */
  readonly column: number;
}

function sizedAt(printed: Printed, scale: number): readonly Sized[] {
  const full = fullCellMm(printed) * scale;
  return printed.figures.map((figure) => {
    const cellMm = full * (figure.size ?? 1);
    const ink = inkOf(figure);
    const width = cellMm * (ink.right - ink.left);
    const height = cellMm * (ink.bottom - ink.top);
    const pad = printed.response === 'cut' ? 2 * CARD_PAD_MM * scale : 0;
    const least = printed.response === 'dots' ? BOX_MM * scale : 0;
    return { figure, cellMm, ink, width, height, column: Math.max(least, width + pad) };
  });
}

function gapOf({ response }: Printed): number {
  return response === 'cut' ? CARD_GAP_MM : GAP_MM;
}

function rowWidth(printed: Printed, scale: number): number {
  const columns = sizedAt(printed, scale).map(({ column }) => column);
  return sum(columns) + scale * gapOf(printed) * (columns.length - 1);
}

function rowHeight(printed: Printed, scale: number): number {
  const most = Math.max(...sizedAt(printed, scale).map(({ height }) => height));
  const loose = printed.layout === 'loose' ? LOOSE_MM * scale : 0;
  const pad = printed.response === 'cut' ? 2 * CARD_PAD_MM * scale : 0;
  return most + loose + pad;
}

function placesAt(printed: Printed, scale: number, left: number, top: number): readonly Place[] {
  const pad = printed.response === 'cut' ? CARD_PAD_MM * scale : 0;
  const high = rowHeight(printed, scale) - 2 * pad;
  let start = left;
  return sizedAt(printed, scale).map(({ figure, cellMm, ink, width, height, column }, index) => {
    const share = printed.layout === 'loose' ? (DOWN[index] ?? 0) : isOnGround(printed) ? 1 : 0.5;
    const area = {
      left: start + (column - width) / 2,
      top: top + pad + share * (high - height),
      width,
      height,
    };
    start += column + scale * gapOf(printed);
    const x = area.left - ink.left * cellMm;
    return { figure, cellMm, x, y: area.top - ink.top * cellMm, ink: area };
  });
}

function belowAt(
  printed: Printed,
  scale: number,
  places: readonly Place[],
  bottomMm: number,
  middle: number,
): Pick<PagePlan, 'boxes' | 'strip'> {
  const { response = 'point' } = printed;
  const top = bottomMm + scale * BELOW_MM[response];
  if (response === 'dots') {
    const side = BOX_MM * scale;
    const boxes = places.map(({ ink }) => ({
      left: ink.left + (ink.width - side) / 2,
      top,
      width: side,
      height: side,
    }));
    return { boxes };
  }
  if (response === 'join') return { boxes: growing(places.length, top, scale, middle) };
  if (response !== 'cut') return { boxes: [] };
  const width = rowWidth(printed, scale);
  return {
    boxes: [],
    strip: { left: middle - width / 2, top, width, height: stripHeight(printed, scale) },
  };
}

function stripHeight(printed: Printed, scale: number): number {
  const most = Math.max(...sizedAt(printed, scale).map(({ height }) => height));
  return most + 2 * scale * (CARD_PAD_MM + 1);
}

function sizeAt(printed: Printed, scale: number): Size {
  const { response = 'point', asked = 'order', figures } = printed;
  const width = response === 'join' ? scale * growingWidth(figures.length) : 0;
  const below = {
    point: asked === 'order' ? NUMERAL_EM_MM * scale : 0,
    ring: 0,
    dots: BOX_MM * scale,
    join: GROWING_MM * scale,
    cut: stripHeight(printed, scale) + WEDGE_MM * scale,
  }[response];
  return {
    widthMm: Math.max(width, rowWidth(printed, scale)) + 2 * AROUND_MM * scale,
    heightMm: rowHeight(printed, scale) + below + scale * (BELOW_MM[response] + 2 * AROUND_MM),
  };
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, number) => total + number, 0);
}
