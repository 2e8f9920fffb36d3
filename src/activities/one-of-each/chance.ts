// How probable it is to fill the grid rightly without looking at rows and columns.
import { chanceAmong, chanceEachTime } from '../chance.ts';
import { areAlike } from '../figure-comparison.ts';
import { distinctFigures } from '../figure-features.ts';
import type { Printed } from './task.ts';

/** Each empty cell gets one of the figures to use, or all pieces are laid, each once; what is drawn is free. */
export function chance({ rows, figures, pieces, response }: Printed): number {
  if (response === 'draw') return 0;
  if (pieces) return chanceOfPieces(pieces);
  const empty = rows.flat().filter((figure) => figure === null);
  return chanceEachTime(figures.length, empty.length);
}

/** It makes no difference which of two like pieces lies where. */
function chanceOfPieces(pieces: NonNullable<Printed['pieces']>): number {
  let left = pieces.length;
  return distinctFigures(pieces).reduce((before, kind) => {
    const count = pieces.filter((piece) => areAlike(piece, kind)).length;
    const here = chanceAmong(left, count);
    left -= count;
    return before * here;
  }, 1);
}
