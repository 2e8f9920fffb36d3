// How large everything of a row is, in mm, and how many places a row across a sheet has.
import { formOf, isSign } from '../../figures/index.ts';
import type { Size } from '../activity.ts';
import { UPRIGHT_ROOM } from '../upright-room.ts';
import type { Printed, RowValues } from './task.ts';

/**
 * Least side of a figure's cell: easy to see and to touch at three. Where sizes differ, the full size, so
 * that the smallest is not lost. Common practice, no source.
 */
const FIGURE_MM = 14;
const SIZED_MM = 20;
/** Between neighbours at the least size; grows with the figures. */
const GAP_MM = 3;
/** Of the side of a cell, at ease. */
const GAP_SHARE = 0.25;
/** Figures grow with the room up to this. */
const MOST_FIGURE_MM = 26;
/** Between the row and what is offered below it, in cells: much more than between neighbours. */
const BELOW_SHARE = 0.9;
/** Gaps between offered figures, in cells: they are no row. */
const OFFERED_GAP_SHARE = 0.7;
/** The frame that holds what is offered: blank round it inside and its line. */
export const TRAY_PAD_MM = 4;
/** A row stands free of the next task's by this. */
const AROUND_MM = 2;

export interface Measures {
  /** Side of a cell. */
  readonly cellMm: number;
  readonly gapMm: number;
  readonly offeredGapMm: number;
  /** Between the row and the tray of offered figures. */
  readonly belowMm: number;
}

/** How many places a row has at most: it never goes on in a second line. */
export function mostPlaces({ response, stickerMm, content }: RowValues): number {
  const isSized = content.endsWith('sizes');
  const stickMm = response === 'sticker' ? Number(stickerMm) : 0;
  return placesWithin(Math.max(isSized ? SIZED_MM : FIGURE_MM, stickMm));
}

function placesWithin(cellMm: number): number {
  return Math.floor((UPRIGHT_ROOM.widthMm + GAP_MM) / (cellMm + GAP_MM));
}

/** The least room of a task. */
export function room(printed: Printed): Size {
  return sizeOf(printed, measuresAt(leastCellMm(printed), GAP_MM));
}

/** The largest measures, in steps of half a mm, with which the task stays within `size` at ease. */
export function measuresWithin(printed: Printed, size: Size): Measures {
  const least = leastCellMm(printed);
  const most = printed.stickerMm === undefined ? Math.max(least, MOST_FIGURE_MM) : least;
  for (let cellMm = most; cellMm > least; cellMm -= 0.5) {
    const measures = measuresAt(cellMm, GAP_SHARE * cellMm);
    if (fits(sizeOf(printed, measures), size)) return measures;
  }
  return measuresAt(least, easyGapMm(printed, least, size));
}

/** At the least size of figures, what width is left goes into the gaps as far as is calm. */
function easyGapMm({ row }: Printed, cellMm: number, { widthMm }: Size): number {
  const spareMm = (widthMm - row.length * cellMm) / (row.length - 1);
  return Math.max(GAP_MM, Math.min(spareMm, GAP_SHARE * cellMm));
}

function measuresAt(cellMm: number, gapMm: number): Measures {
  return {
    cellMm,
    gapMm,
    offeredGapMm: OFFERED_GAP_SHARE * cellMm,
    belowMm: BELOW_SHARE * cellMm,
  };
}

function leastCellMm(printed: Printed): number {
  return Math.max(hasSizes(printed) ? SIZED_MM : FIGURE_MM, printed.stickerMm ?? 0);
}

/** Whether some figure is smaller than others can be. */
export function hasSizes({ row, offered = [] }: Printed): boolean {
  return [...row, ...offered].some((figure) => (figure?.size ?? 1) < 1);
}

function sizeOf({ row, offered }: Printed, measures: Measures): Size {
  const tray = traySize(offered?.length ?? 0, measures);
  const { cellMm, gapMm, belowMm } = measures;
  return {
    widthMm: Math.max(row.length * (cellMm + gapMm) - gapMm, tray.widthMm),
    heightMm: cellMm + 2 * AROUND_MM + (offered ? belowMm + tray.heightMm : 0),
  };
}

/** The frame of `count` offered figures. */
export function traySize(count: number, { cellMm, offeredGapMm }: Measures): Size {
  return {
    widthMm: count * cellMm + (count - 1) * offeredGapMm + 2 * TRAY_PAD_MM,
    heightMm: cellMm + 2 * TRAY_PAD_MM,
  };
}

function fits(size: Size, within: Size): boolean {
  return size.widthMm <= within.widthMm && size.heightMm <= within.heightMm;
}

/** Dots and thin lines stand on cards, since they do not hold together by themselves. */
export function standsOnCards({ row, offered = [] }: Printed): boolean {
  return [...row, ...offered].some((figure) => {
    const form = figure && formOf(figure);
    return form === 'dots' || (form !== null && isSign(form));
  });
}
