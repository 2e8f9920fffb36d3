// How probable it is to choose the odd one without looking.
import { chanceAmong } from '../chance.ts';
import type { Printed } from './task.ts';

export function chance({ figures }: Printed): number {
  return chanceAmong(figures.length);
}
