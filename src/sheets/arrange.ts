// Where the tasks of a sheet stand: in rows down the page, side by side where they are narrow.
import type { Size } from '../activities/index.ts';
import type { Area } from '../page/index.ts';

/** The least blank between tasks in mm: more than activities leave inside a task at its least size. */
export const TASK_GAP_MM = 14;
/** Of the blank that is left over, what goes between the tasks; the rest lets the tasks grow (by eye). */
const BETWEEN_SHARE = 0.5;

/** Places for tasks that need `rooms`, in reading order; undefined: no room for all. */
export function arrangeTasks(rooms: readonly Size[], area: Area): readonly Area[] | undefined {
  const widest = Math.max(...rooms.map((room) => room.widthMm));
  for (let columns = 1; columns <= rooms.length; columns++) {
    if (placeWidthMm(columns, area) < widest) return undefined;
    const heights = rowHeights(rooms, columns);
    const blankMm = area.height - sum(heights) - TASK_GAP_MM * (heights.length - 1);
    if (blankMm >= 0) return placesOf({ count: rooms.length, columns, heights, blankMm }, area);
  }
  return undefined;
}

/** How many of the first tasks fit. */
export function mostThatFit(rooms: readonly Size[], area: Area): number {
  let count = rooms.length;
  while (count > 0 && !arrangeTasks(rooms.slice(0, count), area)) count -= 1;
  return count;
}

function placeWidthMm(columns: number, area: Area): number {
  return (area.width - TASK_GAP_MM * (columns - 1)) / columns;
}

function rowHeights(rooms: readonly Size[], columns: number): readonly number[] {
  return Array.from({ length: Math.ceil(rooms.length / columns) }, (_, row) => {
    const inRow = rooms.slice(row * columns, (row + 1) * columns);
    return Math.max(...inRow.map((room) => room.heightMm));
  });
}

interface Rows {
  readonly count: number;
  readonly columns: number;
  /** The least height of each row. */
  readonly heights: readonly number[];
  /** Height that nothing needs. */
  readonly blankMm: number;
}

/** Blank goes round the rows as well as into them; a single row has all of it. */
function placesOf({ count, columns, heights, blankMm }: Rows, area: Area): readonly Area[] {
  const width = placeWidthMm(columns, area);
  const rows = heights.length;
  const roundMm = rows > 1 ? (blankMm * BETWEEN_SHARE) / rows : 0;
  const growMm = blankMm / rows - roundMm;
  let top = area.top + roundMm / 2;
  return heights.flatMap((least, row) => {
    const height = least + growMm;
    const inRow = Math.min(columns, count - row * columns);
    const rowMm = inRow * width + (inRow - 1) * TASK_GAP_MM;
    const left = area.left + (area.width - rowMm) / 2;
    const places = Array.from({ length: inRow }, (_, column) => ({
      left: left + column * (width + TASK_GAP_MM),
      top,
      width,
      height,
    }));
    top += height + roundMm + TASK_GAP_MM;
    return places;
  });
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, number) => total + number, 0);
}
