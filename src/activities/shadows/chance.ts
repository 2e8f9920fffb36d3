// How probable it is to find all shadows without looking.
import { chanceOfLaying } from '../chance.ts';
import type { Printed } from './task.ts';

/** Each model has a shadow of its own. */
export function chance({ models, shadows }: Printed): number {
  return chanceOfLaying(shadows.length, models.length);
}
