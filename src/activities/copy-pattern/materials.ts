// What to lay out for a task: stickers counted by colour, crayons, or a pencil.
import type { ColourName } from '../../palette/index.ts';
import type { Material } from '../activity.ts';
import { readingOf } from './reading.ts';
import type { Answer, Printed } from './task.ts';

/** Only what is still to be added counts, in the order in which it first occurs. */
export function materialsOf(printed: Printed, answer: Answer): readonly Material[] {
  const { response, stickerMm } = readingOf(printed);
  const isDrawn = response === 'draw' || response === 'draw-line';
  const isColoured = printed.model.cells.some((figure) => figure?.colour !== undefined);
  if (isDrawn && !isColoured) return [{ kind: 'pencil' }];
  const counts = new Map<ColourName, number>();
  for (const colour of addedColours(printed, answer)) {
    counts.set(colour, (counts.get(colour) ?? 0) + 1);
  }
  return [...counts].map(
    ([colour, count]): Material =>
      response === 'sticker'
        ? { kind: 'sticker', colour, diameterMm: stickerMm, count }
        : { kind: 'crayon', colour },
  );
}

/** Dots without a colour are of ink: black. */
function addedColours({ boxes }: Printed, answer: Answer): readonly ColourName[] {
  return answer.flatMap(({ cells }, box) =>
    cells.flatMap((figure, place) =>
      figure && !boxes[box]?.cells[place] ? [figure.colour ?? 'black'] : [],
    ),
  );
}
