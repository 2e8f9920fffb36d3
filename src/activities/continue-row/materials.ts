// What to lay out for a row: stickers counted by colour, crayons of its colours, or a pencil.
import type { Material } from '../activity.ts';
import { countedColours } from '../colour-counts.ts';
import { type Answer, type Printed, responseTo } from './task.ts';

/** Crayons of all colours of the row, not of the missing ones alone, so that there is a choice. */
export function materialsOf(printed: Printed, { figures }: Answer): readonly Material[] {
  const { row, stickerMm } = printed;
  const response = responseTo(printed);
  if (response === 'point') return [];
  if (response === 'ring') return [{ kind: 'pencil' }];
  if (response === 'sticker' && stickerMm !== undefined) {
    return countedColours(figures.map(({ colour = 'black' }) => colour)).map(([colour, count]) => ({
      kind: 'sticker',
      colour,
      diameterMm: stickerMm,
      count,
    }));
  }
  const colours = row.flatMap((figure) => (figure?.colour ? [figure.colour] : []));
  const crayons = countedColours(colours).map(([colour]): Material => ({ kind: 'crayon', colour }));
  return crayons.length > 0 ? crayons : [{ kind: 'pencil' }];
}
