// Where the model and the boxes stand: the model above the boxes or beside them, away from the hand, all of one size.
import type { Point } from '../../base/index.ts';
import {
  type Area,
  centredIn,
  gridPlaces,
  type Hand,
  insetArea,
  onSideFor,
} from '../../page/index.ts';
import type { Size } from '../activity.ts';
import {
  cellForRun,
  FRAME_MM,
  gapFor,
  type Measures,
  measuresOf,
  PLATE_MM,
  type Run,
  runMm,
} from './measures.ts';
import { readingOf } from './reading.ts';
import type { Printed } from './task.ts';

/** Sizes nearer than this are one. */
const NEAR_MM = 0.01;

/** Everything in mm from the task's own top left corner. */
export interface PagePlan {
  /** The tone that marks the model. */
  readonly plate: Area;
  /** The frame of the model; those of the boxes are as large. */
  readonly model: Area;
  readonly boxes: readonly Area[];
  readonly cellMm: number;
  readonly padMm: number;
}

/** A way to stand: the model above so many columns of boxes or beside them. */
interface Stance {
  readonly side: 'above' | 'beside';
  readonly boxes: number;
  readonly columns: number;
  readonly rows: number;
  /** The runs that fix the width, and those that fix the height. */
  readonly across: readonly Run[];
  readonly down: readonly Run[];
}

/**
 * The page that rooms are judged by, about `UPRIGHT_ROOM`, and the blank between tasks. By its last third of a mm boxes
 * for stickers of 19 mm would stand otherwise on sheets made again from their codes.
 */
const PAGE: Size = { widthMm: 186, heightMm: 237 };
const BETWEEN_TASKS_MM = 12;

/** Boxes stand beside the model only where they would be smaller than this below it. */
const WORTH_STANDING_ABOVE = 0.85;

/** The least room: of the stance that lets most tasks stand on a page, the model above where it may be. */
export function roomFor(printed: Printed): Size {
  const measures = measuresOf(printed.model, readingOf(printed));
  const rooms = stancesOf(printed, measures).map((stance) => {
    const size = sizeOf(stance, measures, measures.leastCellMm);
    return { stance, size, tasks: tasksOnPage(size) };
  });
  const fitting = rooms.filter(({ tasks }) => tasks > 0);
  if (fitting.length === 0) return nearest(rooms.map(({ size }) => size));
  const usual = preferred(fitting, ({ stance }) => isUsual(stance));
  const most = Math.max(...usual.map(({ tasks }) => tasks));
  const best = usual.filter(({ tasks }) => tasks === most);
  return lowest(preferred(best, ({ stance }) => stance.side === 'above').map(({ size }) => size));
}

/** Those that are as wished, or all if none is. */
function preferred<T>(items: readonly T[], isWished: (item: T) => boolean): readonly T[] {
  const wished = items.filter(isWished);
  return wished.length > 0 ? wished : items;
}

/** The size that exceeds the page by the least share, where none fits. */
function nearest(sizes: readonly Size[]): Size {
  const excess = ({ widthMm, heightMm }: Size) =>
    Math.max(widthMm / PAGE.widthMm, heightMm / PAGE.heightMm);
  return sizes.reduce((best, size) => (excess(size) < excess(best) ? size : best));
}

/** Rows are full (but for five boxes), and no box stands far from the model at the end of a tower. */
function isUsual({ side, rows, columns, boxes }: Stance): boolean {
  const isOrderly = rows * columns === boxes || boxes === 5;
  return isOrderly && rows <= (side === 'above' ? columns : columns + 1);
}

function tasksOnPage({ widthMm, heightMm }: Size): number {
  const across = Math.floor((PAGE.widthMm + BETWEEN_TASKS_MM) / (widthMm + BETWEEN_TASKS_MM));
  const down = Math.floor((PAGE.heightMm + BETWEEN_TASKS_MM) / (heightMm + BETWEEN_TASKS_MM));
  return across * down;
}

function lowest(sizes: readonly Size[]): Size {
  return sizes.reduce((best, size) => (size.heightMm < best.heightMm ? size : best));
}

/** Plans the task in the middle of `size`, which is at least its room: cells as large as may be. */
export function planPage(printed: Printed, size: Size, hand?: Hand): PagePlan {
  const measures = measuresOf(printed.model, readingOf(printed));
  const choices = stancesOf(printed, measures).map((stance) => ({
    stance,
    cellMm: cellIn(stance, measures, size),
  }));
  const fitting = preferred(choices, ({ cellMm }) => cellMm > measures.leastCellMm - NEAR_MM);
  const usual = preferred(fitting, ({ stance }) => isUsual(stance));
  const worthwhile = WORTH_STANDING_ABOVE * Math.max(...usual.map(({ cellMm }) => cellMm));
  const isWorthwhile = ({ stance, cellMm }: Choice) =>
    stance.side === 'above' && cellMm > worthwhile - NEAR_MM;
  const best = bestOf(preferred(usual, isWorthwhile), measures, size);
  return placed(best, measures, size, hand);
}

interface Choice {
  readonly stance: Stance;
  readonly cellMm: number;
}

/** The largest cells; of equals, the proportions that are most like those of the room. */
function bestOf(choices: readonly Choice[], measures: Measures, size: Size): Choice {
  const most = Math.max(...choices.map(({ cellMm }) => cellMm));
  const misfitOf = ({ stance, cellMm }: Choice) => misfit(stance, measures, cellMm, size);
  return choices
    .filter(({ cellMm }) => cellMm > most - NEAR_MM)
    .reduce((best, choice) => (misfitOf(choice) < misfitOf(best) ? choice : best));
}

function stancesOf({ boxes }: Printed, { rows: cellRows, columns: cellColumns }: Measures) {
  return columnChoices(boxes.length).flatMap((columns): readonly Stance[] => {
    const rows = Math.ceil(boxes.length / columns);
    const wide = { cells: cellColumns, plate: false };
    const high = { cells: cellRows, plate: false };
    return [
      {
        side: 'above',
        boxes: boxes.length,
        columns,
        rows,
        across: [
          { ...wide, blocks: 1, plate: true },
          { ...wide, blocks: columns },
        ],
        down: [{ ...high, blocks: rows + 1, plate: true }],
      },
      {
        side: 'beside',
        boxes: boxes.length,
        columns,
        rows,
        across: [{ ...wide, blocks: columns + 1, plate: true }],
        down: [
          { ...high, blocks: 1, plate: true },
          { ...high, blocks: rows },
        ],
      },
    ];
  });
}

/** Columns whose rows are full, or lack one box at the end. */
function columnChoices(boxes: number): readonly number[] {
  const all = Array.from({ length: boxes }, (_, index) => index + 1);
  return all.filter((columns) => Math.ceil(boxes / columns) * columns - boxes <= 1);
}

function sizeOf({ across, down }: Stance, measures: Measures, cellMm: number): Size {
  return {
    widthMm: Math.max(...across.map((run) => runMm(run, measures, cellMm))),
    heightMm: Math.max(...down.map((run) => runMm(run, measures, cellMm))),
  };
}

function cellIn({ across, down }: Stance, measures: Measures, size: Size): number {
  const cells = [
    ...across.map((run) => cellForRun(run, measures, size.widthMm)),
    ...down.map((run) => cellForRun(run, measures, size.heightMm)),
  ];
  return Math.min(measures.mostCellMm, ...cells);
}

/** How far the proportions are from those of the room, in hundredths; 100: just like it. */
function misfit(stance: Stance, measures: Measures, cellMm: number, size: Size): number {
  const own = sizeOf(stance, measures, cellMm);
  const ratio = (own.widthMm * size.heightMm) / (own.heightMm * size.widthMm);
  return Math.round(100 * Math.max(ratio, 1 / ratio));
}

/** The whole of the stance in the middle of `size`. */
function placed({ stance, cellMm }: Choice, measures: Measures, size: Size, hand: Hand): PagePlan {
  const whole = { left: 0, top: 0, width: size.widthMm, height: size.heightMm };
  const { widthMm, heightMm } = sizeOf(stance, measures, cellMm);
  const own = centredIn(whole, widthMm, heightMm);
  const edge = 2 * measures.padMm + FRAME_MM;
  const [wide, high] = [measures.columns * cellMm + edge, measures.rows * cellMm + edge];
  const gap = gapFor(cellMm);
  const [first, rest] = halves(stance, own, wide + 2 * PLATE_MM, high + 2 * PLATE_MM, gap);
  const [plate, boxes] = [onSideFor(hand, first, own), onSideFor(hand, rest, own)];
  const boxesWide = stance.columns * wide + (stance.columns - 1) * gap;
  const boxesHigh = stance.rows * high + (stance.rows - 1) * gap;
  return {
    plate,
    model: insetArea(plate, PLATE_MM),
    boxes: gridPlaces(stance.boxes, stance.columns, centredIn(boxes, boxesWide, boxesHigh), gap),
    cellMm,
    padMm: measures.padMm,
  };
}

/** The plate of the model in the middle of its side, above or left, and all that is left for the boxes. */
function halves(
  { side }: Stance,
  { left, top, width, height }: Area,
  plateWide: number,
  plateHigh: number,
  gap: number,
): readonly [plate: Area, boxes: Area] {
  if (side === 'above') {
    const taken = plateHigh + gap;
    const strip = { left, top, width, height: plateHigh };
    return [
      centredIn(strip, plateWide, plateHigh),
      { left, top: top + taken, width, height: height - taken },
    ];
  }
  const taken = plateWide + gap;
  const strip = { left, top, width: plateWide, height };
  return [
    centredIn(strip, plateWide, plateHigh),
    { left: left + taken, top, width: width - taken, height },
  ];
}

/** The middle of a cell, or a point of the lattice, inside a frame. */
export function pointIn(
  { left, top }: Area,
  { cellMm, padMm }: PagePlan,
  row: number,
  column: number,
): Point {
  const inset = padMm + FRAME_MM / 2;
  return { x: left + inset + (column + 0.5) * cellMm, y: top + inset + (row + 0.5) * cellMm };
}
