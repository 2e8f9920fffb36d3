// What to lay out for a task.
import type { Material } from '../activity.ts';
import { type Answer, type Printed, STICKER_MM } from './task.ts';

/** A pencil to draw with, a sticker for each figure to be found, or nothing to point with. */
export function materialsOf({ response = 'point' }: Printed, answer: Answer): readonly Material[] {
  if (response === 'point') return [];
  if (response !== 'sticker') return [{ kind: 'pencil' }];
  return [{ kind: 'sticker', colour: 'red', diameterMm: STICKER_MM, count: answer.length }];
}
