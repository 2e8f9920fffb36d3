// The different figures of a printed task, each with how often every box shows it.
import { type Figure, sameFigure } from '../../figures/index.ts';
import type { Box } from './task.ts';

export interface Kind {
  readonly figure: Figure;
  /** How often it stands in each box. */
  readonly counts: readonly number[];
}

/** In the order in which the page shows them; figures that print alike are one kind. */
export function kindsIn(boxes: readonly Box[]): readonly Kind[] {
  const kinds: { figure: Figure; counts: number[] }[] = [];
  for (const [box, { figures }] of boxes.entries()) {
    for (const figure of figures) {
      let kind = kinds.find((known) => sameFigure(known.figure, figure));
      if (!kind) {
        kind = { figure, counts: boxes.map(() => 0) };
        kinds.push(kind);
      }
      kind.counts[box] = (kind.counts[box] ?? 0) + 1;
    }
  }
  return kinds;
}
