// Answers that are figures in their order.
import { type Figure, sameFigure } from '../figures/index.ts';

/** Whether two lists show, place by place, figures that print alike. */
export function sameFigures(one: readonly Figure[], other: readonly Figure[]): boolean {
  return (
    one.length === other.length &&
    one.every((figure, place) => sameFigure(figure, other[place] ?? {}))
  );
}
