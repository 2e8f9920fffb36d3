// How probable it is to choose the right outlines without looking into the tangle.
import { chanceEachTime } from '../chance.ts';
import type { Printed } from './task.ts';

/** Nobody says how many there are: each may be in or out. */
export function chance({ candidates }: Printed): number {
  return chanceEachTime(2, candidates.length);
}
