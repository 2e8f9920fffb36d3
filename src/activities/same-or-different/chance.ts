// How probable it is to judge all pairs rightly without looking.
import { chanceEachTime } from '../chance.ts';
import type { Printed } from './task.ts';

/** Of each pair one says that it is the same, or that it is not. */
export function chance({ pairs }: Printed): number {
  return chanceEachTime(2, pairs.length);
}
