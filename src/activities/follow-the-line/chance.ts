// How probable it is to tell all ends without following the lines.
import { chanceOfLaying } from '../chance.ts';
import type { Printed } from './task.ts';

/** Each line has an end of its own. */
export function chance({ lines }: Printed): number {
  return chanceOfLaying(lines.length);
}
