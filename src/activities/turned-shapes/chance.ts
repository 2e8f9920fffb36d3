// How probable it is to choose the right ones without looking at the model.
import { chanceAmong } from '../chance.ts';
import type { Printed } from './task.ts';

/** The child is told how many to find. */
export function chance({ choices, matches = 1 }: Printed): number {
  return chanceAmong(choices.length, matches);
}
