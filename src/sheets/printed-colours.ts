// Which named colours the figures of a task show.
import type { Task } from '../activities/index.ts';
import { COLOUR_NAMES, type ColourName } from '../palette/index.ts';

/** The colours of all figures that are printed, found by the one field that every figure has them in. */
export function printedColours({ printed }: Pick<Task, 'printed'>): readonly ColourName[] {
  const written = JSON.stringify(printed);
  return COLOUR_NAMES.filter((name) => written.includes(`"colour":"${name}"`));
}
