// What to lay out for a task.
import type { Material } from '../activity.ts';
import type { Printed } from './task.ts';

/** A pencil for a ring or a line; nothing to point with. */
export function materialsOf({ response = 'point' }: Printed): readonly Material[] {
  return response === 'point' ? [] : [{ kind: 'pencil' }];
}
