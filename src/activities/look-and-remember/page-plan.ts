// Where the frame stands above the fold, the choices below it, and the fold in the very middle.
import { type Area, gridPlaces } from '../../page/index.ts';
import type { Size } from '../activity.ts';
import { leastCellMm } from '../placing.ts';
import type { Printed } from './task.ts';

/** All of a task from (0, 0) to the size it was planned for. */
export interface PagePlan {
  readonly frame: Area;
  /** Cells of the figures in the frame, in reading order. */
  readonly set: readonly Area[];
  /** Cells of the choices, in reading order. */
  readonly choices: readonly Area[];
  /** Height of the fold, in mm from the top. */
  readonly foldMm: number;
}

/**
 * One task to a sheet of a home printer, however the paper lies: two and the blank between tasks are wider than a page
 * that lies and higher than one that stands. A4 and Letter leave 186 to 273 mm by 167 to 255 mm for tasks.
 */
const LEAST: Size = { widthMm: 140, heightMm: 124 };
/** Blank between a half's figures and its edges, and the fold; common practice, no source. */
const EDGE_MM = 3;
const FOLD_CLEAR_MM = 6;
/** Between figures in the frame, between them and its line, between choices. */
const SET_GAP_MM = 8;
const PAD_MM = 6;
const GAP_MM = { rows: { across: 10, down: 10 }, loose: { across: 14, down: 9 } };
/** Loose choices are moved so far from their rows, by place, as shares of the most that they may be moved. */
const MOVED = [-1, 0.7, -0.3, 1, 0.2, -0.8, 0.9, -0.5, 0.4, -0.9];
const MOST_MOVED_MM = { across: 4, down: 2 };
/** Beyond this, times the least, a page looks stretched (by eye). */
const MOST_SCALE = 1.9;
/** More than so many figures stand in two rows in the frame, or below. */
const MOST_IN_FRAME_ROW = 4;

export function leastSize(printed: Printed): Size {
  const { widthMm, heightMm } = sizeAt(printed, 1);
  return {
    widthMm: Math.max(LEAST.widthMm, widthMm),
    heightMm: Math.max(LEAST.heightMm, heightMm),
  };
}

/** Plans the task for `size`, which is at least its least size. */
export function planPage(printed: Printed, size: Size): PagePlan {
  const used = sizeAt(printed, 1);
  const fitting = Math.min(size.widthMm / used.widthMm, size.heightMm / used.heightMm);
  const scale = Math.min(MOST_SCALE, Math.max(1, fitting));
  const half = size.heightMm / 2;
  const frame = middleOf(frameSize(printed, scale), size.widthMm, 0, half - FOLD_CLEAR_MM);
  const grid = middleOf(
    gridSize(printed, scale),
    size.widthMm,
    half + FOLD_CLEAR_MM,
    half - FOLD_CLEAR_MM,
  );
  return {
    frame,
    set: setPlaces(printed, frame, scale),
    choices: choicePlaces(printed, grid, scale),
    foldMm: half,
  };
}

/** A rectangle of a size in the middle of a band across the task. */
function middleOf(inner: Size, width: number, top: number, height: number): Area {
  return {
    left: (width - inner.widthMm) / 2,
    top: top + (height - inner.heightMm) / 2,
    width: inner.widthMm,
    height: inner.heightMm,
  };
}

function setPlaces({ set }: Printed, frame: Area, scale: number): readonly Area[] {
  const pad = PAD_MM * scale;
  const inside = {
    left: frame.left + pad,
    top: frame.top + pad,
    width: frame.width - 2 * pad,
    height: frame.height - 2 * pad,
  };
  return gridPlaces(set.length, setColumns(set.length), inside, SET_GAP_MM * scale);
}

function choicePlaces(printed: Printed, grid: Area, scale: number): readonly Area[] {
  const { choices, layout = 'rows' } = printed;
  const isLoose = layout === 'loose';
  const [across, down] = isLoose
    ? [MOST_MOVED_MM.across * scale, MOST_MOVED_MM.down * scale]
    : [0, 0];
  const inside = {
    left: grid.left + across,
    top: grid.top + down,
    width: grid.width - 2 * across,
    height: grid.height - 2 * down,
  };
  const places = gridPlaces(
    choices.length,
    columnsOf(choices.length),
    inside,
    gapAt(layout, scale),
  );
  return places.map((place, index) => ({
    ...place,
    left: place.left + across * (MOVED[(3 * index + 1) % MOVED.length] ?? 0),
    top: place.top + down * (MOVED[index % MOVED.length] ?? 0),
  }));
}

function gapAt(layout: 'rows' | 'loose', scale: number) {
  const { across, down } = GAP_MM[layout];
  return { across: across * scale, down: down * scale };
}

function cellMm({ set, choices }: Printed): number {
  return leastCellMm([...set, ...choices]);
}

function setColumns(count: number): number {
  return count > MOST_IN_FRAME_ROW ? Math.ceil(count / 2) : count;
}

/** One row up to three, two rows up to ten, the upper never the shorter. */
function columnsOf(count: number): number {
  return count <= 3 ? count : Math.ceil(count / 2);
}

function frameSize(printed: Printed, scale: number): Size {
  const columns = setColumns(printed.set.length);
  const rows = Math.ceil(printed.set.length / columns);
  return {
    widthMm: scale * (lengthOf(columns, cellMm(printed), SET_GAP_MM) + 2 * PAD_MM),
    heightMm: scale * (lengthOf(rows, cellMm(printed), SET_GAP_MM) + 2 * PAD_MM),
  };
}

function gridSize(printed: Printed, scale: number): Size {
  const { choices, layout = 'rows' } = printed;
  const columns = columnsOf(choices.length);
  const rows = Math.ceil(choices.length / columns);
  const { across, down } = GAP_MM[layout];
  const moved = layout === 'loose' ? MOST_MOVED_MM : { across: 0, down: 0 };
  return {
    widthMm: scale * (lengthOf(columns, cellMm(printed), across) + 2 * moved.across),
    heightMm: scale * (lengthOf(rows, cellMm(printed), down) + 2 * moved.down),
  };
}

function sizeAt(printed: Printed, scale: number): Size {
  const [frame, grid] = [frameSize(printed, scale), gridSize(printed, scale)];
  return {
    widthMm: Math.max(frame.widthMm, grid.widthMm) + 2 * EDGE_MM,
    heightMm: 2 * (Math.max(frame.heightMm, grid.heightMm) + EDGE_MM + FOLD_CLEAR_MM),
  };
}

function lengthOf(count: number, cell: number, gap: number): number {
  return count * cell + (count - 1) * gap;
}
