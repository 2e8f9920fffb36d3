// How figures stand in a box, and how large a box must be for them.
import type { Size } from '../activity.ts';
import { type Measures, measuresOf } from './measures.ts';
import type { Layout, Printed } from './task.ts';

/** Counts for which equal rows are not the calmest: these stand as a pattern about a middle. */
const PATTERNS: Readonly<Record<number, readonly number[]>> = {
  2: [2],
  7: [2, 3, 2],
  8: [3, 2, 3],
};

/** How many figures stand in each row of a box, from the top; rows that are shorter stand in the middle. */
export function figureRows(layout: Exclude<Layout, 'loose'>, figures: number): readonly number[] {
  if (layout === 'row') return [figures];
  const longest = Math.ceil(Math.sqrt(figures));
  const rows = Math.ceil(figures / longest);
  const full = Array.from({ length: rows }, (_, row) => Math.min(longest, figures - row * longest));
  return PATTERNS[figures] ?? full;
}

/** Columns and rows of the places among which loose figures are strewn; mostly some stay empty. */
export function loosePlaces(figures: number): { columns: number; rows: number } {
  const columns = Math.ceil(Math.sqrt(figures + 1));
  return { columns, rows: Math.max(2, Math.ceil(figures / columns)) };
}

/** How far a loose figure may stand from the middle of its place, in mm: across and down. */
export const STRAY_MM = { across: 1, down: 4 };

/** What one place of loose figures takes up; the gap stays free however the figures stray. */
export function loosePitch({ cellMm, gapMm }: Measures): Size {
  return {
    widthMm: cellMm + gapMm + 2 * STRAY_MM.across,
    heightMm: cellMm + gapMm + 2 * STRAY_MM.down,
  };
}

/** The least size of every box. */
export function boxSize(printed: Printed): Size {
  const measures = measuresOf(printed);
  const most = Math.max(...printed.boxes.map((box) => box.figures.length));
  const isLoose = printed.layout === 'loose' || printed.boxes.some((box) => box.places);
  if (isLoose) return looseBoxSize(printed, measures, most);
  const rows = figureRows(printed.layout ?? 'grid', most);
  return {
    widthMm: spanMm(Math.max(...rows), measures),
    heightMm: spanMm(rows.length, measures),
  };
}

function spanMm(cells: number, { cellMm, gapMm }: Measures): number {
  return cells * cellMm + (cells + 1) * gapMm;
}

/** As large as the places among which figures are strewn, or larger if figures stand farther out. */
function looseBoxSize({ boxes }: Printed, measures: Measures, most: number): Size {
  const { columns, rows } = loosePlaces(most);
  const pitch = loosePitch(measures);
  const stood = boxes.flatMap((box) => box.places ?? []);
  const edgeMm = measures.cellMm / 2 + measures.gapMm;
  return {
    widthMm: Math.max(
      columns * pitch.widthMm + measures.gapMm,
      ...stood.map(({ x }) => x + edgeMm),
    ),
    heightMm: Math.max(rows * pitch.heightMm + measures.gapMm, ...stood.map(({ y }) => y + edgeMm)),
  };
}
