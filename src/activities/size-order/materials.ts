// What to lay out for a task.
import type { Material } from '../activity.ts';
import type { Printed } from './task.ts';

export function materialsOf({ response = 'point' }: Printed): readonly Material[] {
  if (response === 'point') return [];
  return response === 'cut' ? [{ kind: 'scissors' }, { kind: 'glue' }] : [{ kind: 'pencil' }];
}
