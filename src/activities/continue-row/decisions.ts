// What the child chooses among, where figures are offered: one decision for each empty place.
import { sameFigure } from '../../figures/index.ts';
import { choiceAmong, type Decision, takenFor } from '../decision.ts';
import type { Answer, Printed } from './task.ts';

export function decisions(printed: Printed, { figures }: Answer): readonly Decision[] {
  const { offered } = printed;
  if (!offered) return [];
  return figures.map((right, index) => {
    const places = offered.flatMap((figure, place) => (sameFigure(figure, right) ? [place] : []));
    const choice = takenFor(right, choiceAmong(offered, places));
    const about = markOfEmpty(printed, index);
    return about === undefined ? choice : { ...choice, about };
  });
}

/** The mark of an empty place, counted from 0 along the row, if there are several to choose for. */
export function markOfEmpty({ row, offered }: Printed, index: number): number | undefined {
  const isOneOfSeveral = row.filter((figure) => figure === null).length > 1;
  return offered && isOneOfSeveral ? offered.length + index : undefined;
}
