// The places of the whole picture, each with the printed place that it mirrors and the lines between the two.
import type { Figure } from '../../figures/index.ts';
import { sameFigure } from '../../figures/index.ts';
import type { Printed } from './task.ts';

export type Line = 'upright' | 'level';

export interface Place {
  /** Number in the whole picture, row by row. */
  readonly at: number;
  /** Number in the printed part. */
  readonly source: number;
  /** The lines between this place and the printed one; none: it is the printed one. */
  readonly lines: readonly Line[];
}

/** Every place of the whole picture. Distances are counted from the line, so that equal ones face each other. */
export function wholeOf({ part, axis, given = 'first' }: Printed): readonly Place[] {
  const [isAcross, isDown] = [axis !== 'level', axis !== 'upright'];
  const columns = isAcross ? 2 * part.columns : part.columns;
  const rows = isDown ? 2 * part.rows : part.rows;
  return Array.from({ length: rows * columns }, (_, at) => {
    const [row, column] = [Math.floor(at / columns), at % columns];
    const across = alongLine(column, part.columns, isAcross, given !== 'first');
    const down = alongLine(row, part.rows, isDown, given === 'second');
    const lines = [
      ...(across.isBeyond ? (['upright'] as const) : []),
      ...(down.isBeyond ? (['level'] as const) : []),
    ];
    return { at, source: down.source * part.columns + across.source, lines };
  });
}

/** Along one direction: the printed place as far from the line, and whether the line lies between. */
function alongLine(
  place: number,
  length: number,
  hasLine: boolean,
  isSecond: boolean,
): { readonly source: number; readonly isBeyond: boolean } {
  if (!hasLine) return { source: place, isBeyond: false };
  const fromLine = place < length ? length - 1 - place : place - length;
  const isBeyond = place < length === isSecond;
  return { source: isSecond ? fromLine : length - 1 - fromLine, isBeyond };
}

/** The places of all missing parts, row by row of the whole picture. */
export function missingPlaces(printed: Printed): readonly Place[] {
  return wholeOf(printed).filter(({ lines }) => lines.length > 0);
}

/** What a mirror on each of the lines shows of the figure: each turns it round, two turn it half round. */
export function seenIn(figure: Figure, lines: readonly Line[]): Figure {
  return lines.reduce((seen: Figure, line) => {
    const { turn = 0, mirrored = false, ...rest } = seen;
    const flipped = {
      turn: (line === 'upright' ? 360 - turn : 540 - turn) % 360,
      mirrored: !mirrored,
    };
    const image = { ...rest, ...flipped };
    return sameFigure(seen, image) ? seen : image;
  }, figure);
}
