// What several solvers ask of how figures lie: a thing that is turned is the same thing to many a child.
import { type Figure, formOf, sameFigure } from '../figures/index.ts';

/** Whether all figures are of one form, so that how they lie may be meant. */
export function areOfOneForm(figures: readonly Figure[]): boolean {
  return new Set(figures.map(formOf)).size <= 1;
}

/** Whether two figures print alike once both stand upright and unmirrored. */
export function areAlikeUpright(one: Figure, other: Figure): boolean {
  const upright = { turn: 0, mirrored: false };
  return sameFigure({ ...one, ...upright }, { ...other, ...upright });
}
