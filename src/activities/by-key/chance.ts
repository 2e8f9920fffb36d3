// How probable it is to treat every item as the key says without looking.
import { chanceEachTime } from '../chance.ts';
import type { Printed } from './task.ts';

/** Each item gets what some entry of the key shows. */
export function chance({ key, items }: Printed): number {
  return chanceEachTime(key.length, items.length);
}
