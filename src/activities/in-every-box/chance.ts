// How probable it is to choose the right figures without looking into all boxes.
import { chanceAmong } from '../chance.ts';
import { distinctFigures } from '../figure-features.ts';
import { missingFrom } from './features.ts';
import type { Printed } from './task.ts';

/** The child is told how many to look for, and chooses among all that there are. */
export function chance({ boxes }: Printed): number {
  const kinds = distinctFigures(boxes.flatMap(({ figures }) => figures));
  const shared = kinds.filter((kind) => missingFrom(kind, boxes) === 0);
  return chanceAmong(kinds.length, Math.max(1, shared.length));
}
