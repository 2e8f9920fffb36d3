// What to lay out for a task: stickers counted by colour, crayons of its colours, or a pencil.
import type { Material } from '../activity.ts';
import { countedColours } from '../colour-counts.ts';
import { USUAL_STICKER_MM } from './measures.ts';
import { type Answer, type Cells, type Printed, responseTo } from './task.ts';

/** Stickers and crayons for what is missing, which has no other colours than what is there. */
export function materialsOf(printed: Printed, answer: Answer): readonly Material[] {
  const response = responseTo(printed);
  if (response === 'point') return [];
  if (response === 'ring' || 'choice' in answer) return [{ kind: 'pencil' }];
  const given = coloursOf(printed.part.cells);
  if (response === 'sticker') {
    const diameterMm = printed.stickerMm ?? USUAL_STICKER_MM;
    return coloursOf(answer.cells).map(([colour, count]): Material => {
      const there = given.find(([other]) => other === colour)?.[1] ?? 0;
      return { kind: 'sticker', colour, diameterMm, count: count - there };
    });
  }
  const crayons = given.map(([colour]): Material => ({ kind: 'crayon', colour }));
  return crayons.length > 0 ? crayons : [{ kind: 'pencil' }];
}

function coloursOf(cells: Cells) {
  return countedColours(cells.flatMap((figure) => figure?.colour ?? []));
}
