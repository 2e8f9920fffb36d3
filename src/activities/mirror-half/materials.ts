// What to lay out for a task: stickers counted by colour, crayons of its colours, or a pencil.
import { COLOUR_NAMES, type ColourName } from '../../palette/index.ts';
import type { Material } from '../activity.ts';
import { USUAL_STICKER_MM } from './measures.ts';
import { type Answer, type Printed, responseTo } from './task.ts';

/** Stickers and crayons for what is missing, which has no other colours than what is there. */
export function materialsOf(printed: Printed, answer: Answer): readonly Material[] {
  const response = responseTo(printed);
  if (response === 'point') return [];
  if (response === 'ring' || 'choice' in answer) return [{ kind: 'pencil' }];
  const given = coloursOf(printed.part.cells);
  if (response === 'sticker') {
    const counts = coloursOf(answer.cells).map(([colour, count]): Material => {
      const there = given.find(([other]) => other === colour)?.[1] ?? 0;
      const diameterMm = printed.stickerMm ?? USUAL_STICKER_MM;
      return { kind: 'sticker', colour, diameterMm, count: count - there };
    });
    return counts;
  }
  const crayons = given.map(([colour]): Material => ({ kind: 'crayon', colour }));
  return crayons.length > 0 ? crayons : [{ kind: 'pencil' }];
}

/** Each colour with how often it comes, in the order of the colour names. */
function coloursOf(
  cells: Extract<Answer, { cells: unknown }>['cells'],
): readonly (readonly [ColourName, number])[] {
  return COLOUR_NAMES.map(
    (name) => [name, cells.filter((figure) => figure?.colour === name).length] as const,
  ).filter(([, count]) => count > 0);
}
