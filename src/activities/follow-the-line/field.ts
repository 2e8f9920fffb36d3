// The measures of the field that lines wind through, and how many crossings and lines it has room for.
import { attributesOf } from '../../figures/index.ts';
import type { LineValues } from './task.ts';

/** Lengths in mm. */
export interface Field {
  /** From one start to the next: a cell of a figure and the gap to the next. */
  readonly laneMm: number;
  /** Lines cross in columns, in each at most once. */
  readonly columns: number;
  readonly columnMm: number;
}

/**
 * Lanes leave 4 mm between cells: plain figures stand in 16 mm, those with fine parts in 20, sizes in 28. Columns
 * are as wide as or wider than a lane, so that crossings come out near a right angle, and few enough that the
 * field stands between its figures on an upright A4 sheet.
 */
const PLAIN: Field = { laneMm: 20, columns: 5, columnMm: 26 };
const FINE: Field = { laneMm: 24, columns: 5, columnMm: 26 };
const SIZED: Field = { laneMm: 32, columns: 4, columnMm: 30 };

/** The widest row of starts, in mm: an upright A4 sheet within its margins. */
const MOST_WIDE_MM = 186;
const WIDEST_PLAIN_STICKER_MM = 16;

export function fieldOf({ content, response, stickerMm }: FieldValues): Field {
  const attributes = attributesOf(content);
  if (attributes.includes('size')) return SIZED;
  if (response === 'sticker') return Number(stickerMm) > WIDEST_PLAIN_STICKER_MM ? FINE : PLAIN;
  return content === 'colours' || response === 'colour-in' ? PLAIN : FINE;
}
type FieldValues = Pick<LineValues, 'content' | 'response' | 'stickerMm'>;

/** Which lanes may change places in each column: every other one, shifted by one from column to column. */
export function slotsOf(lines: number, columns: number, shift: 0 | 1): readonly Slot[] {
  return Array.from({ length: columns }, (_, column) =>
    Array.from({ length: lines - 1 }, (_, lane): Slot => ({ column, lane })).filter(
      ({ lane }) => (lane + column + shift) % 2 === 0,
    ),
  ).flat();
}

/** In this column the lines of this lane and the next change places. */
export interface Slot {
  readonly column: number;
  readonly lane: number;
}

/** The most crossings of so many lines. */
export function mostCrossings(lines: number, { columns }: Field): number {
  return Math.max(slotsOf(lines, columns, 0).length, slotsOf(lines, columns, 1).length);
}

/** The most lines that stand beside each other on a sheet. */
export function mostBeside(direction: LineValues['direction'], { laneMm }: Field): number {
  return direction === 'down' ? Math.floor(MOST_WIDE_MM / laneMm) : Number.POSITIVE_INFINITY;
}
