// How probable it is to finish every box without looking at the model.
import { chanceEachTime } from '../chance.ts';
import { distinctFigures } from '../figure-features.ts';
import { readingOf } from './reading.ts';
import type { Printed } from './task.ts';

/** Each free place gets one of the things that the model is made of, nothing among them; what is drawn is free. */
export function chance(printed: Printed): number {
  const { model, boxes } = printed;
  const { response } = readingOf(printed);
  if (response === 'draw' || response === 'draw-line') return 0;
  const kinds = distinctFigures(model.cells.filter((figure) => figure !== null)).length;
  const hasEmpty = model.cells.includes(null);
  const free = boxes.flatMap(({ cells }) => cells).filter((figure) => figure === null);
  return chanceEachTime(kinds + (hasEmpty ? 1 : 0), free.length);
}
