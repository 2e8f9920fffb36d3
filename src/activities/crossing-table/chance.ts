// How probable it is to put each loose figure in its place without looking at rows and columns.
import { chanceOfLaying } from '../chance.ts';
import type { Printed } from './task.ts';

/** Each empty cell gets another one of the loose figures; what is drawn is free. */
export function chance({ rows, loose }: Printed): number {
  const empty = rows.flat().filter((figure) => figure === null).length;
  return loose ? chanceOfLaying(loose.length, empty) : 0;
}
