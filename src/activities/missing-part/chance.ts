// How probable it is to choose the right piece without looking at the field; what is drawn is free.
import { chanceAmong } from '../chance.ts';
import type { Printed } from './task.ts';

export function chance({ offered }: Printed): number {
  return offered ? chanceAmong(offered.length) : 0;
}
