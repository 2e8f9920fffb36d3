// How large the figures of an odd-one-out task are, in mm, and the least room that a task needs.
import {
  type Figure,
  formOf,
  isLetter,
  isNumeral,
  isPicture,
  LEAST_SIZE,
} from '../../figures/index.ts';
import type { Size } from '../activity.ts';
import type { Printed } from './task.ts';

export interface Measures {
  /** Side of the cell of a figure. */
  readonly figureMm: number;
  /** Least blank between neighbours: enough that a ring touches only one. */
  readonly gapMm: number;
}

/** Common practice, no source: 16 mm and more are easy to see and to ring at three; fewer figures are larger. */
const SHAPE: Measures = { figureMm: 16, gapMm: 6 };
const FEW_MM = 22;
const FEW = 5;
/** A letter fills about half of its cell, which leaves blank inside it. */
const LETTER: Measures = { figureMm: 19, gapMm: 3.6 };
const PICTURE: Measures = { figureMm: 20, gapMm: 6 };
/** The dots of a quantity stand on a card, large enough to count. */
const QUANTITY: Measures = { figureMm: 21, gapMm: 5 };
/** The smallest of several sizes, which is touched too. */
const SMALLEST_MM = 12;
/** Where figures stand loosely, blank as a share of their side, so that moved ones do not touch. */
const LOOSE_GAP = 0.62;
/** Blank all round a task, in which the ring of an outer figure ends. */
export const AROUND_MM = 3.5;

export function measuresOf({ figures, shifts }: Pick<Printed, 'figures' | 'shifts'>): Measures {
  const { figureMm, gapMm } = kindOf(figures);
  const least = Math.min(...figures.map(({ size = 1 }) => Math.max(size, LEAST_SIZE)));
  const few = figures.length <= FEW ? FEW_MM : 0;
  const side = Math.ceil(10 * Math.max(figureMm, few, SMALLEST_MM / least)) / 10;
  return { figureMm: side, gapMm: shifts ? Math.max(gapMm, LOOSE_GAP * side) : gapMm };
}

/** The kind that needs most room among the figures. */
function kindOf(figures: readonly Figure[]): Measures {
  const forms = figures.map(formOf);
  if (forms.includes('dots')) return QUANTITY;
  if (forms.some(isPicture)) return PICTURE;
  return forms.every((form) => isLetter(form) || isNumeral(form)) ? LETTER : SHAPE;
}

export function room(printed: Printed): Size {
  const { figureMm, gapMm } = measuresOf(printed);
  const { figures, columns = figures.length } = printed;
  const wide = Math.min(columns, figures.length);
  const rows = Math.ceil(figures.length / wide);
  const along = (count: number) => count * (figureMm + gapMm) - gapMm + 2 * AROUND_MM;
  const loose = printed.shifts ? gapMm : 0;
  return { widthMm: along(wide) + loose, heightMm: along(rows) + loose };
}
