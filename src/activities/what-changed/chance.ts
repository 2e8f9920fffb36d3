// How probable it is to find the changes without comparing the pictures.
import { chanceAmong } from '../chance.ts';
import type { Printed } from './task.ts';

/** The child is told how many to find, among the places where anything stands in either picture. */
export function chance({ first, second, asked }: Printed): number {
  const places = first.filter((figure, place) => figure ?? second[place]);
  return chanceAmong(places.length, asked);
}
