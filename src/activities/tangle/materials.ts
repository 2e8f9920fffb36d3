// What to lay out for a task: a pencil for rings, crayons to colour in with.
import type { Material } from '../activity.ts';
import type { Printed } from './task.ts';

/** Crayons in the colours of all to choose from; any pencil will do where they are all in ink. */
export function materialsOf({ candidates, response = 'point' }: Printed): readonly Material[] {
  if (response === 'point') return [];
  const colours = [...new Set(candidates.flatMap(({ colour }) => (colour ? [colour] : [])))];
  return response === 'ring' || colours.length === 0
    ? [{ kind: 'pencil' }]
    : colours.map((colour) => ({ kind: 'crayon', colour }));
}
