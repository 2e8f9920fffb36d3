// Whether there are as many equally hard sheets as a group needs.
import { accept, type Result, refuse } from '../../base/index.ts';
import { packAsMade } from '../making/pack-of.ts';
import type { RoomAsked } from './cards.ts';

/** Refuses more equally hard sheets than there are, and nothing else: the table says all other. */
export function roomView({ recipe, group }: RoomAsked): Result<true> {
  const pack = packAsMade({ entries: recipe, group }, Infinity);
  if (pack.ok) return accept(true);
  const tooFew = pack.refusals.filter(({ at }) => at.endsWith(' › children'));
  return tooFew.length === 0 ? accept(true) : refuse(...tooFew);
}
