// How probable it is to go on with the row rightly without looking at it.
import { chanceEachTime } from '../chance.ts';
import { distinctFigures } from '../figure-features.ts';
import { type Printed, responseTo } from './task.ts';

/** For each empty place one of those offered, or one of the stickers or crayons of the row; what is drawn is free. */
export function chance(printed: Printed): number {
  const { row, offered } = printed;
  const shown = row.filter((figure) => figure !== null);
  const missing = row.length - shown.length;
  if (offered) return chanceEachTime(offered.length, missing);
  const isLaidOut = ['sticker', 'colour-in'].includes(responseTo(printed));
  return isLaidOut ? chanceEachTime(distinctFigures(shown).length, missing) : 0;
}
