// How probable it is to choose the right ones without having looked at those in the frame.
import { chanceAmong, chanceEachTime } from '../chance.ts';
import { areAlike } from '../figure-comparison.ts';
import type { Printed } from './task.ts';

/** A child chooses as many as it was shown; where fewer come again nobody says so, and each may be in or out. */
export function chance({ set, choices }: Printed): number {
  const seen = choices.filter((choice) => set.some((figure) => areAlike(figure, choice)));
  return seen.length === set.length
    ? chanceAmong(choices.length, seen.length)
    : chanceEachTime(2, choices.length);
}
