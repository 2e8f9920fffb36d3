// Shapes by what a task can ask of them.
import type { Shape } from './form-names.ts';

/** Shapes that lie differently at each quarter turn: they point, open or stand one way only. */
export const TURNABLE: readonly Shape[] = [
  'arrow',
  'triangle',
  'heart',
  'crescent',
  'drop',
  'half-circle',
];
