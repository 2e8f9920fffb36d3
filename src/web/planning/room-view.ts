// Whether there are as many equally hard sheets as a group needs.
import { accept, type Result, refuse } from '../../base/index.ts';
import { packAsMade, sheetsOf } from '../making/pack-of.ts';
import type { RoomAsked } from './cards.ts';

/** More are made only to be printed: the worker would be kept from the other screens. */
const MOST_TRIED = 400;

/** Refuses more equally hard sheets than there are, and nothing else: the table says all other. */
export function roomView({ recipe, group }: RoomAsked): Result<true> {
  const asked = { entries: recipe, group };
  const sheets = sheetsOf(asked);
  if (!sheets.ok || sheets.value > MOST_TRIED) return accept(true);
  const pack = packAsMade(asked, Infinity);
  if (pack.ok) return accept(true);
  const tooFew = pack.refusals.filter(({ at }) => at.endsWith(' › children'));
  return tooFew.length === 0 ? accept(true) : refuse(...tooFew);
}
