// How probable it is to choose the right one without looking at the model.
import { chanceAmong } from '../chance.ts';
import type { Printed } from './task.ts';

export function chance({ choices }: Printed): number {
  return chanceAmong(choices.length);
}
