// How probable it is to finish the picture without minding the mirror line.
import { chanceAmong, chanceEachTime } from '../chance.ts';
import { distinctFigures } from '../figure-features.ts';
import { missingPlaces } from './solve-places.ts';
import { type Printed, responseTo } from './task.ts';

/** Each empty place gets one of the things that the part is made of, nothing among them; what is drawn is free. */
export function chance(printed: Printed): number {
  const { part, offered } = printed;
  if (offered) return chanceAmong(offered.length);
  if (responseTo(printed) === 'draw') return 0;
  const kinds = distinctFigures(part.cells.filter((figure) => figure !== null)).length;
  const hasEmpty = part.cells.includes(null);
  return chanceEachTime(kinds + (hasEmpty ? 1 : 0), missingPlaces(printed).length);
}
