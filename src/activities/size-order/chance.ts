// How probable it is to find the one asked for, or the order, without comparing.
import { chanceAmong, chanceOfLaying } from '../chance.ts';
import type { Printed } from './task.ts';

export function chance({ figures, asked = 'order' }: Printed): number {
  return asked === 'order' ? chanceOfLaying(figures.length) : chanceAmong(figures.length);
}
