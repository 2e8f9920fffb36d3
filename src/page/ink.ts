// The few inks and line widths of the printed page; figures bring colours of their own.
import { contrastOf } from '../palette/index.ts';
import type { Paint } from './scene.ts';

/** Near-black: outlines of boxes and figures, letters, signs. */
export const INK: Paint = '#1b2a2e';
/** For the adult's small words: readable, quieter (contrast on white above 7). */
export const QUIET_INK: Paint = '#48575b';
/** Guides that a child may draw over: lattice dots, empty cells (contrast on white above 3). */
export const FAINT_INK: Paint = '#7f8c8f';
export const WHITE: Paint = '#ffffff';

/** What is seen best on a ground: white on a dark one, else ink. */
export function inkOn(ground: Paint): Paint {
  return contrastOf(ground, WHITE) > contrastOf(ground, INK) ? WHITE : INK;
}

/** Line widths in mm, from the ISO 128 series (0.25, 0.35, 0.5, 0.7, 1.0; from memory). */
export const FINE_MM = 0.35;
export const LINE_MM = 0.7;
export const STRONG_MM = 1;
