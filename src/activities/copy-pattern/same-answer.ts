// When two answers are one: box by box, the same figure or nothing in every place.
import { type Figure, sameFigure } from '../../figures/index.ts';
import type { Answer, Cells } from './task.ts';

export function sameAnswer(one: Answer, other: Answer): boolean {
  return (
    one.length === other.length &&
    one.every(({ cells }, box) => sameCells(cells, other[box]?.cells ?? []))
  );
}

function sameCells(one: Cells, other: Cells): boolean {
  return (
    one.length === other.length && one.every((figure, place) => sameCell(figure, other[place]))
  );
}

function sameCell(one: Figure | null, other: Figure | null | undefined): boolean {
  return one && other ? sameFigure(one, other) : one === other;
}
