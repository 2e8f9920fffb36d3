// What the child chooses among, where pieces are offered. Of a piece of several figures the first wrong one counts.
import { type Decision, takenFor } from '../decision.ts';
import { areAlike } from '../figure-comparison.ts';
import { distinctFigures } from '../figure-features.ts';
import type { Answer, Printed } from './task.ts';

/** Only where all first wrong figures stand for one and the same, that is what a wrong piece was taken for. */
export function decisions({ offered }: Printed, { figures }: Answer): readonly Decision[] {
  if (!offered) return [];
  const cells = offered.map((piece) =>
    piece.findIndex((figure, cell) => !areAlike(figure, figures[cell] ?? {})),
  );
  const wanted = distinctFigures(cells.flatMap((cell) => figures[cell] ?? []));
  const only = wanted.length === 1 ? wanted[0] : undefined;
  const options = offered.map((piece, mark) => {
    const cell = cells[mark] ?? -1;
    const isRight = cell < 0;
    return { figure: (isRight ? only : piece[cell]) ?? piece[0] ?? {}, isRight, mark };
  });
  return [takenFor(only, { options })];
}
