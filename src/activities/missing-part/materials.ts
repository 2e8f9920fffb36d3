// What to lay out for a task.
import { COLOUR_NAMES } from '../../palette/index.ts';
import type { Material } from '../activity.ts';
import { type Printed, responseTo } from './task.ts';

/** Crayons of all colours of the field, not of the missing one alone, so that there is a choice; else a pencil. */
export function materialsOf(printed: Printed): readonly Material[] {
  const response = responseTo(printed);
  if (response === 'point') return [];
  const colours = new Set(printed.field.map((figure) => figure?.colour));
  const crayons = COLOUR_NAMES.filter((name) => colours.has(name)).map(
    (colour): Material => ({ kind: 'crayon', colour }),
  );
  return response === 'draw' && crayons.length > 0 ? crayons : [{ kind: 'pencil' }];
}
